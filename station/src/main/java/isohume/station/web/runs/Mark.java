// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import io.quarkus.qute.RawString;
import isohume.uncertainty.conformity.Verdict;

/** A verdict's mark: a square of four fillings. It stands beside the words, so readers that speak pass over it. */
final class Mark {
    private Mark() {}

    static RawString of(Verdict verdict) {
        String filling = switch (verdict) {
            case CONFORMS -> "<path class=\"full\" d=\"M1 1h14v14H1z\"/>";
            case CONFORMS_IN_GUARD_BAND -> "<path class=\"full\" d=\"M1 1h7v14H1z\"/>";
            case NOT_DECIDED -> "<path d=\"M8 1v14\"/>";
            case DOES_NOT_CONFORM -> "";
        };
        return new RawString("<svg class=\"mark-box\" viewBox=\"0 0 16 16\" aria-hidden=\"true\" focusable=\"false\">"
                + "<path d=\"M1 1h14v14H1z\"/>" + filling + "</svg>");
    }
}
