// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.devices;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.driver.Abreast;
import isohume.device.driver.Devices;
import isohume.device.protocol.Protocol;
import isohume.simulator.Spoken;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/**
 * Reads 64 devices of four protocols, each on its own connection, once a second in one process, without and with two
 * dead ones among them: one that takes connections and never answers, and one where nobody listens. How late a device
 * is, is the time from the tick until its reading is in hand.
 */
public final class Polling {
    private static final int DEVICES = 64;
    private static final int WARM_UP = 10; // ticks
    private static final long SECOND = 1_000_000_000;
    private static final Duration PATIENCE = Duration.ofMillis(300);

    private final List<Long> late = Collections.synchronizedList(new ArrayList<>());
    private final AtomicInteger failures = new AtomicInteger();
    private volatile long tick;
    private volatile boolean counting;

    private Polling() {}

    public static void main(String[] arguments) {
        Program program = Polling::measure;
        System.exit(program.run(arguments));
    }

    static Report measure(Options options) {
        int seconds = options.quick() ? 2 : 60;
        int devices = options.quick() ? 8 : DEVICES;
        List<Figure> figures = new ArrayList<>();
        figures.addAll(new Polling().run(devices, seconds, 0));
        figures.addAll(new Polling().run(devices, seconds, 2));
        return new Report(Machine.here(), Map.of(), figures);
    }

    private List<Figure> run(int devices, int seconds, int dead) {
        try (ServerSocket mute = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
                Devices opened = new Devices()) {
            Process farm = farm(devices);
            try (BufferedReader said = farm.inputReader(StandardCharsets.US_ASCII)) {
                List<Instrument> all = new ArrayList<>();
                String[] ports = String.valueOf(said.readLine()).split(" ");
                for (int i = 0; i < devices; i++) {
                    all.add(new Timed(open(opened, Farm.spoken(i), i, Integer.parseInt(ports[i]))));
                }
                for (int i = 0; i < dead; i++) {
                    all.add(open(opened, Spoken.TEXT, devices + i, i % 2 == 0 ? mute.getLocalPort() : 1));
                }
                try (Abreast abreast = new Abreast(all, PATIENCE, InstantSource.system())) {
                    return poll(abreast, seconds, devices + (dead == 0 ? "" : " and " + dead + " dead"));
                }
            } finally {
                farm.destroy();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Process farm(int devices) throws IOException {
        return new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-XX:+UseSerialGC",
                        "-Xmx128m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Farm.class.getName(),
                        String.valueOf(devices))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private List<Figure> poll(Abreast abreast, int seconds, String what) {
        long next = System.nanoTime() + SECOND;
        long slowest = 0;
        long begun = 0;
        long spent = 0;
        for (int i = -WARM_UP; i < seconds; i++) { // the first ones connect, and are compiled
            while (System.nanoTime() < next) {
                LockSupport.parkNanos(next - System.nanoTime());
            }
            tick = next;
            if (i == 0) {
                counting = true;
                begun = System.nanoTime();
                spent = cpuNanos();
            }
            List<Reading> readings = abreast.read();
            assert !readings.isEmpty();
            slowest = i < 0 ? 0 : Math.max(slowest, System.nanoTime() - next);
            next += SECOND;
        }
        double share = 100.0 * (cpuNanos() - spent) / (System.nanoTime() - begun);
        List<Long> sorted = late.stream().sorted().toList();
        return List.of(
                Figure.atMost(10, what + ": processor", share, "% of a core"),
                Figure.of(what + ": late, median", millis(sorted, 0.5), "ms"),
                Figure.atMost(50, what + ": late, 99 of 100", millis(sorted, 0.99), "ms"),
                Figure.of(what + ": late, most", millis(sorted, 1), "ms"),
                Figure.of(what + ": whole poll, most", slowest / 1e6, "ms"),
                Figure.atMost(0, what + ": readings missing", failures.get(), ""));
    }

    private static double millis(List<Long> sorted, double share) {
        return sorted.get(Math.min(sorted.size() - 1, (int) (share * sorted.size()))) / 1e6;
    }

    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static Instrument open(Devices devices, Spoken how, int number, int port) {
        String place = "tcp: {host: 127.0.0.1, port: " + port + "}";
        String head = "device: d" + number + "\ntitle: D\n";
        String registers = """
                channels:
                  - {name: rh, quantity: relative_humidity, table: input, address: 0, type: uint16, scale: 0.01, unit: "% RH", resolution: 0.01}
                  - {name: t, quantity: temperature, table: input, address: 1, type: int16, scale: 0.01, unit: °C, resolution: 0.01}
                """;
        String text = switch (how) {
            case MODBUS_TCP ->
                head + "line: {modbus-tcp: {host: 127.0.0.1, port: " + port + ", unit: 11}}\n" + registers;
            case MODBUS_RTU -> "protocol: modbus-rtu\n" + head + "line: {" + place + ", unit: 11}\n" + registers;
            case SCPI -> "protocol: scpi\n" + head + "line: {" + place + "}\n" + """
                    channels:
                      - {name: t, quantity: temperature, ask: "MEAS:FRES? (@11)", thermometer: {iec60751: {r0: 100}}, resolution: 0.01}
                    """;
            case TEXT, TALKING, MQTT, HTTP_JSON -> "protocol: text\n" + head + "line: {" + place + "}\n" + """
                    exchanges: [{ask: "?11", reply: '11 RH= *(?<rh>[-0-9.]+) %RH T= *(?<t>[-0-9.]+) C S=00\\*..'}]
                    channels:
                      - {name: rh, quantity: relative_humidity, group: rh, unit: "% RH", resolution: 0.01}
                      - {name: t, quantity: temperature, group: t, unit: °C, resolution: 0.01}
                    """;
        };
        return devices.open(Protocol.parse(text, "d" + number), InstantSource.system());
    }

    /** Notes when the reading of a live device is in hand. */
    private final class Timed implements Instrument {
        private final Instrument timed;

        Timed(Instrument timed) {
            this.timed = timed;
        }

        @Override
        public String id() {
            return timed.id();
        }

        @Override
        public List<Channel> channels() {
            return timed.channels();
        }

        @Override
        public List<Reading> read() {
            long due = tick;
            List<Reading> readings = timed.read();
            if (counting) {
                late.add(System.nanoTime() - due);
                failures.addAndGet((int) readings.stream()
                        .filter(reading -> !(reading instanceof Reading.Value))
                        .count());
            }
            return readings;
        }

        @Override
        public void close() {
            timed.close();
        }
    }
}
