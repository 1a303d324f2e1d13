// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.Flows.Feed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Figures computed by an independent script from 60 Q n M (r out − r in), with vapour pressures by Sonntag (Z. Meteorol.
 * 70 (1990) 340) and Greenspan (J. Res. NBS 80A (1976) 41), Q at 23 °C and 1013.25 hPa, and nothing coming in.
 */
class ConsumptionTest {
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);
    private static final Setpoint ROOM = at(23, 50);

    @ParameterizedTest(name = "1 L/min at a dew point of {0} °C takes {1} g/h")
    @CsvSource({"0, 0.2710", "5, 0.3878", "12, 0.6269", "21.3, 1.1458", "30, 1.9546", "40, 3.5145", "55, 8.2477"})
    void water_of_dried_air_that_leaves_with_a_dew_point(double dew, double grams) {
        Use use = of(Feed.DRIED, -80, 58).anHourAt(withDewPoint(60, dew), 1);
        assertEquals(grams, use.water(), 0.0006);
    }

    @Test
    void drying_room_air_costs_what_it_holds() {
        assertEquals(3.1412, of(Feed.DRIED, -80, 58).anHourAt(at(23, 50), 5).dryingAgent(), 0.0006);
    }

    @Test
    void water_that_the_room_brings_need_not_come_from_the_tank() {
        Use dried = of(Feed.DRIED, -30, 30).anHourAt(at(23, 50), 1);
        Use room = of(Feed.ROOM, -30, 30).anHourAt(at(23, 50), 1);
        Use again = of(Feed.RECIRCULATED, -30, 30).anHourAt(at(23, 50), 1);
        assertTrue(room.water() < dried.water() && again.water() < dried.water());
        assertTrue(room.dryingAgent() < dried.dryingAgent());
    }

    @Test
    void what_goes_round_takes_as_much_from_the_tank_as_the_drying_agent_takes_up() {
        Use use = of(Feed.RECIRCULATED, -30, 30).anHourAt(at(23, 60), 2);
        assertEquals(use.water(), use.dryingAgent(), 1e-12);
    }

    private static Consumption of(Feed feed, double frost, double dew) {
        return new Consumption(InventedReach.ofStreams(frost, dew), feed, ROOM, AIR);
    }

    private static Setpoint withDewPoint(double celsius, double dew) {
        return new Setpoint(
                Temperature.ofCelsius(celsius),
                AIR.relativeHumidity(
                        new DewPoint(Temperature.ofCelsius(dew), Phase.WATER),
                        Pressure.STANDARD,
                        Temperature.ofCelsius(celsius),
                        Pressure.STANDARD));
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }
}
