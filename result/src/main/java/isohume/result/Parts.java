// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import java.util.List;

/**
 * Where each line of a budget enters a measurement model: a symbol's part before the underscore names the sum that it
 * belongs to. {@code d_cal} and {@code d_drift} are both parts of the dew point, so the model sees their sum.
 */
final class Parts {
    private Parts() {}

    /** A model over the sums named by {@code parts}, in that order. */
    static Model over(List<Input> inputs, List<String> parts, Model body) {
        int[] part = new int[inputs.size()];
        for (int i = 0; i < part.length; i++) {
            String symbol = inputs.get(i).symbol();
            part[i] = parts.indexOf(symbol.substring(0, symbol.indexOf('_')));
            if (part[i] < 0) {
                throw new IllegalArgumentException(symbol + " belongs to none of " + parts);
            }
        }
        return values -> {
            double[] sums = new double[parts.size()];
            for (int i = 0; i < part.length; i++) {
                sums[part[i]] += values[i];
            }
            return body.of(sums);
        };
    }
}
