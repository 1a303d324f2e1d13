// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is judged while a point settles: the references, and the difference of each instrument from them. Both may move
 * together and the error still be settled, or the reference be flat and the instrument still creep.
 *
 * @param name in plain words
 * @param difference whether it is an instrument's difference from the reference
 * @param display the channel whose last digit limits what can be seen of it; empty when none does
 */
record Watched(String name, Quantity quantity, boolean difference, String display, Source source) {
    /** Where a signal's value is in a moment. */
    interface Source {
        OptionalDouble in(Moment moment);
    }

    static List<Watched> all(Roles roles) {
        String temperature = roles.temperature();
        String dewPoint = roles.dewPoint();
        List<Watched> all = new ArrayList<>();
        all.add(new Watched("air temperature", Quantity.TEMPERATURE, false, temperature, m -> m.value(temperature)));
        all.add(new Watched("dew point", Quantity.DEW_POINT, false, dewPoint, m -> m.value(dewPoint)));
        all.add(new Watched("relative humidity", Quantity.RELATIVE_HUMIDITY, false, "", Moment::humidity));
        roles.instruments().forEach(id -> all.add(difference(id, temperature)));
        return List.copyOf(all);
    }

    private static Watched difference(String id, String temperature) {
        String instrument = id.substring(0, id.indexOf('/'));
        Quantity quantity = Quantity.ofKey(id.substring(id.indexOf('/') + 1));
        String name = instrument + " " + quantity.key().replace('_', ' ') + " − reference";
        Source source = quantity == Quantity.TEMPERATURE
                ? m -> minus(m.value(id), m.value(temperature))
                : m -> minus(m.value(id), m.humidity());
        return new Watched(name, quantity, true, id, source);
    }

    private static OptionalDouble minus(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
                : OptionalDouble.empty();
    }

    boolean thermal() {
        return quantity == Quantity.TEMPERATURE;
    }
}
