// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.Formulation;
import isohume.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;

/**
 * Everything agreed and known before readings mean anything.
 *
 * @param number the order's number
 * @param method the laboratory's procedure
 * @param place where it was done, the customer's site included
 * @param decision how conformity is decided
 * @param references by what they measure: dew point, temperature, pressure
 */
public record Job(
        String number,
        Party laboratory,
        Party customer,
        String place,
        String method,
        String operator,
        Formulation formulation,
        Decision decision,
        String benchTitle,
        List<Reference> references,
        Characterisation characterisation,
        List<Item> items) {
    public Job {
        references = List.copyOf(references);
        items = List.copyOf(items);
    }

    /** A laboratory or a customer, with the lines of its address. */
    public record Party(String name, List<String> address) {
        public Party {
            address = List.copyOf(address);
        }
    }

    /** Decision rules that can be agreed on. */
    public enum Decision {
        /** Acceptance limit equals tolerance. */
        SIMPLE_ACCEPTANCE,
        /** Acceptance limit equals tolerance minus expanded uncertainty; what lies beyond is not accepted. */
        GUARD_BAND,
        /** The same guard band on both sides of the tolerance, and four answers instead of two. */
        GUARD_BAND_FOUR_ANSWERS,
        /** No statement of conformity was asked for. */
        NONE
    }

    /** The reference for a quantity; there is one of each. */
    Reference reference(Quantity quantity) {
        return references.stream()
                .filter(r -> r.quantity() == quantity)
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("job " + number + " names no reference for " + quantity.key()));
    }

    /** The references that were not valid on a day, by their certificates. */
    public List<Reference> overdue(LocalDate day) {
        return references.stream()
                .filter(r -> r.traceability().due().isBefore(day))
                .toList();
    }
}
