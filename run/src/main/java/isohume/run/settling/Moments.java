// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/**
 * Weighted sums over the last stretches of a history that every fit of a level and exponentials needs. Exponentials
 * are 1 at the end of the history and rise towards its beginning.
 */
final class Moments {
    private static final int K = TimeConstants.COUNT;
    private static final double LARGEST = 1e60; // of an exponential; a faster one is over and is left out

    final double[] growth = new double[K];
    private final double[] basis = new double[K];
    double weight;
    double values;
    final double[] bases = new double[K];
    final double[] products = new double[K];
    final double[][] squares = new double[K][K];
    int stretches;
    int known; // slower than this all exponentials are in the sums

    private final History history;
    private final double level;
    private final double usual;
    private int next;

    Moments(History history) {
        this.history = history;
        this.next = history.bins() - 1;
        this.level = history.mean(next);
        this.usual = usualCount(history);
        for (int k = 0; k < K; k++) {
            growth[k] = StrictMath.exp(history.width() / TimeConstants.seconds(k));
            basis[k] = 1;
        }
    }

    private static double usualCount(History history) {
        int present = 0;
        int values = 0;
        for (int i = 0; i < history.bins(); i++) {
            present += history.count(i) > 0 ? 1 : 0;
            values += history.count(i);
        }
        return (double) values / present;
    }

    /** What values are counted from, so that their digits are kept. */
    double level() {
        return level;
    }

    /** Weight of a stretch: 1 when it has as many values as usual. */
    double weight(int bin) {
        return history.count(bin) / usual;
    }

    /** Takes in all stretches from a place to the end. */
    void reachBackTo(int from) {
        for (; next >= from; next--) {
            if (history.count(next) > 0) {
                take(weight(next), history.mean(next) - level);
            }
            for (int k = known; k < K; k++) {
                basis[k] *= growth[k];
            }
            while (basis[known] > LARGEST) {
                known++;
            }
        }
    }

    private void take(double w, double y) {
        stretches++;
        weight += w;
        values += w * y;
        for (int k = known; k < K; k++) {
            double wb = w * basis[k];
            bases[k] += wb;
            products[k] += wb * y;
            for (int l = k; l < (k < TimeConstants.EARLY ? K : k + 1); l++) { // two late ones are never together
                squares[k][l] += wb * basis[l];
            }
        }
    }

    /** Sum of the products of two exponentials about their means, k not above l. */
    double centred(int k, int l) {
        return squares[k][l] - bases[k] * bases[l] / weight;
    }

    /** Sum of the products of an exponential and the values, about their means. */
    double centredProduct(int k) {
        return products[k] - bases[k] * values / weight;
    }
}
