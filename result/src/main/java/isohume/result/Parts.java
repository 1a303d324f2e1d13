// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import java.util.List;

/**
 * Where each line of a budget enters a measurement model: a symbol's part before the underscore names the sum that it
 * belongs to. {@code d_cal} and {@code d_drift} are both parts of the dew point, so the model sees their sum.
 */
final class Parts implements Model {
    private final int[] part; // of each input
    private final int sums;
    private final Model body;

    private Parts(int[] part, int sums, Model body) {
        this.part = part;
        this.sums = sums;
        this.body = body;
    }

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
        return new Parts(part, parts.size(), body);
    }

    @Override
    public double of(double[] values) {
        double[] sum = new double[sums];
        for (int i = 0; i < part.length; i++) {
            sum[part[i]] += values[i];
        }
        return body.of(sum);
    }

    @Override
    public void ofEach(double[][] values, int trials, double[] out) {
        double[][] sum = new double[sums][trials];
        for (int i = 0; i < part.length; i++) {
            add(values[i], sum[part[i]], trials);
        }
        body.ofEach(sum, trials, out);
    }

    private static void add(double[] column, double[] to, int trials) {
        for (int k = 0; k < trials; k++) {
            to[k] += column[k];
        }
    }
}
