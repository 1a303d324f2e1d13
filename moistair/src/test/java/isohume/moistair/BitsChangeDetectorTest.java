// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.quantity.Phase;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A change detector: checksums over the bits that this program once produced. It proves nothing about their truth, but
 * that every machine gets the same ones. Whoever changes a formula on purpose changes the checksum with it.
 */
class BitsChangeDetectorTest {
    @ParameterizedTest
    @CsvSource({
        "SONNTAG_1990, 1794591370",
        "HARDY_1998, 416244245",
        "HYLAND_WEXLER_1983, 3513010485",
        "IAPWS, 3636194952",
        "WMO_MAGNUS, 3685865147"
    })
    void the_bits_are_the_same_on_every_machine(Formulation formulation, long checksum) {
        MoistAir air = MoistAir.by(formulation);
        CRC32 sum = new CRC32();
        for (double frost = -60; frost <= 0; frost += 0.37) {
            for (double t = 1; t < 60; t += 7.3) {
                HumidAir state = air.at(Air.celsius(t), Air.pascals(99_000)).withDewPoint(Air.frost(frost));
                add(sum, state.relativeHumidity().fraction());
                add(
                        sum,
                        air.relativeHumidity(Air.frost(frost), Air.pascals(98_000), Air.celsius(t), Air.pascals(99_000))
                                .fraction());
                add(sum, state.frostPoint().celsius());
                add(sum, state.absoluteHumidity());
                add(sum, air.saturationSlope(Air.celsius(t), Phase.WATER));
            }
        }
        assertEquals(checksum, sum.getValue());
    }

    private static void add(CRC32 sum, double value) {
        sum.update(ByteBuffer.allocate(Double.BYTES).putDouble(value).array());
    }
}
