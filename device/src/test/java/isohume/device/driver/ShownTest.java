// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.device.Channel;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
    @ParameterizedTest
    @CsvSource({
        "20.125,  0.01,  20.12", // a half goes to the even step
        "20.135,  0.01,  20.14",
        "-20.125, 0.01,  -20.12",
        "20.1251, 0.01,  20.13",
        "20.3,    0.5,   20.5",
        "20.25,   0.5,   20.0",
        "101318,  10,    101320",
        "0.004,   0.010, 0.00",
        "-0.004,  0.01,  0.00",
    })
    void the_value_shown_is_the_nearest_step(BigDecimal value, BigDecimal resolution, String shown) {
        Channel channel = new Channel("a", "t", Quantity.TEMPERATURE);
        assertEquals(
                shown,
                new Shown(channel, resolution, Optional.empty()).rounded(value).toPlainString());
    }
}
