// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.Basis;
import isohume.moistair.MoistAir;
import isohume.moistair.StatedUncertainty;
import isohume.moistair.StatedUncertainty.Coverage;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.uncertainty.Origin;

/**
 * What the formulas of a relative humidity may be wrong by themselves, as is stated of them at the temperatures in use.
 *
 * <p>Saturation at the dew point and at the air temperature count as independent, although they are one formula if both
 * are over water: what they share would cancel in the ratio. Enhancement factors all lie below those of real-gas models,
 * so their ratio is wrong by no more than the larger of the two.
 */
final class StatedLines {
    private StatedLines() {}

    /**
     * Adds the lines.
     *
     * @param mirrorPascals total pressure at the mirror
     * @throws isohume.moistair.OutsideRange where nothing is stated of a formula, for instance beyond 70 to 110 kPa
     */
    static void addTo(Lines lines, HumidityModel model, double dewPoint, double mirrorPascals, double celsius) {
        add(lines, model, dewPoint, mirrorPascals, "e_air", "the air temperature", celsius, Phase.WATER);
    }

    /** The same, of a mirror's dew point that is expressed over another phase than its deposit. */
    static void addConversionTo(
            Lines lines, HumidityModel model, double dewPoint, double mirrorPascals, double other, Phase over) {
        add(lines, model, dewPoint, mirrorPascals, "e_over", "the same over the other phase", other, over);
    }

    private static void add(
            Lines lines,
            HumidityModel model,
            double dewPoint,
            double mirrorPascals,
            String symbol,
            String where,
            double celsius,
            Phase phase) {
        MoistAir air = model.air();
        Temperature point = Temperature.ofCelsius(dewPoint);
        Temperature at = Temperature.ofCelsius(celsius);
        Phase deposit = model.deposit();
        add(
                lines,
                "e_eq",
                "saturation equation at the dew or frost point, relative",
                air.saturationUncertainty(point, deposit),
                air.saturationSource(deposit).toString());
        add(
                lines,
                symbol,
                "saturation equation at " + where + ", relative",
                air.saturationUncertainty(at, phase),
                air.saturationSource(phase).toString());
        StatedUncertainty atMirror = air.enhancementUncertainty(point, Pressure.ofPascals(mirrorPascals), deposit);
        StatedUncertainty inChamber = air.enhancementUncertainty(at, Pressure.ofPascals(model.chamberPascals()), phase);
        boolean mirror = atMirror.standard() >= inChamber.standard();
        add(
                lines,
                "f_eq",
                "ratio of enhancement factors, relative",
                mirror ? atMirror : inChamber,
                air.enhancementSource(mirror ? deposit : phase).toString());
    }

    private static void add(Lines lines, String symbol, String words, StatedUncertainty stated, String source) {
        String evidence = source + ": " + stated.statement() + howKnown(stated.basis());
        Origin origin = stated.basis() == Basis.READ ? Origin.CERTIFICATE : Origin.ASSUMED;
        Lines unused = stated.coverage() == Coverage.LIMIT
                ? lines.halfWidth(symbol, words, stated.relative(), "1", origin, evidence)
                : lines.standard(symbol, words, stated.standard(), "1", origin, evidence);
    }

    private static String howKnown(Basis basis) {
        return switch (basis) {
            case READ -> "";
            case MEMORY -> " (from memory)";
            case COMPUTED -> " (found by comparison)";
        };
    }
}
