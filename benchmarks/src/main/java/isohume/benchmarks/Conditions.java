// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The states of air that everybody reckons with: dew points over water from 1 °C up, air from 10 to 55 °C, 95 to
 * 104 kPa. A class, not a record, because it holds arrays; they are read only.
 */
public final class Conditions {
    private static final long SEED = 20;
    private static final int COUNT = 10_000;

    private final double[] dewPoint;
    private final double[] air;
    private final double[] pressure;
    private final double[] humidity;

    private Conditions(int count) {
        dewPoint = new double[count];
        air = new double[count];
        pressure = new double[count];
        humidity = new double[count];
    }

    /** The same ones every time. */
    public static Conditions drawn() {
        Random random = new Random(SEED);
        Conditions drawn = new Conditions(COUNT);
        for (int i = 0; i < COUNT; i++) {
            double air = 10 + 45 * random.nextDouble();
            drawn.set(i, 1 + (air - 1.5) * random.nextDouble(), air, 95_000 + 9_000 * random.nextDouble());
        }
        return drawn;
    }

    private void set(int i, double dewPointCelsius, double airCelsius, double pascals) {
        dewPoint[i] = dewPointCelsius;
        air[i] = airCelsius;
        pressure[i] = pascals;
        Pressure total = Pressure.ofPascals(pascals);
        humidity[i] = MoistAir.by(Formulation.DEFAULT)
                .relativeHumidity(
                        DewPoint.overWater(Temperature.ofCelsius(dewPointCelsius)),
                        total,
                        Temperature.ofCelsius(airCelsius),
                        total)
                .fraction();
    }

    public int count() {
        return air.length;
    }

    /** °C. */
    public double[] dewPoint() {
        return dewPoint;
    }

    /** °C. */
    public double[] air() {
        return air;
    }

    /** Pa, at the mirror and in the chamber alike. */
    public double[] pressure() {
        return pressure;
    }

    /** As a fraction; what the dew points are reckoned from on the way back. */
    public double[] humidity() {
        return humidity;
    }

    /** One line each, {@code dew point,air,humidity}, with all digits, for programs in other languages. */
    public void write(Path file) throws IOException {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            lines.add(dewPoint[i] + "," + air[i] + "," + humidity[i]);
        }
        Files.write(file, lines);
    }
}
