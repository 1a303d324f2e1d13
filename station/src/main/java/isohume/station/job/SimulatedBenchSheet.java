// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.simulator.BenchParameters;
import isohume.simulator.TransmitterSpecification;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A simulated bench as a person writes it: any parameter that differs from the portable bench's. The form is described in
 * {@code docs/formats/simulated-bench.md}.
 *
 * <p>The parameters are records, some ninety numbers in all, and the records are the form: a section is a record, and a key
 * is a component's name in small letters with dashes.
 */
public final class SimulatedBenchSheet {
    private SimulatedBenchSheet() {}

    /**
     * The parameters in a file.
     *
     * @throws isohume.device.sheet.SheetError where the file is wrong, or a parameter is one for which the model says
     *     nothing
     */
    public static BenchParameters read(Path file) {
        return read(Sheet.read(file));
    }

    static BenchParameters read(Sheet sheet) {
        String unused = sheet.textOr("simulated-bench", ""); // a title for people
        return section(sheet, BenchParameters.portable());
    }

    private static <R extends Record> R section(Sheet sheet, R usual) {
        RecordComponent[] components = usual.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] = value(sheet, key(components[i].getName()), of(components[i], usual));
        }
        R read = made(sheet, usual, Stream.of(components).map(RecordComponent::getType), values);
        sheet.refuseOthers();
        return read;
    }

    static String key(String component) {
        return component.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    /** What a sheet says of one parameter, or of a section of them; what it does not say is as usual. */
    private static Object value(Sheet sheet, String key, Object usual) {
        return switch (usual) {
            case Double number ->
                sheet.numberOr(key, "", BigDecimal.valueOf(number)).doubleValue();
            case Record section ->
                sheet.optional(key)
                        .<Record>map(written -> section(written, section))
                        .orElse(section);
            case List<?> list ->
                transmitters(sheet.optionalList(key), BenchParameters.portable().transmitters());
            case String id -> sheet.textOr(key, id);
            default -> throw new IllegalStateException(key + " has no form: " + usual);
        };
    }

    private static List<TransmitterSpecification> transmitters(
            List<Sheet> written, List<TransmitterSpecification> usual) {
        List<String> ids = usual.stream().map(TransmitterSpecification::id).toList();
        List<TransmitterSpecification> all = new ArrayList<>(usual);
        for (Sheet one : written) {
            int place = ids.indexOf(one.oneOf("id", ids));
            all.set(place, section(one, usual.get(place)));
        }
        return all;
    }

    private static Object of(RecordComponent component, Record owner) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException(component + " cannot be read", closed);
        }
    }

    /** The record itself knows its limits. */
    private static <R extends Record> R made(Sheet sheet, R usual, Stream<Class<?>> types, Object[] values) {
        try {
            @SuppressWarnings("unchecked") // the class of an R
            Constructor<R> constructor =
                    (Constructor<R>) usual.getClass().getDeclaredConstructor(types.toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException beyond) {
                throw sheet.wrongHere(
                        String.valueOf(beyond.getMessage()), "the model says nothing beyond; choose a value within");
            }
            throw new IllegalStateException(refused);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException(usual.getClass() + " cannot be made", closed);
        }
    }
}
