// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Instrument;
import isohume.device.InstrumentContract;
import isohume.device.driver.Devices;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;

class ModbusContractTest extends InstrumentContract {
    private static final String DESCRIPTION = """
            device: mirror
            title: Reference dew-point mirror
            line:
              modbus-tcp: {host: 127.0.0.1, port: 8641, unit: 2}
              timeout-ms: 300
            channels:
              - name: dew_point
                quantity: dew_point
                table: input
                address: 0
                type: int16
                scale: 0.001
                unit: °C
                resolution: 0.01
              - name: temperature
                quantity: temperature
                table: input
                address: 4
                type: float32
                unit: °C
                resolution: 0.001
            """;

    @Override
    protected Rig rig() {
        return new ModbusRig();
    }

    private static final class ModbusRig implements Rig {
        private final FakeServer server = new FakeServer(2);
        private final Devices devices = new Devices();
        private final Instrument instrument = devices.open(
                Parsed.tcp(DESCRIPTION, "mirror.yaml").withAddress("127.0.0.1", server.port()),
                InstantSource.fixed(now()));

        ModbusRig() {
            server.input.put(0, -12_346 & 0xFFFF);
            server.input.put(4, 0x41A4); // 20.5 is 0x41A40000 in IEEE 754
            server.input.put(5, 0x0000);
        }

        @Override
        public Instrument instrument() {
            return instrument;
        }

        @Override
        public Instant now() {
            return Instant.parse("2026-03-31T08:00:00Z");
        }

        @Override
        public Duration timeLimit() {
            return Duration.ofMillis(300);
        }

        @Override
        public List<String> shown() {
            return List.of("-12.35", "20.500");
        }

        @Override
        public void beSilentOnce() {
            server.next(FakeServer.SILENT);
        }

        @Override
        public void sendNoiseOnce() {
            server.next(FakeServer.NOISE);
        }

        @Override
        public void refuseOnce() {
            server.next(FakeServer.refusing(6));
        }

        @Override
        public void breakOffOnce() {
            server.next(FakeServer.HALF);
        }

        @Override
        public void answerLateOnce() {
            server.next(server.late());
        }

        @Override
        public void answerForAnotherOnce() {
            server.next(FakeServer.with(6, 3));
        }

        @Override
        public void trickleOnce() {
            server.next(FakeServer.TRICKLE);
        }

        @Override
        public void hangUpOnce() {
            server.next(FakeServer.HANG_UP);
        }

        @Override
        public void unplug() {
            server.unplug();
        }

        @Override
        public void plugIn() {
            server.plugIn();
        }

        @Override
        public void close() {
            devices.close();
            server.close();
        }
    }
}
