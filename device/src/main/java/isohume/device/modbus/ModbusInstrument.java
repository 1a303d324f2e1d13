// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Described;
import isohume.device.line.Deadline;
import isohume.device.line.Line;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;

/** Moves the registers of a description over a line. */
final class ModbusInstrument extends Described {
    private static final int GAP = 8; // reading a few idle registers costs less than another request

    private final ModbusDescription description;
    private final ReadingCodec codec;
    private final Line line;
    private final InstantSource clock;
    private final Runnable release;
    private volatile List<Span> plan;

    /** @param release what lets go of the line */
    ModbusInstrument(ModbusDescription description, Line line, InstantSource clock, Runnable release) {
        super(description);
        this.description = description;
        this.codec = new ReadingCodec(description);
        this.line = line;
        this.clock = clock;
        this.release = release;
        this.plan = ReadPlan.of(codec.spans(), GAP);
    }

    @Override
    public List<Reading> read() {
        Instant at = clock.instant();
        Deadline deadline = Deadline.in(description.timeLimit());
        if (!line.take(deadline)) {
            return codec.absent(busy(deadline), at);
        }
        try {
            return codec.readings(read(new Talk(line, description.framing(), description.unit(), deadline)), at);
        } finally {
            line.release();
        }
    }

    /** Some devices refuse a span in which a register is missing; they are read without gaps from then on. */
    private Image read(Talk talk) {
        Image image = talk.read(plan);
        List<Span> gapless = ReadPlan.of(codec.spans(), 0);
        if (!talk.registersMissing() || plan.equals(gapless)) {
            return image;
        }
        plan = gapless;
        return talk.read(plan);
    }

    @Override
    public void close() {
        release.run();
    }

    static Reply.No busy(Deadline deadline) {
        return new Reply.No(Trouble.SILENCE, Line.held(deadline));
    }
}
