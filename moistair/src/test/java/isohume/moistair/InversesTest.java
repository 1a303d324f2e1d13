// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every inverse agrees with its function to 1e-10 of the vapour pressure, over the whole range. */
class InversesTest {
    private static final long SEED = 20_261_125;
    private static final int CASES = 20_000;

    @ParameterizedTest
    @EnumSource
    void a_dew_or_frost_point_comes_back_from_its_vapour_pressure(Formulation formulation) {
        MoistAir air = MoistAir.by(formulation);
        Random random = new Random(SEED);
        double highest = Air.highestPascals(formulation);
        for (int i = 0; i < CASES; i++) {
            DewPoint point = anyPoint(air, i % 2 == 0 ? Phase.WATER : Phase.ICE, random);
            Pressure total = Air.pascals(1.02e5 + (highest - 1.02e5) * random.nextDouble());
            assertComesBack(air, point, total, "seed " + SEED + " case " + i);
        }
    }

    private static DewPoint anyPoint(MoistAir air, Phase deposit, Random random) {
        double low = air.coldest(deposit).celsius();
        double high = air.warmest(deposit).celsius();
        return new DewPoint(Air.celsius(low + (high - low) * random.nextDouble()), deposit);
    }

    private static void assertComesBack(MoistAir air, DewPoint point, Pressure total, String which) {
        Pressure vapour = air.vapourPressure(point, total);
        DewPoint found = air.dewPoint(vapour, total, point.deposit());
        assertEquals(point.deposit(), found.deposit());
        double again = air.vapourPressure(found, total).pascals();
        assertEquals(vapour.pascals(), again, 1e-10 * vapour.pascals(), () -> which + ": " + point + " in " + total);
        assertEquals(point.celsius(), found.celsius(), 1e-4, () -> which + ": " + point + " in " + total);
    }

    @ParameterizedTest
    @EnumSource
    void a_humidity_comes_back_from_the_mirror_that_it_would_show(Formulation formulation) {
        MoistAir air = MoistAir.by(formulation);
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            int which = i;
            RelativeHumidity humidity = RelativeHumidity.ofPercent(1 + 99 * random.nextDouble());
            Temperature t = Air.celsius(5 + (air.warmest(Phase.WATER).celsius() - 20) * random.nextDouble());
            Pressure chamber = Air.pascals(7e4 + 3.8e4 * random.nextDouble());
            Pressure mirror = Air.pascals(chamber.pascals() * (0.98 + 0.03 * random.nextDouble()));
            if (isTooDry(air, humidity, t, chamber, mirror)) {
                continue;
            }
            DewPoint point = air.dewPoint(humidity, t, chamber, mirror, Phase.WATER);
            double back = air.relativeHumidity(point, mirror, t, chamber).percent();
            assertEquals(humidity.percent(), back, 1e-10 * back, () -> "seed " + SEED + " case " + which);
        }
    }

    private static boolean isTooDry(
            MoistAir air, RelativeHumidity humidity, Temperature t, Pressure chamber, Pressure mirror) {
        double driest = air.relativeHumidity(air.coldest(Phase.WATER), mirror, t, chamber)
                .fraction();
        return humidity.fraction() < driest * (1 + 1e-9);
    }

    @ParameterizedTest
    @EnumSource
    void the_ends_of_the_range_belong_to_it(Formulation formulation) {
        MoistAir air = MoistAir.by(formulation);
        Pressure total = Air.pascals(Air.highestPascals(formulation));
        for (Phase deposit : Phase.values()) {
            assertComesBack(air, air.coldest(deposit), total, "coldest");
            assertComesBack(air, air.warmest(deposit), total, "warmest");
        }
    }

    @Test
    void saturated_air_has_its_own_temperature_as_dew_point() {
        MoistAir air = MoistAir.by(Formulation.SONNTAG_1990);
        for (double celsius = -49; celsius < 95; celsius += 1.37) {
            Temperature t = Air.celsius(celsius);
            DewPoint point = air.dewPoint(Air.percent(100), t, Pressure.STANDARD, Pressure.STANDARD, Phase.WATER);
            assertEquals(celsius, point.celsius(), 1e-9);
        }
    }

    @Test
    void a_frost_point_lies_above_the_dew_point_of_the_same_vapour() {
        MoistAir air = MoistAir.by(Formulation.HARDY_1998);
        for (double celsius = -50; celsius < -0.1; celsius += 0.7) {
            Pressure vapour = air.vapourPressure(Air.dew(celsius), Pressure.STANDARD);
            double frost = air.dewPoint(vapour, Pressure.STANDARD, Phase.ICE).celsius();
            double dew = celsius;
            assertTrue(frost > dew + 0.05 * Math.abs(dew), () -> "dew " + dew + ", frost " + frost);
        }
    }

    @Test
    void a_solver_that_may_not_take_enough_steps_says_so_with_its_numbers() {
        Rising cube = new Rising() {
            @Override
            public double at(double x) {
                return x * x * x;
            }

            @Override
            public double slopeAt(double x) {
                return 3 * x * x;
            }
        };
        SolverFailed failed = assertThrows(SolverFailed.class, () -> {
            double unused = cube.whereIs(1e-9, -1, 100, 100, 1e-12, 4);
        });
        assertEquals(1e-9, failed.wanted());
        assertEquals(4, failed.steps());
        assertTrue(failed.last() > 1 && failed.miss() > 1, failed::getMessage);
    }

    /** Newton alone divides by zero at the start and overshoots wildly afterwards. */
    @Test
    void a_bad_start_does_not_throw_the_solver_off() {
        Rising flat = new Rising() {
            @Override
            public double at(double x) {
                return StrictMath.atan(x);
            }

            @Override
            public double slopeAt(double x) {
                return 1 / (1 + x * x);
            }
        };
        assertEquals(0.5, flat.whereIs(StrictMath.atan(0.5), -1e6, 1e6, 9e5, 1e-12, 100), 1e-12);
    }
}
