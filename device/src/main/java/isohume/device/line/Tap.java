// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

/** Sees all that goes over lines. Called by the thread that moves the bytes, so it has to be quick. */
public interface Tap {
    /** Looks at nothing. */
    Tap NONE = (place, sent, bytes) -> {};

    /**
     * Bytes moved.
     *
     * @param place where the line leads
     * @param sent whether they went there or came from there
     */
    void moved(String place, boolean sent, byte[] bytes);
}
