// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What a command answered. */
record Said(int code, String answer, String messages) {
    /** Runs a command as from a terminal. */
    static Said by(Object... arguments) {
        String[] texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = arguments[i].toString();
        }
        StringWriter answers = new StringWriter();
        StringWriter messages = new StringWriter();
        int code = Isohume.run(new PrintWriter(answers), new PrintWriter(messages), texts);
        return new Said(code, answers.toString(), messages.toString());
    }
}
