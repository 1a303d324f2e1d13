// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Phase;
import isohume.quantity.Quantity;

/** What quantities and deposits are called in print. */
final class Names {
    private Names() {}

    static String of(Quantity quantity) {
        return quantity.key().replace('_', ' ');
    }

    static String of(Phase deposit) {
        return switch (deposit) {
            case WATER -> "water";
            case ICE -> "ice";
        };
    }

    /** With a capital letter, for the beginning of a line. */
    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
