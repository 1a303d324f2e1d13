// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import isohume.device.Channel;
import isohume.quantity.Phase;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * Readings from a file: conditions by the references, and what the instruments under test showed, point by point. The
 * format is described in {@code docs/formats/readings-csv.md}. Immutable.
 */
public final class RecordedReadings {
    /** A larger file is refused unless the caller allows more. */
    public static final long LIMIT_BYTES = 50_000_000;

    private final String source;
    private final List<Channel> channels;
    private final List<Row> rows;

    /**
     * One line of readings. Values are in the unit of their quantity, with the digits that were written.
     *
     * @param line in the file, from 1
     * @param point the plan's number of the point, from 1
     * @param deposit what the dew point is over; the plan says who decided
     * @param dewPoint in °C
     * @param temperature of the air, in °C
     * @param pressure of the air, in Pa
     * @param mirrorPressure of the air at the mirror, in Pa; as {@code pressure} if the file does not have it
     * @param shown what each instrument showed; a channel with a gap is not in it
     * @param toCome what each channel had still to change; only channels of which the file says so
     */
    public record Row(
            long line,
            Instant at,
            int point,
            Phase deposit,
            BigDecimal dewPoint,
            BigDecimal temperature,
            BigDecimal pressure,
            BigDecimal mirrorPressure,
            Map<Channel, BigDecimal> shown,
            Map<Channel, ToCome> toCome) {}

    /**
     * What a channel had still to change against the reference when it was recorded, in its quantity's difference unit.
     *
     * @param uncertainty standard uncertainty, not negative
     */
    public record ToCome(BigDecimal value, BigDecimal uncertainty) {}

    RecordedReadings(String source, List<Channel> channels, List<Row> rows) {
        this.source = source;
        this.channels = List.copyOf(channels);
        this.rows = rows;
    }

    /**
     * Reads a file in UTF-8 of at most {@link #LIMIT_BYTES}.
     *
     * @throws RecordingRefused with the places in the file, if it cannot be used as it is
     */
    public static RecordedReadings read(Path file) {
        return read(file, LIMIT_BYTES);
    }

    /**
     * Reads a file in UTF-8. It is never held as a whole; the readings take about twice its size, and 150 MB at most.
     *
     * @param limitBytes a larger file is refused before it is read
     * @throws RecordingRefused with the places in the file, if it cannot be used as it is
     */
    public static RecordedReadings read(Path file, long limitBytes) {
        Path last = file.getFileName();
        return RecordedReader.read(file, (last == null ? file : last).toString(), limitBytes);
    }

    /**
     * Reads a text.
     *
     * @param name what errors call it
     * @throws RecordingRefused with the places in the text, if it cannot be used as it is
     */
    public static RecordedReadings parse(String text, String name) {
        return new RecordedReader(name).read(new StringReader(text));
    }

    /** The file's name, without its folder. */
    public String source() {
        return source;
    }

    /** The instruments' channels, in the order of the columns. */
    public List<Channel> channels() {
        return channels;
    }

    /** In the order of the file, which is the order of time; at least one. Each is made anew when it is asked for. */
    public List<Row> rows() {
        return rows;
    }
}
