// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Trouble;
import java.util.List;

/** What came of an {@link Ask}. */
sealed interface Reply {
    /** What became of a read, once refusals are put in words. */
    sealed interface Held extends Reply permits Words, No {}

    /** What the registers hold, each 0 to 65535, as many as asked for. */
    record Words(List<Integer> words) implements Held {}

    /** The device confirmed the write. */
    record Written() implements Reply {}

    /** No answer to the question; {@code detail} says in plain words what was seen. */
    record No(Trouble trouble, String detail) implements Held {}

    /** The device understood and said no, with a code of the specification, section 7. */
    record Refusal(int code) implements Reply {
        static final int ILLEGAL_ADDRESS = 2;

        No inWords() {
            String meaning = switch (code) {
                case 1 -> "it does not know this function";
                case ILLEGAL_ADDRESS -> "it has no such register";
                case 3 -> "it does not accept this value";
                case 4 -> "it failed while it carried the request out";
                case 5 -> "it needs longer and asks for patience";
                case 6 -> "it is busy";
                case 8 -> "its memory has an error";
                case 10 -> "the gateway has no path to it";
                case 11 -> "it did not answer the gateway";
                default -> "a code that the specification does not have";
            };
            return new No(Trouble.REFUSED, "the device refused: " + meaning + " (Modbus exception " + code + ")");
        }
    }
}
