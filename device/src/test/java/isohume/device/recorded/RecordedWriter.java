// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import isohume.device.Channel;
import isohume.device.recorded.RecordedReadings.Row;
import isohume.quantity.Phase;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Writes readings in the form that {@link RecordedReadings} reads. */
final class RecordedWriter {
    private final List<Channel> channels;
    private final CsvWriter csv;

    /**
     * Writes the line of headings. Nothing is buffered here, and the writer stays open.
     *
     * @param channels the instruments' columns; each channel is named by its quantity, perhaps with an underscore and
     *     more, as in {@code temperature_2}
     */
    public RecordedWriter(List<Channel> channels, Writer out) {
        this.channels = List.copyOf(channels);
        this.csv = CsvWriter.builder()
                .bufferSize(0)
                .lineDelimiter(LineDelimiter.LF)
                .build(out);
        List<String> headings = new ArrayList<>();
        for (Column.Mark mark : Column.Mark.values()) {
            headings.add(mark.heading());
        }
        for (Column.Reference reference : Column.Reference.values()) {
            headings.add(reference.heading() + " [" + reference.quantity().unit() + "]");
        }
        for (Channel channel : channels) {
            headings.add(channel.id() + " [" + channel.quantity().unit() + "]");
        }
        write(headings);
    }

    /** Writes one line; a channel that is not in {@code row.shown()} becomes a gap. */
    public void write(Row row) {
        List<String> cells = new ArrayList<>();
        cells.add(row.at().toString());
        cells.add(String.valueOf(row.point()));
        cells.add(row.deposit() == Phase.ICE ? "ice" : "water");
        for (BigDecimal number : List.of(row.dewPoint(), row.temperature(), row.pressure(), row.mirrorPressure())) {
            cells.add(number.toPlainString());
        }
        for (Channel channel : channels) {
            BigDecimal shown = row.shown().get(channel);
            cells.add(shown == null ? "" : shown.toPlainString());
        }
        write(cells);
    }

    private void write(List<String> cells) {
        CsvWriter unused = csv.writeRecord(cells);
    }
}
