// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ReadingCodecTest {
    private static final Instant NOW = Instant.parse("2026-03-31T08:00:00Z");
    private static final ReadingCodec CODEC = new ReadingCodec(Parsed.tcp("""
            device: mirror
            title: Reference dew-point mirror
            line: {modbus-tcp: {host: 127.0.0.1, port: 502, unit: 2}}
            channels:
              - {name: dew_point, quantity: dew_point, table: input, address: 0, type: int16, scale: 0.01, unit: °C, resolution: 0.01, limits: [-60, 95]}
              - {name: deposit, quantity: deposit, table: input, address: 1, type: uint16}
              - {name: pressure, quantity: pressure, table: input, address: 2, type: float32, unit: hPa, resolution: 10}
            status: {table: input, address: 10, bits: {0: mirror is being cleaned, 1: head too warm}}
            """, "mirror.yaml"));
    private static final Channel DEW_POINT = new Channel("mirror", "dew_point", Quantity.DEW_POINT);
    private static final Channel PRESSURE = new Channel("mirror", "pressure", Quantity.PRESSURE);
    private static final Span VALUES = new Span(Table.INPUT, 0, 4);
    private static final Span STATUS = new Span(Table.INPUT, 10, 1);

    @Test
    void registers_become_values_in_the_quantitys_unit_with_their_digits() {
        List<Reading> readings = read(words(0xFB2E, 2, 0x447D, 0x5000), words(0)); // -1234; 1013.25 = 0x447D5000
        assertEquals(
                List.of(
                        new Reading.Value(DEW_POINT, NOW, new BigDecimal("-12.34"), "FB2E"),
                        new Reading.Value(
                                new Channel("mirror", "deposit", Quantity.DEPOSIT), NOW, new BigDecimal("2"), "0002"),
                        new Reading.Value(PRESSURE, NOW, new BigDecimal("101320"), "447D 5000")),
                readings); // 101 325 Pa lies halfway, and 101 320 is the even step of 10
    }

    @Test
    void a_set_status_bit_casts_doubt_on_every_channel() {
        for (Reading reading : read(words(0, 1, 0x447D, 0x5000), words(0x8003))) {
            assertEquals("mirror is being cleaned; head too warm", ((Reading.Doubtful) reading).flag());
        }
    }

    @Test
    void a_value_beyond_the_limits_is_doubtful() {
        assertEquals(
                new Reading.Doubtful(DEW_POINT, NOW, new BigDecimal("-60.01"), "E88F", "outside -60 to 95 °C"),
                read(words(0xE88F, 1, 0x447D, 0x5000), words(0)).getFirst());
        assertEquals(
                new Reading.Value(DEW_POINT, NOW, new BigDecimal("-60.00"), "E890"),
                read(words(0xE890, 1, 0x447D, 0x5000), words(0)).getFirst());
    }

    @Test
    void no_number_and_nothing_that_can_be_are_garbled() {
        assertEquals(
                new Reading.Absent(PRESSURE, NOW, Trouble.GARBLED, "the registers hold no number (7FC0 0000)"),
                read(words(0, 1, 0x7FC0, 0), words(0)).getLast());
        assertEquals(
                new Reading.Absent(
                        PRESSURE,
                        NOW,
                        Trouble.GARBLED,
                        "the registers hold -101320 Pa, which nothing can have (C47D 5000)"),
                read(words(0, 1, 0xC47D, 0x5000), words(0)).getLast());
        Reading cold = read(words(-27_315 & 0xFFFF, 1, 0, 0), words(0)).getFirst(); // absolute zero
        assertEquals(Trouble.GARBLED, ((Reading.Absent) cold).trouble());
    }

    @Test
    void values_without_their_status_are_doubtful() {
        Reply.Held silent = new Reply.No(Trouble.SILENCE, "no reply");
        assertEquals(
                "the status register could not be read: no reply",
                ((Reading.Doubtful) read(words(0, 1, 0, 0), silent).getFirst()).flag());
        assertEquals(
                new Reading.Absent(DEW_POINT, NOW, Trouble.SILENCE, "no reply"),
                read(silent, words(0)).getFirst());
    }

    private static List<Reading> read(Reply.Held values, Reply.Held status) {
        return CODEC.readings(new Image(Map.of(VALUES, values, STATUS, status)), NOW);
    }

    private static Reply.Held words(Integer... words) {
        return new Reply.Words(List.of(words));
    }
}
