// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;
import isohume.result.Characterisation.AtTemperature;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Gathers the lines of one budget. Every line names its evidence, so that a reviewer can go and look. */
final class Lines {
    private static final String SETTLING = "still to settle, against the reference";
    private static final int SETTLING_TAIL_SECONDS = 600; // common practice, no source

    private static final double CREEP_SHARE = 0.004; // of a change of humidity, common practice, no source

    private final List<Input> lines = new ArrayList<>();

    List<Input> all() {
        return List.copyOf(lines);
    }

    Lines halfWidth(String symbol, String description, double halfWidth, String unit, Origin origin, String evidence) {
        lines.add(Input.of(symbol, description, 0, unit, new Distribution.Rectangular(halfWidth), origin, evidence));
        return this;
    }

    Lines standard(String symbol, String description, double u, String unit, Origin origin, String evidence) {
        lines.add(Input.of(symbol, description, 0, unit, new Distribution.Normal(u), origin, evidence));
        return this;
    }

    Lines noise(String symbol, String description, Track track, String unit) {
        lines.add(Input.of(symbol, description, 0, unit, track.noise(), track.origin(), track.evidence()));
        return this;
    }

    /** The reading of an instrument under test: its mean, last digit and noise. */
    Lines reading(Track shown, Specification channel) {
        String unit = channel.quantity().differenceUnit();
        lines.add(Input.of(
                "u_res",
                "resolution of the instrument",
                shown.mean(),
                unit,
                new Distribution.Rectangular(channel.resolution() / 2),
                Origin.MEASURED,
                "last digit on the path that was read"));
        return noise("u_rep", "repeatability of the instrument", shown, unit);
    }

    /**
     * The reading of a channel that is derived: the last digits of both that it is derived from, and its own noise. What
     * their noise has in common is in that already, since it is the noise of what followed from the two at each instant.
     */
    Lines derived(Track shown, Specification channel, Shown.Parents parents) {
        lastDigit("u1_res", parents.first(), parents.firstMean());
        lastDigit("u2_res", parents.second(), parents.secondMean());
        lines.add(Input.of(
                "u_rep",
                "repeatability of the instrument",
                shown.mean() - parents.value(), // a mean of values is not quite the value of means
                channel.quantity().differenceUnit(),
                shown.noise(),
                shown.origin(),
                "this record, computed at each instant, its line and about it"));
        return this;
    }

    private void lastDigit(String symbol, Specification channel, double mean) {
        lines.add(Input.of(
                symbol,
                "resolution of the instrument, " + channel.quantity().key().replace('_', ' '),
                mean,
                channel.quantity().unit(),
                new Distribution.Rectangular(channel.resolution() / 2),
                Origin.MEASURED,
                "last digit on the path that was read"));
    }

    /** What the reading had still to change, as the run that took the record knew it. */
    Lines settling(StillToCome toCome, Quantity quantity) {
        return standard(
                "u_settle",
                SETTLING,
                toCome.ofUncorrected(),
                quantity.differenceUnit(),
                Origin.MEASURED,
                String.format(
                        Locale.ROOT,
                        "tail fitted to all since the set point: %.2g ± %.2g, not corrected for",
                        toCome.value() + 0.0, // a file keeps no sign of a zero
                        toCome.standardUncertainty()));
    }

    /** The same before anything is read: what waiting is meant to leave. */
    Lines settlingLeft(double standardUncertainty, Quantity quantity) {
        return standard(
                "u_settle",
                SETTLING,
                standardUncertainty,
                quantity.differenceUnit(),
                Origin.ASSUMED,
                "what the settling rule leaves");
    }

    /** The same, of a record that nothing is known of but itself. */
    Lines settling(Track difference, Quantity quantity) {
        return halfWidth(
                "u_settle",
                SETTLING,
                Math.max(difference.driftOverHalf(), difference.perSecond() * SETTLING_TAIL_SECONDS),
                quantity.differenceUnit(),
                Origin.MEASURED,
                "slope of the difference times a tail of " + SETTLING_TAIL_SECONDS / 60 + " min");
    }

    /**
     * What a polymer sensor still owes of the last change of humidity: it comes over hours, too slowly to be seen in a
     * record.
     *
     * @param symbol {@code u_creep}, or {@code u1_creep} where the reading is derived from the humidity
     */
    Lines creep(String symbol, double changePercent) {
        return halfWidth(
                symbol,
                "late share of the change of humidity before",
                CREEP_SHARE * Math.abs(changePercent),
                "% RH",
                Origin.ASSUMED,
                CREEP_SHARE * 100 + " % of the change, common practice");
    }

    /** The mirror's pressure above the chamber's, as measured, with what is not known of it. */
    Lines pressureDifference(double pascals, double halfWidth, String evidence) {
        lines.add(Input.of(
                "dp_mc",
                "pressure, mirror above chamber",
                pascals,
                "Pa",
                new Distribution.Rectangular(halfWidth),
                Origin.CERTIFICATE,
                evidence));
        return this;
    }

    /** A reference by its certificate: value, correction, interpolation, drift since, last digit. */
    Lines reference(String prefix, String what, Reference reference, Track track) {
        Certified certified = Certified.at(reference, track.mean());
        String certificate = "certificate " + reference.traceability().number();
        lines.add(Input.of(
                prefix + "cal",
                what + ": calibration",
                track.mean() + certified.correction(),
                "°C",
                new Distribution.Expanded(
                        certified.expanded(), reference.traceability().k()),
                Origin.CERTIFICATE,
                certificate));
        return halfWidth(
                        prefix + "int",
                        what + ": between the certificate's points",
                        certified.interpolation(),
                        "K",
                        Origin.CERTIFICATE,
                        certificate)
                .halfWidth(
                        prefix + "drift",
                        what + ": drift since then",
                        reference.drift(),
                        "K",
                        Origin.ASSUMED,
                        reference.id())
                .halfWidth(
                        prefix + "read",
                        what + ": readout and last digit",
                        reference.resolution(),
                        "K",
                        Origin.ASSUMED,
                        reference.id())
                .halfWidth(
                        prefix + "stab",
                        what + ": drift in the record",
                        track.driftOverHalf(),
                        "K",
                        track.origin(),
                        track.evidence())
                .noise(prefix + "rep", what + ": noise", track, "K");
    }

    /** What separates the thermometer's air from the instrument's. */
    Lines place(AtTemperature figures, String study) {
        return halfWidth(
                        "t_self",
                        "air temperature: self-heating left",
                        figures.selfHeating(),
                        "K",
                        Origin.CERTIFICATE,
                        study)
                .halfWidth(
                        "t_unif",
                        "air temperature: thermometer to instrument",
                        figures.uniformity(),
                        "K",
                        Origin.CERTIFICATE,
                        study)
                .halfWidth(
                        "t_rad",
                        "air temperature: radiation of the walls",
                        figures.radiation(),
                        "K",
                        Origin.CERTIFICATE,
                        study)
                .halfWidth(
                        "t_load",
                        "air temperature: heat of the load",
                        figures.loading(),
                        "K",
                        Origin.CERTIFICATE,
                        study);
    }
}
