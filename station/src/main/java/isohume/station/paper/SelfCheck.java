// SPDX-License-Identifier: Apache-2.0
package isohume.station.paper;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.certificate.ReportPdf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;

/**
 * Published figures, computed anew on this machine.
 *
 * @param machine program, Java and system, each by its name
 */
public record SelfCheck(Map<String, String> machine, Instant at, List<Line> lines) {
    private static final MathContext SHOWN = new MathContext(12);
    private static final MathContext SHOWN_DIFFERENCE = new MathContext(2);

    public SelfCheck {
        machine = Collections.unmodifiableMap(new LinkedHashMap<>(machine));
        lines = List.copyOf(lines);
    }

    /**
     * One figure.
     *
     * @param limit largest difference that still is agreement
     * @param found NaN when it could not be computed
     */
    public record Line(String what, String source, double expected, String unit, double limit, double found) {
        public double difference() {
            return found - expected;
        }

        public boolean holds() {
            return Math.abs(difference()) <= limit; // false for NaN
        }
    }

    /** Computes all figures; takes some seconds. */
    public static SelfCheck run(Map<String, String> machine, Instant at) {
        List<Line> lines = new ArrayList<>();
        for (var check : isohume.moistair.PublishedChecks.all()) {
            lines.add(new Line(
                    check.what(),
                    check.source(),
                    check.expected(),
                    check.unit(),
                    check.limit(),
                    computed(check.found())));
        }
        for (var check : isohume.uncertainty.published.PublishedChecks.all()) {
            lines.add(new Line(
                    check.name(),
                    check.source(),
                    check.expected(),
                    check.unit(),
                    check.limit(),
                    computed(check.found())));
        }
        return new SelfCheck(machine, at, lines);
    }

    private static double computed(DoubleSupplier figure) {
        try {
            return figure.getAsDouble();
        } catch (IllegalArgumentException | ArithmeticException | IllegalStateException notComputed) {
            return Double.NaN; // a figure that is not to be had is one that disagrees
        }
    }

    public boolean holds() {
        return failed() == 0;
    }

    /** How many figures disagree. */
    public long failed() {
        return lines.stream().filter(line -> !line.holds()).count();
    }

    /** A figure with as many digits as anybody compares. */
    public static String figure(double value) {
        return text(value, SHOWN);
    }

    /** A difference, of which only the size matters. */
    public static String difference(double value) {
        return text(value, SHOWN_DIFFERENCE);
    }

    private static String text(double value, MathContext digits) {
        if (!Double.isFinite(value)) {
            return "none";
        }
        BigDecimal rounded = new BigDecimal(value).round(digits).stripTrailingZeros();
        boolean readable = rounded.signum() == 0 || (rounded.scale() < 9 && rounded.precision() - rounded.scale() < 8);
        return readable ? rounded.toPlainString() : rounded.toString();
    }

    /** With all digits; what is not a finite number is null. */
    public String json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        machine.forEach(node.putObject("machine")::put);
        node.put("at", at.toString()).put("holds", holds());
        for (Line line : lines) {
            ObjectNode one = node.withArray("/figures").addObject();
            one.put("figure", line.what()).put("source", line.source()).put("unit", line.unit());
            one.put("expected", line.expected());
            if (Double.isFinite(line.found())) {
                one.put("found", line.found()).put("difference", line.difference());
            } else {
                one.putNull("found").putNull("difference");
            }
            one.put("limit", line.limit()).put("holds", line.holds());
        }
        return node.toPrettyString() + "\n";
    }

    /** As a document. */
    public byte[] pdf() throws IOException {
        List<String> facts = new ArrayList<>();
        machine.forEach((what, which) -> facts.add(what + ": " + which));
        facts.add("computed at " + at);
        facts.add(lines.size() - failed() + " of " + lines.size() + " figures agree");
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(List.of(
                    line.what(),
                    line.source(),
                    figure(line.expected()),
                    figure(line.found()),
                    difference(line.limit()),
                    line.unit(),
                    line.holds() ? "agrees" : "differs"));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new ReportPdf("Published figures, computed on this machine", facts)
                .table(
                        List.of("28 figure", "26 source", "13 expected", "13 found", "7 limit", "5 unit", "8 answer"),
                        rows)
                .write(bytes);
        return bytes.toByteArray();
    }
}
