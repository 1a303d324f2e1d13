// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.quantity.Quantity;
import isohume.simulator.Fault;
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/** What goes wrong in a night. */
enum Trouble {
    NOTHING,
    SILENT,
    GARBLED,
    REFUSING,
    UNPLUGGED_AND_BACK,
    CHAMBER_SILENT,
    FROZEN,
    OUT_OF_RANGE,
    DISAGREEING_REFERENCES,
    DOOR_OPENED,
    DOOR_WITHOUT_CONTACT,
    WATER_LOW,
    WATER_OUT,
    DRY_AIR_NOT_DRY,
    OVER_TEMPERATURE,
    CLOCK_STEPPED,
    CHAMBER_WITHOUT_POWER,
    SET_BY_ANOTHER,
    DEW_POINT_NEAR_ZERO,
    DISK_FULL,
    PROCESS_KILLED,
    POWER_CUT,
    TWO_PROGRAMS;

    private static final List<Integer> READ = List.of(2, 3, 11, 12, 13); // Modbus units, but for the chamber
    private static final List<String> NAMES = List.of("mirror", "thermometer", "A-1042", "B-2077", "C-3310");

    /** In the words of the table. */
    String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether the bench itself is what goes wrong, and not the program on it. */
    boolean ofBench() {
        return compareTo(DISK_FULL) < 0;
    }

    /** How long it may last. Silence is waited out by the clock on the wall, so it is kept shorter. */
    Duration longest() {
        return Duration.ofMinutes(this == SILENT || this == CHAMBER_SILENT ? 12 : 45);
    }

    /** The points of the plan, as its sheet has them; the first dew points lie well above 0 °C. */
    String points(Dice dice) {
        return switch (this) {
            case DEW_POINT_NEAR_ZERO -> leg(20, 26.0 + dice.uniform(0, 0.4)) + leg(23, 50 + dice.whole(0, 20));
            case DRY_AIR_NOT_DRY -> leg(23, 50) + leg(23, 14);
            case WATER_OUT -> leg(30, 45) + leg(30, 78);
            default -> {
                int celsius = 20 + dice.whole(0, 8);
                yield leg(celsius, 42 + dice.whole(0, 12))
                        + leg(celsius + 4 * dice.whole(0, 1), 60 + dice.whole(0, 14));
            }
        };
    }

    private static String leg(double celsius, double percent) {
        return String.format(Locale.ROOT, "  - {temperature: %.0f, humidity: [%.2f]}%n", celsius, percent);
    }

    /** Makes it happen. */
    void begin(Night night, Dice dice) {
        int place = dice.whole(0, READ.size() - 1);
        switch (this) {
            case SILENT -> night.bench().fault(READ.get(place), Fault.SILENT);
            case GARBLED -> night.bench().fault(READ.get(place), Fault.GARBLED);
            case REFUSING -> night.bench().fault(READ.get(place), Fault.REFUSING);
            case UNPLUGGED_AND_BACK -> night.bench().fault(READ.get(place), Fault.UNPLUGGED);
            case FROZEN -> night.bench().fault(READ.get(place), Fault.FROZEN);
            case CHAMBER_SILENT -> night.bench().fault(1, Fault.SILENT);
            case OUT_OF_RANGE -> night.bench().offset(NAMES.get(place), quantity(place), dice.sign() * 300);
            case DISAGREEING_REFERENCES -> disagree(night, dice);
            case DOOR_OPENED, DOOR_WITHOUT_CONTACT -> night.bench().openDoor();
            case WATER_LOW -> night.bench().drainTo(dice.uniform(4, 9));
            case WATER_OUT -> night.bench().drainTo(0);
            case DRY_AIR_NOT_DRY -> night.bench().loadAgentTo(1);
            case OVER_TEMPERATURE -> night.bench().jamDrive(true);
            case CLOCK_STEPPED -> night.time().step(Duration.ofSeconds((long) dice.sign() * dice.whole(5, 7200)));
            case CHAMBER_WITHOUT_POWER -> night.bench().restartChamber();
            case SET_BY_ANOTHER -> night.bench().setAtPanel(20 + dice.whole(0, 10), 35 + dice.whole(0, 30));
            case DISK_FULL -> night.witness().fill(true);
            case POWER_CUT -> night.cutPower();
            case NOTHING, DEW_POINT_NEAR_ZERO, PROCESS_KILLED, TWO_PROGRAMS -> {}
        }
    }

    private static Quantity quantity(int place) {
        return NAMES.get(place).equals("mirror") ? Quantity.DEW_POINT : Quantity.TEMPERATURE;
    }

    /** A reference that is off by more than the bench's bound; what is off by less, nothing here can know. */
    private static void disagree(Night night, Dice dice) {
        if (dice.whole(0, 1) == 0) {
            night.bench().offset("mirror", Quantity.DEW_POINT, dice.sign() * dice.uniform(2, 6));
        } else {
            night.bench().offset("thermometer", Quantity.TEMPERATURE, dice.sign() * dice.uniform(0.9, 4));
        }
    }

    /** Puts it right again. */
    void end(Night night) {
        READ.forEach(unit -> night.bench().fault(unit, Fault.NONE));
        night.bench().fault(1, Fault.NONE);
        night.bench().offset("mirror", Quantity.DEW_POINT, 0);
        for (String name : NAMES.subList(1, NAMES.size())) {
            night.bench().offset(name, Quantity.TEMPERATURE, 0);
        }
        night.bench().closeDoor();
        night.bench().jamDrive(false);
        night.witness().fill(false);
    }
}
