// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.device.Trouble;
import java.time.Duration;
import org.junit.jupiter.api.Nested;

/** Every driver keeps the contract, over sockets and over pseudo-terminals. */
class ContractTest {
    private static final String REGISTERS = """
            channels:
              - {name: rh, quantity: relative_humidity, table: input, address: 0, type: uint16, scale: 0.01, unit: "% RH", resolution: 0.01}
              - {name: t, quantity: temperature, table: input, address: 1, type: int16, scale: 0.01, unit: °C, resolution: 0.01}
            """;
    private static final int UNIT = Units.FIRST_TRANSMITTER;

    private static final String TCP = "device: a\ntitle: A\nline: {LINE, timeout-ms: LIMIT}\n" + REGISTERS;
    private static final String RTU =
            "protocol: modbus-rtu\ndevice: a\ntitle: A\nline: {LINE, unit: 11, timeout-ms: LIMIT}\n" + REGISTERS;
    private static final String WORDS = """
            channels:
              - {name: rh, quantity: relative_humidity, group: rh, unit: "% RH", resolution: 0.01}
              - {name: t, quantity: temperature, group: t, units: {group: u, words: {C: °C, F: °F}}, resolution: 0.01}
            status: {group: s, good: ["00"], words: {"01": it warms up}}
            """;
    private static final String REPLY = """
            reply: '(?<checked>11 RH= *(?<rh>[-0-9.]+) %RH T= *(?<t>[-0-9.]+) (?<u>[CF]) S=(?<s>..))\\*(?<checksum>..)'
                refusal: '11 ERR .*'
                checksum: xor
            """;
    private static final String TEXT = "protocol: text\ndevice: a\ntitle: A\nline: {LINE, timeout-ms: LIMIT}\n"
            + "exchanges:\n  - ask: \"?11\"\n    " + REPLY + WORDS;
    private static final String TALKING = "protocol: text\ndevice: a\ntitle: A\nline: {LINE, timeout-ms: LIMIT}\n"
            + "max-age-ms: 0\nexchanges:\n  - " + REPLY + WORDS;

    private static final String SCPI = """
            protocol: scpi
            device: a
            title: A
            line: {LINE, timeout-ms: LIMIT}
            channels:
              - {name: rh, quantity: relative_humidity, ask: "MEAS:CURR:DC? (@11)", linear: {signal: mA, from: [4, 20], to: [0, 100], valid: [3.8, 20.5]}, unit: "% RH", resolution: 0.01}
              - {name: t, quantity: temperature, ask: "MEAS:FRES? (@11)", thermometer: {iec60751: {r0: 100}}, resolution: 0.01}
            """;
    private static final String VALUES = """
            expect: {/unit: 11}
            channels:
              - {name: rh, quantity: relative_humidity, TOPIC pointer: /rh/value, unit: "% RH", resolution: 0.01}
              - {name: t, quantity: temperature, TOPIC pointer: /t, unit: °C, resolution: 0.01}
            """;
    private static final String HEAD = "device: a\ntitle: A\nline: {LINE, timeout-ms: LIMIT}\n";
    private static final String HTTP = "protocol: http-json\n" + HEAD + VALUES.replace("TOPIC", "");
    private static final String MQTT =
            "protocol: mqtt\nmax-age-ms: 0\n" + HEAD + VALUES.replace("TOPIC", "topic: bench/11,");
    private static final String SOCKET = "tcp: {host: 127.0.0.1, port: PORT}";

    private static Rig rig(Spoken how, int limit, boolean serial, String description) {
        return new Rig(new Rig.Wired(how, UNIT, Duration.ofMillis(limit), SOCKET, serial, description));
    }

    @Nested
    class ModbusTcp extends InstrumentContract {
        @Override
        protected Rig rig() {
            return new Rig(new Rig.Wired(
                    Spoken.MODBUS_TCP,
                    UNIT,
                    Duration.ofMillis(300),
                    "modbus-tcp: {host: 127.0.0.1, port: PORT, unit: 11}",
                    false,
                    TCP));
        }
    }

    @Nested
    class ModbusRtuOverTcp extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.MODBUS_RTU, 400, false, RTU);
        }
    }

    @Nested
    class ModbusRtuOnATerminal extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.MODBUS_RTU, 400, true, RTU);
        }
    }

    @Nested
    class TextOverTcp extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.TEXT, 400, false, TEXT);
        }
    }

    @Nested
    class TextOnATerminal extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.TEXT, 400, true, TEXT);
        }
    }

    @Nested
    class TalkingOverTcp extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.TALKING, 600, false, TALKING);
        }

        @Override
        protected boolean talks() {
            return true;
        }

        @Override
        protected boolean trickles() {
            return false; // a line under way is waited for
        }
    }

    @Nested
    class TalkingOnATerminal extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.TALKING, 600, true, TALKING);
        }

        @Override
        protected boolean talks() {
            return true;
        }

        @Override
        protected boolean trickles() {
            return false;
        }
    }

    @Nested
    class ScpiOverTcp extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.SCPI, 1200, false, SCPI);
        }
    }

    @Nested
    class ScpiOnATerminal extends InstrumentContract {
        @Override
        protected Rig rig() {
            return ContractTest.rig(Spoken.SCPI, 1200, true, SCPI);
        }
    }

    @Nested
    class HttpJson extends InstrumentContract {
        @Override
        protected Rig rig() {
            return new Rig(new Rig.Wired(
                    Spoken.HTTP_JSON,
                    UNIT,
                    Duration.ofMillis(800),
                    "http: {host: 127.0.0.1, port: PORT, path: /11.json}",
                    false,
                    HTTP));
        }

        @Override
        protected Trouble trickled() {
            return Trouble.SILENCE; // not even the head is there in time
        }
    }

    @Nested
    class Mqtt extends InstrumentContract {
        @Override
        protected Rig rig() {
            return new Rig(new Rig.Wired(
                    Spoken.MQTT, UNIT, Duration.ofMillis(1500), "mqtt: {host: 127.0.0.1, port: PORT}", false, MQTT));
        }

        @Override
        protected boolean talks() {
            return true;
        }

        @Override
        protected boolean trickles() {
            return false; // the library takes whole messages only
        }
    }
}
