// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import java.util.List;

/**
 * A chamber that is told where to go by holding registers. A request holds the line from its first write to its last
 * read, so {@link #rest} from another thread comes wholly before or wholly after it, never in between; it ends within twice the time limit if another
 * thread holds the line, otherwise within the limit.
 */
final class ModbusChamber implements Chamber {
    private final DeviceDescription description;
    private final ModbusInstrument instrument;
    private final ControlCodec codec;
    private final TcpLine line;

    ModbusChamber(DeviceDescription description, Controls controls, ModbusInstrument instrument, TcpLine line) {
        this.description = description;
        this.instrument = instrument;
        this.codec = new ControlCodec(controls);
        this.line = line;
    }

    @Override
    public Answer request(Setpoint target) {
        return codec.refusal(target).<Answer>map(Answer.Refused::new).orElseGet(() -> requestWithin(target, limit()));
    }

    private Answer requestWithin(Setpoint target, Deadline deadline) {
        if (!line.take(deadline)) {
            return ControlCodec.answer(ModbusInstrument.busy(deadline), "");
        }
        try {
            return request(target, new Talk(line, description.unit(), deadline));
        } finally {
            line.release();
        }
    }

    private Answer request(Setpoint target, Talk talk) {
        for (Ask.Write write : codec.request(target)) {
            switch (talk.ask(write)) {
                case Reply.Written written -> {} // on to the next
                case Reply.Refusal refusal -> {
                    return ControlCodec.answer(refusal.inWords(), "");
                }
                case Reply.No no -> {
                    return ControlCodec.answer(no, "");
                }
                case Reply.Words words -> {
                    return new Answer.None(Trouble.GARBLED, "a write was answered like a read");
                }
            }
        }
        return codec.held(talk.read(ReadPlan.of(codec.spans(), 0)));
    }

    @Override
    public Answer holds() {
        Deadline deadline = limit();
        if (!line.take(deadline)) {
            return ControlCodec.answer(ModbusInstrument.busy(deadline), "");
        }
        try {
            return codec.holds(new Talk(line, description.unit(), deadline).read(ReadPlan.of(codec.spans(), 0)));
        } finally {
            line.release();
        }
    }

    @Override
    public Answer rest() {
        if (!line.take(limit())) {
            return ControlCodec.answer(ModbusInstrument.busy(limit()), "");
        }
        try {
            Talk talk =
                    new Talk(line, description.unit(), limit()); // its own: the wait for the line must not use it up
            Answer first = rest(talk);
            boolean lost = first instanceof Answer.None none && none.trouble() != Trouble.SILENCE;
            return lost ? rest(talk) : first; // once more, over a new connection
        } finally {
            line.release();
        }
    }

    private Answer rest(Talk talk) {
        return switch (talk.ask(codec.rest())) {
            case Reply.Written written -> codec.rested(talk.read(List.of(codec.runSpan())));
            case Reply.Refusal refusal -> ControlCodec.answer(refusal.inWords(), "");
            case Reply.No no -> ControlCodec.answer(no, "");
            case Reply.Words words -> new Answer.None(Trouble.GARBLED, "a write was answered like a read");
        };
    }

    private Deadline limit() {
        return Deadline.in(description.timeLimit());
    }

    @Override
    public String id() {
        return instrument.id();
    }

    @Override
    public List<Channel> channels() {
        return instrument.channels();
    }

    @Override
    public List<Reading> read() {
        return instrument.read();
    }

    @Override
    public void close() {
        instrument.close();
    }
}
