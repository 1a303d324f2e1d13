// SPDX-License-Identifier: Apache-2.0
package isohume.device.scpi;

import isohume.device.line.Question;
import isohume.device.text.LineQuestion;

/** A query; an answer of the other kind is late. */
final class ScpiQuestion implements Question<ScpiSaid> {
    static final String ERRORS = "SYST:ERR?";

    private final LineQuestion<ScpiSaid> line;
    private final boolean errors;

    ScpiQuestion(LineQuestion.Manner manner, String ask) {
        this.line = new LineQuestion<>(manner, ask, ScpiSaid::of);
        this.errors = ask.equals(ERRORS);
    }

    /** Nothing else looks like an entry of the error queue, so that one can be asked for at once after a silence. */
    @Override
    public boolean numbered() {
        return errors;
    }

    @Override
    public byte[] bytes(int number) {
        return line.bytes(number);
    }

    @Override
    public Hearing<ScpiSaid> hear(byte[] seen, int number) {
        Hearing<ScpiSaid> hearing = line.hear(seen, number);
        return hearing instanceof Hearing.Whole<ScpiSaid>(ScpiSaid said, int bytes)
                        && said instanceof ScpiSaid.Queued != errors
                ? new Hearing.Late<>(bytes)
                : hearing;
    }
}
