// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.run.order.Constraints;
import java.math.BigDecimal;
import java.util.Optional;

/** The section {@code order} of a plan: what an order of its points has to keep to. */
final class OrderSheet {
    private OrderSheet() {}

    static Constraints read(Optional<Sheet> given) {
        Constraints usual = Constraints.usual();
        if (given.isEmpty()) {
            return usual;
        }
        Sheet sheet = given.get();
        double above = sheet.numberOr("wet-above", "% RH", BigDecimal.valueOf(usual.wetAbove()))
                .doubleValue();
        if (!(above > 0 && above <= 100)) {
            throw sheet.wrong("wet-above", above + " % RH cannot be", "give a relative humidity, usually 80");
        }
        Constraints read = new Constraints(above, sheet.oneOfOr("wet", Constraints.Wet.class, usual.wet()));
        sheet.refuseOthers();
        return read;
    }
}
