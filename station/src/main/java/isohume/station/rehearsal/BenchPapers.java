// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.simulator.Attainable;
import isohume.simulator.BenchParameters;
import isohume.simulator.MirrorSpecification;
import isohume.simulator.ThermometerSpecification;
import isohume.simulator.TransmitterSpecification;
import isohume.simulator.Uniformity;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The worksheet for any simulated bench: certificates, study and reach as a laboratory has them that knows how far things
 * may be off, and not how far they are. The figures are those from which a seed draws, so that what a budget promises can
 * be held against the truth.
 */
public final class BenchPapers {
    private static final Texts FORMS = Texts.packagedWith(BenchPapers.class);
    private static final double LEAST = 0.001; // no certificate states 0
    private static final double MIRROR_STEP = 0.01; // K, of the register
    private static final double THERMOMETER_STEP = 0.001;
    private static final double DRY_LINE = 2.5; // as the simulator has it at low frost points

    private final BenchParameters bench;
    private final Map<String, String> words = new LinkedHashMap<>();

    private BenchPapers(BenchParameters bench) {
        this.bench = bench;
    }

    /**
     * A worksheet with these points.
     *
     * @param title of bench and plan
     * @param points the list of legs, as in a plan; see {@code docs/formats/plan.md}
     * @throws IllegalArgumentException when the bench holds no temperature, or does not reach a point
     */
    public static Worksheet worksheet(BenchParameters bench, String title, String points) {
        BenchPapers papers = new BenchPapers(bench);
        papers.fill(title, points);
        return Worksheet.read(papers::text, "plan.yaml");
    }

    private String text(String form) {
        String text = FORMS.text(form);
        for (Map.Entry<String, String> word : words.entrySet()) {
            text = text.replace("<" + word.getKey() + ">", word.getValue());
        }
        return text;
    }

    private void fill(String title, String points) {
        words.put("title", '"' + title.replaceAll("[\"\\\\\\p{Cntrl}]", " ") + '"');
        words.put("points", points);
        Attainable reach = Attainable.by(bench);
        put("coldest", reach.coldest());
        put("warmest", reach.warmest());
        put("driest", bench.streams().freshFrostPoint());
        put("wettest", reach.wetStream());
        mirror(bench.mirror());
        thermometer(bench.thermometer());
        study(bench.uniformity());
        bench.transmitters().forEach(this::instrument);
    }

    private void mirror(MirrorSpecification mirror) {
        put("mirror certificate", certificate(mirror.certificate()));
        put("mirror drift", drawn(mirror.drift()));
        put("mirror half step", Math.max(mirror.resolution(), MIRROR_STEP) / 2);
        put("condensate", drawn(mirror.condensate()));
        put("line", drawn(mirror.line()));
        put("dry line", drawn(DRY_LINE * mirror.line()));
    }

    private void thermometer(ThermometerSpecification thermometer) {
        put("thermometer certificate", certificate(thermometer.certificate()));
        put("thermometer drift", drawn(thermometer.drift()));
        put("thermometer half step", Math.max(thermometer.resolution(), THERMOMETER_STEP) / 2);
        put("self-heating", drawn(thermometer.selfHeating()));
        put("radiation", drawn(thermometer.radiation()));
        put("pressure certificate", certificate(thermometer.pressureCertificate()));
        put("pressure difference", drawn(thermometer.pressureDifference()));
    }

    private void study(Uniformity uniformity) {
        double room = bench.surroundings().temperature();
        put("room", room);
        put("uniformity in the room", drawn(uniformity.halfWidth(0)));
        put("uniformity at -10", drawn(uniformity.halfWidth(-10 - room)));
        put("uniformity at 65", drawn(uniformity.halfWidth(65 - room)));
        put("loading", drawn(uniformity.loading()));
    }

    /** The registers have the steps of the usual instruments; a coarser display shows in them, a finer one does not. */
    private void instrument(TransmitterSpecification one) {
        TransmitterSpecification usual = BenchParameters.portable().transmitters().stream()
                .filter(other -> other.id().equals(one.id()))
                .findFirst()
                .orElseThrow();
        put(
                one.id() + " humidity step",
                Math.max(one.humidity().resolution(), usual.humidity().resolution()));
        put(
                one.id() + " temperature step",
                Math.max(one.temperature().resolution(), usual.temperature().resolution()));
    }

    private double certificate(double expanded) {
        return Math.max(drawn(expanded), LEAST);
    }

    private double drawn(double width) {
        return bench.drawn() * width;
    }

    private void put(String word, double value) {
        words.put(word, new BigDecimal(value, new MathContext(6)).toPlainString());
    }
}
