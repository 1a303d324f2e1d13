// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import isohume.benchmarks.Conditions;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.moistair.MoistAirBatch;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/** Relative humidities (fractions) and dew points (°C) of all conditions, with enhancement factors on both sides. */
final class AirWork {
    private final MoistAir air = MoistAir.by(Formulation.DEFAULT);
    private final MoistAirBatch batch = air.batch();
    private final MoistAirBatch preview = air.preview();
    private final Conditions given;
    private final double[] out;

    AirWork(Conditions given) {
        this.given = given;
        this.out = new double[given.count()];
    }

    double[] reckon(String work) {
        switch (work) {
            case "humidity" -> humidity();
            case "humidity-batch" -> humidity(batch);
            case "humidity-preview" -> humidity(preview);
            case "dewpoint" -> dewPoint();
            case "dewpoint-batch" ->
                batch.dewPoint(given.humidity(), given.air(), given.pressure(), given.pressure(), Phase.WATER, out);
            default -> throw new IllegalArgumentException("no work is called " + work);
        }
        return out;
    }

    private void humidity() {
        for (int i = 0; i < out.length; i++) {
            Pressure total = Pressure.ofPascals(given.pressure()[i]);
            DewPoint point = DewPoint.overWater(Temperature.ofCelsius(given.dewPoint()[i]));
            out[i] = air.relativeHumidity(point, total, Temperature.ofCelsius(given.air()[i]), total)
                    .fraction();
        }
    }

    private void humidity(MoistAirBatch by) {
        by.relativeHumidity(given.dewPoint(), given.pressure(), given.air(), given.pressure(), Phase.WATER, out);
    }

    private void dewPoint() {
        for (int i = 0; i < out.length; i++) {
            Pressure total = Pressure.ofPascals(given.pressure()[i]);
            RelativeHumidity humidity = RelativeHumidity.ofFraction(given.humidity()[i]);
            out[i] = air.dewPoint(humidity, Temperature.ofCelsius(given.air()[i]), total, total, Phase.WATER)
                    .celsius();
        }
    }
}
