// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Trouble;
import isohume.device.line.Question;
import isohume.device.line.Question.Hearing;
import isohume.device.sheet.Sheet;

/** Descriptions from text, and replies from bytes. */
final class Parsed {
    private Parsed() {}

    static ModbusDescription tcp(String text, String name) {
        return ModbusDescription.tcp(Sheet.parse(text, name));
    }

    /** What bytes say, if they are the reply and nothing but the reply. */
    static Reply reply(Question<Reply> question, int number, byte[] bytes) {
        Hearing<Reply> hearing = bytes.length == 0 ? new Hearing.More<>() : question.hear(bytes, number);
        return switch (hearing) {
            case Hearing.Whole<Reply>(Reply reply, int count) when count == bytes.length -> reply;
            case Hearing.Whole<Reply> whole -> new Reply.No(Trouble.GARBLED, "more came");
            case Hearing.More<Reply> more -> new Reply.No(Trouble.GARBLED, "too little came");
            case Hearing.Late<Reply> late -> new Reply.No(Trouble.GARBLED, "late");
            case Hearing.Nonsense<Reply>(String what) -> new Reply.No(Trouble.GARBLED, what);
        };
    }

    static ModbusDescription rtu(String text, String name) {
        return ModbusDescription.rtu(Sheet.parse(text, name));
    }
}
