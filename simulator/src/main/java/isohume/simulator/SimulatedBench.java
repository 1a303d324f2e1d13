// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.device.modbus.ModbusDescription;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A chamber with reference instruments and three instruments under test, served over Modbus TCP on the loopback.
 *
 * <p>Units: 1 chamber, 2 mirror, 3 thermometer and pressure gauges, 11 to 13 the instruments under test; the registers
 * are told by the device descriptions beside this class, in {@code devices/}. Time stands still until it is advanced;
 * what is written to the chamber takes effect from the next whole second on. Safe for any thread.
 */
public final class SimulatedBench implements AutoCloseable {
    /** The machine's own address, on which it answers. */
    public static final String HOST = WirePort.LOOPBACK;

    private static final int STEPS_AT_A_TIME = 300; // then readers get their turn

    private static final List<String> DEVICES =
            List.of("chamber", "mirror", "thermometer", "A-1042", "B-2077", "C-3310");

    private final Lock lock = new ReentrantLock(true);
    private final Faults faults = new Faults();
    private final World world;
    private final Map<Integer, Registers> units;
    private final Instant start;
    private final WirePort server;
    private final List<WirePort> others = new CopyOnWriteArrayList<>();
    private Instant now;
    private long steps;

    private SimulatedBench(BenchParameters parameters, long seed, Instant start, int port) {
        world = new World(parameters, seed);
        this.start = start;
        now = start;
        units = Units.of(world);
        server = new WirePort(new Answers(new ModbusSpeech(units, lock, false), faults), port);
    }

    /**
     * Starts a bench at rest, in balance with its room.
     *
     * @param seed decides everything that is drawn
     * @param start the instant at which its time begins
     * @param port TCP port on the loopback; 0 for any free one
     * @throws UncheckedIOException when the port cannot be had
     */
    public static SimulatedBench start(BenchParameters parameters, long seed, Instant start, int port) {
        return new SimulatedBench(parameters, seed, start, port);
    }

    /** The TCP port on which it answers. */
    public int port() {
        return server.port();
    }

    /** How the program reads it: a description of each device, in the order of their units, at this bench's port. */
    public List<ModbusDescription> descriptions() {
        List<ModbusDescription> all = new ArrayList<>();
        for (String id : DEVICES) {
            String name = "devices/" + id + ".yaml";
            try (InputStream in = SimulatedBench.class.getResourceAsStream(name)) {
                String text = new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
                all.add(ModbusDescription.tcp(Sheet.parse(text, name)).withAddress(HOST, port()));
            } catch (IOException broken) {
                throw new UncheckedIOException("the program's own " + name + " cannot be read", broken);
            }
        }
        return List.copyOf(all);
    }

    /**
     * Opens another port, which answers in another protocol until the bench is closed.
     *
     * @param wanted TCP port on the loopback; 0 for any free one
     * @return the port
     * @throws UncheckedIOException when the port cannot be had
     */
    public int speak(Spoken how, int wanted) {
        WirePort.Talk talk = switch (how) {
            case MODBUS_TCP -> new Answers(new ModbusSpeech(units, lock, false), faults);
            case MODBUS_RTU -> new Answers(new ModbusSpeech(units, lock, true), faults);
            case TEXT -> new Answers(new TextSpeech(world, lock, Optional.empty()), faults);
            case TALKING -> new Answers(new TextSpeech(world, lock, Optional.of(Units.FIRST_TRANSMITTER)), faults);
            case SCPI -> new Answers(new ScpiSpeech(world, lock), faults);
            case HTTP_JSON -> new Answers(new HttpSpeech(new JsonDocument(world, lock)), faults);
            case MQTT -> new MqttPort(new JsonDocument(world, lock), faults);
        };
        WirePort port = new WirePort(talk, wanted);
        others.add(port);
        return port.port();
    }

    /** Closes a port that {@link #speak} opened, and drops its connections; {@code speak} can open it again. */
    public void hush(int port) {
        others.stream().filter(one -> one.port() == port).forEach(WirePort::close);
        others.removeIf(one -> one.port() == port);
    }

    /** The latest instant to which it was advanced. */
    public Instant now() {
        lock.lock();
        try {
            return now;
        } finally {
            lock.unlock();
        }
    }

    /** Lets time pass until that instant; one that is past already changes nothing. */
    public void advanceTo(Instant instant) {
        long wanted = Duration.between(start, instant).toSeconds();
        boolean more = true;
        while (more) {
            lock.lock();
            try {
                for (int i = 0; i < STEPS_AT_A_TIME && steps < wanted; i++) {
                    world.step();
                    steps++;
                }
                more = steps < wanted;
                now = later(more ? start.plusSeconds(steps) : instant);
            } finally {
                lock.unlock();
            }
        }
    }

