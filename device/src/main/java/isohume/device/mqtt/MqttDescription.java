// SPDX-License-Identifier: Apache-2.0
package isohume.device.mqtt;

import isohume.device.Instrument;
import isohume.device.driver.Channels;
import isohume.device.driver.Common;
import isohume.device.json.JsonCodec;
import isohume.device.json.JsonSheet;
import isohume.device.line.Lines;
import isohume.device.sheet.Sheet;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;

/** A device whose readings are published to a broker, as a person describes it. Immutable. */
public final class MqttDescription extends Channels {
    private static final int AGE_MS = 2000;

    private final String host;
    private final int port;
    private final JsonCodec codec;
    private final Duration mostAge;

    private MqttDescription(Common common, String host, int port, JsonCodec codec, Duration mostAge) {
        super(common, codec.values().stream().map(JsonCodec.Value::shown).toList());
        this.host = host;
        this.port = port;
        this.codec = codec;
        this.mostAge = mostAge;
    }

    /**
     * The description in a document.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not valid
     */
    public static MqttDescription of(Sheet sheet) {
        Sheet line = sheet.section("line");
        Common common = Common.of(sheet, line);
        Sheet broker = line.section("mqtt");
        String host = Common.host(broker);
        int port = broker.wholeOr("port", 1, 65_535, 1883);
        broker.refuseOthers();
        line.refuseOthers();
        Duration mostAge = Duration.ofMillis(sheet.wholeOr("max-age-ms", 0, 3_600_000, AGE_MS));
        List<JsonCodec.Value> values =
                common.channels(sheet, one -> JsonSheet.value(common, one, topic(one)), JsonCodec.Value::shown);
        JsonCodec codec = new JsonCodec(values, JsonSheet.expected(sheet));
        sheet.refuseOthers();
        return new MqttDescription(common, host, port, codec, mostAge);
    }

    private static String topic(Sheet one) {
        String topic = one.text("topic");
        if (!topic.matches("[^#+\\p{Cntrl}]{1,200}")) {
            throw one.wrong("topic", "a whole topic without + and # is needed here, such as lab/A-1042");
        }
        return topic;
    }

    @Override
    public String place() {
        return host + ":" + port;
    }

    @Override
    public Instrument open(Lines lines, InstantSource clock) {
        return new MqttInstrument(this, lines.tap(), clock);
    }

    String host() {
        return host;
    }

    int port() {
        return port;
    }

    JsonCodec codec() {
        return codec;
    }

    Duration mostAge() {
        return mostAge;
    }

    List<String> topics() {
        return codec.values().stream().map(JsonCodec.Value::topic).distinct().toList();
    }
}
