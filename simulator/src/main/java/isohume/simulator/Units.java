// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.quantity.Quantity;
import isohume.simulator.Registers.WordOrder;
import java.util.Map;
import java.util.function.DoubleSupplier;

/** Who answers under which Modbus unit, and what is in which register; the device descriptions say the same. */
final class Units {
    static final int CHAMBER = 1;
    static final int MIRROR = 2;
    static final int THERMOMETER = 3;
    static final int FIRST_TRANSMITTER = 11;

    private static final int STATUS = 10;
    private static final int DOOR_OPEN = 1;
    private static final int WATER_LOW = 1 << 1;
    private static final int OVER_TEMPERATURE = 1 << 2;
    private static final int AGENT_SPENT = 1 << 3;

    private Units() {}

    static Map<Integer, Registers> of(World world) {
        return Map.of(
                CHAMBER,
                chamber(world),
                MIRROR,
                mirror(world),
                THERMOMETER,
                thermometer(world),
                FIRST_TRANSMITTER,
                scaledWords(world, world.transmitterIds().get(0)),
                FIRST_TRANSMITTER + 1,
                floatsInHolding(world, world.transmitterIds().get(1)),
                FIRST_TRANSMITTER + 2,
                floatsLowWordFirst(world, world.transmitterIds().get(2)));
    }

    private static Registers chamber(World world) {
        ChamberController controller = world.controller();
        return new Registers()
                .writable(
                        0,
                        500,
                        5000,
                        () -> (int) Math.rint(controller.wantedCelsius() * 100),
                        word -> controller.want(word / 100.0, controller.wantedPercent()))
                .writable(
                        1,
                        300,
                        9700,
                        () -> (int) Math.rint(controller.wantedPercent() * 100),
                        word -> controller.want(controller.wantedCelsius(), word / 100.0))
                .writable(2, 0, 1, () -> controller.running() ? 1 : 0, word -> controller.run(word == 1))
                .inInput()
                .int16(0, 0.01, world.register("chamber", Quantity.TEMPERATURE))
                .uint16(1, 0.01, world.register("chamber", Quantity.RELATIVE_HUMIDITY))
                .uint16(2, 0.1, world.register("chamber", Quantity.WATER_LEVEL))
                .uint16(3, 0.001, () -> controller.action().wetShare())
                .uint16(4, 0.01, () -> controller.action().flow())
                .int16(5, 0.1, () -> controller.action().watts())
                .word(STATUS, () -> status(world));
    }

    private static int status(World world) {
        return (world.doorOpen() ? DOOR_OPEN : 0)
                | (world.vapour().saturator().low() ? WATER_LOW : 0)
                | (world.controller().cutOut() ? OVER_TEMPERATURE : 0)
                | (world.vapour().agent().spent() ? AGENT_SPENT : 0);
    }

    private static Registers mirror(World world) {
        Mirror mirror = world.mirror();
        return new Registers()
                .inInput()
                .int16(0, 0.01, world.register("mirror", Quantity.DEW_POINT))
                .word(1, () -> mirror.deposit().register())
                .word(STATUS, () -> mirror.deposit() == Mirror.Deposit.UNKNOWN ? 1 : 0);
    }

    private static Registers thermometer(World world) {
        DoubleSupplier mirrorPascals = world.thermometer().mirrorPressure().shown();
        return new Registers()
                .inInput()
                .float32(0, WordOrder.BIG, world.register("thermometer", Quantity.TEMPERATURE))
                .uint32(2, WordOrder.BIG, world.register("thermometer", Quantity.PRESSURE))
                .float32(4, WordOrder.BIG, () -> mirrorPascals.getAsDouble() / 100);
    }

    private static Registers scaledWords(World world, String id) {
        return new Registers()
                .inInput()
                .uint16(0, 0.01, world.register(id, Quantity.RELATIVE_HUMIDITY))
                .int16(1, 0.01, world.register(id, Quantity.TEMPERATURE));
    }

    private static Registers floatsInHolding(World world, String id) {
        return new Registers()
                .inHolding()
                .float32(100, WordOrder.BIG, world.register(id, Quantity.RELATIVE_HUMIDITY))
                .float32(102, WordOrder.BIG, world.register(id, Quantity.TEMPERATURE));
    }

    private static Registers floatsLowWordFirst(World world, String id) {
        return new Registers()
                .inInput()
                .float32(32, WordOrder.LITTLE, world.register(id, Quantity.TEMPERATURE))
                .float32(34, WordOrder.LITTLE, world.register(id, Quantity.RELATIVE_HUMIDITY));
    }
}
