// SPDX-License-Identifier: Apache-2.0
package isohume.device.scpi;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Meaning;
import isohume.device.driver.Meaning.Sense;
import isohume.device.driver.Shown;
import isohume.device.line.Heard;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;

/** A channel, the query that it is read by, and what the number means. Pure. */
record ScpiChannel(Shown shown, String ask, Meaning meaning) {
    private static final BigDecimal OVERLOAD = new BigDecimal("9.9e37");

    Reading reading(Heard<ScpiSaid> heard, Instant at) {
        return switch (heard) {
            case Heard.Said<ScpiSaid>(ScpiSaid.Measured(BigDecimal number, String line)) -> reading(number, line, at);
            case Heard.Said<ScpiSaid>(ScpiSaid.Queued error) ->
                shown.absent(at, Trouble.REFUSED, "the device refused " + ask + ": " + error.line());
            case Heard.Nothing<ScpiSaid>(Trouble trouble, String detail) -> shown.absent(at, trouble, detail);
        };
    }

    private Reading reading(BigDecimal number, String line, Instant at) {
        if (number.abs().compareTo(OVERLOAD) >= 0) {
            return shown.absent(at, Trouble.GARBLED, "the meter is overloaded or has no number to show (" + line + ")");
        }
        return switch (meaning.of(number)) {
            case Sense.Value(BigDecimal value, List<String> doubts) ->
                shown.reading(value, line, doubts, at, "the meter shows");
            case Sense.None(String why) -> shown.absent(at, Trouble.GARBLED, why + " (" + line + ")");
        };
    }
}