    private Instant later(Instant instant) {
        return instant.isAfter(now) ? instant : now;
    }

    /**
     * What an instrument would show beyond the true value where its sensor is, if everything about it had settled as the
     * air there is now: lag and creep done, hysteresis as it stands; without noise and rounding.
     *
     * @param instrument {@code mirror}, {@code thermometer}, {@code chamber}, or the serial number of one under test
     * @return in the quantity's {@link Quantity#differenceUnit}
     * @throws IllegalArgumentException for an instrument or quantity that is not on the bench
     */
    public double trueError(String instrument, Quantity quantity) {
        lock.lock();
        try {
            return world.shown(instrument, quantity).trueError().getAsDouble();
        } finally {
            lock.unlock();
        }
    }

    /**
     * The true value where an instrument's sensor is, with the turbulence of this second.
     *
     * @return in the quantity's {@link Quantity#unit}; a dew point is over the mirror's present deposit, a pressure is
     *     the chamber's
     * @throws IllegalArgumentException for an instrument or quantity that is not on the bench
     */
    public double trueValue(String instrument, Quantity quantity) {
        lock.lock();
        try {
            return world.shown(instrument, quantity).trueValue().getAsDouble();
        } finally {
            lock.unlock();
        }
    }

    /** Puts something wrong with the connection to a unit, or right with {@link Fault#NONE}. */
    public void fault(int unit, Fault fault) {
        locked(() -> {
            faults.put(unit, fault);
            Registers registers = units.get(unit);
            if (registers != null) {
                registers.freeze(fault == Fault.FROZEN);
            }
        });
    }

    /**
     * Puts something on top of what an instrument shows, as a sensor gone wrong would; 0 takes it away. The instrument's
     * own error stays what {@link #trueError} says.
     *
     * @param by in the quantity's {@link Quantity#differenceUnit}
     */
    public void offset(String instrument, Quantity quantity, double by) {
        locked(() -> world.offset(instrument, quantity, by));
    }

    /** What an instrument would show now if neither its connection nor its sensor had anything wrong. */
    public double wouldShow(String instrument, Quantity quantity) {
        lock.lock();
        try {
            return world.shown(instrument, quantity).shown().getAsDouble();
        } finally {
            lock.unlock();
        }
    }

    public void openDoor() {
        locked(() -> world.door(true));
    }

    public void closeDoor() {
        locked(() -> world.door(false));
    }

    public boolean isDoorOpen() {
        lock.lock();
        try {
            return world.doorOpen();
        } finally {
            lock.unlock();
        }
    }

    /** Whether the chamber's controller drives. */
    public boolean isRunning() {
        lock.lock();
        try {
            return world.controller().running();
        } finally {
            lock.unlock();
        }
    }

    /** Temperature of the chamber's warmest part, its wall or its air, °C. */
    public double warmest() {
        lock.lock();
        try {
            return Math.max(world.heat().wall(), world.heat().air());
        } finally {
            lock.unlock();
        }
    }

    /** Liquid water in the chamber where a surface was below the dew point, g. */
    public double condensedGrams() {
        lock.lock();
        try {
            return world.vapour().liquidGrams();
        } finally {
            lock.unlock();
        }
    }

    /** Lets water out of the tank until so much is left, %. */
    public void drainTo(double percent) {
        locked(() -> world.vapour().saturator().drainTo(percent));
    }

    /** Lets the drying agent take up that share, 0 to 1, of what it can. */
    public void loadAgentTo(double share) {
        locked(() -> world.vapour().agent().loadTo(share));
    }

    /** Makes the drive heat as hard as it can while it runs, or obey again. The chamber's own cut-out still works. */
    public void jamDrive(boolean jammed) {
        locked(() -> world.controller().jam(jammed));
    }

    /** The chamber has been without power for a moment: its controller is on again, and drives nothing. */
    public void restartChamber() {
        locked(() -> world.controller().run(false));
    }

    /** Somebody sets the chamber at its own panel. */
    public void setAtPanel(double celsius, double percent) {
        locked(() -> world.controller().want(celsius, percent));
    }

    /** Fills the tank with water and puts in fresh drying agent. */
    public void service() {
        locked(() -> {
            world.vapour().saturator().fill();
            world.vapour().agent().renew();
        });
    }

    private void locked(Runnable change) {
        lock.lock();
        try {
            change.run();
        } finally {
            lock.unlock();
        }
    }

    /** Closes the ports. Idempotent. */
    @Override
    public void close() {
        server.close();
        others.forEach(WirePort::close);
    }
}
