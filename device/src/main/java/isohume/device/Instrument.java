// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import java.util.List;

/**
 * Something that can be read. One thread at a time; each call ends within the line's time limit; reading changes
 * nothing on the instrument and may be repeated. Trouble is a {@link Reading.Absent}, never an exception.
 */
public interface Instrument extends AutoCloseable {
    /** The instrument's id in the laboratory. */
    String id();

    List<Channel> channels();

    /** One reading for each of {@link #channels()}, in that order, all of one moment as far as the wire allows. */
    List<Reading> read();

    /** Lets go of the line. Idempotent; never throws. */
    @Override
    void close();
}
