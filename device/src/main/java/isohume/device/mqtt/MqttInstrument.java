// SPDX-License-Identifier: Apache-2.0
package isohume.device.mqtt;

import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.exceptions.ConnectionFailedException;
import com.hivemq.client.mqtt.mqtt3.Mqtt3AsyncClient;
import com.hivemq.client.mqtt.mqtt3.Mqtt3Client;
import com.hivemq.client.mqtt.mqtt3.exceptions.Mqtt3ConnAckException;
import com.hivemq.client.mqtt.mqtt3.message.publish.Mqtt3Publish;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Described;
import isohume.device.driver.Newest;
import isohume.device.line.Deadline;
import isohume.device.line.Heard;
import isohume.device.line.Tap;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Subscribes from the first read on, and again whenever the connection was lost. */
final class MqttInstrument extends Described {
    private static final long FIRST_PAUSE_MS = 50;
    private static final long LONGEST_PAUSE_MS = 1000;

    private final MqttDescription description;
    private final Tap tap;
    private final InstantSource clock;
    private final Map<String, Newest<byte[]>> newest = new LinkedHashMap<>();
    private volatile boolean closed;
    private @Nullable Mqtt3AsyncClient client;

    MqttInstrument(MqttDescription description, Tap tap, InstantSource clock) {
        super(description);
        this.description = description;
        this.tap = tap;
        this.clock = clock;
        description.topics().forEach(topic -> newest.put(topic, new Newest<>(description.mostAge())));
    }

    @Override
    public List<Reading> read() {
        Instant now = clock.instant();
        if (closed) {
            return description.absent(
                    now, Trouble.UNPLUGGED, "the connection to " + description.place() + " is closed");
        }
        Deadline deadline = Deadline.in(description.timeLimit());
        if (client == null) {
            client = connect();
        }
        Map<String, Newest.Event<byte[]>> events = new HashMap<>();
        newest.forEach((topic, latest) -> events.put(topic, latest.get(deadline, now)));
        List<Reading> byTopic = new ArrayList<>();
        events.forEach((topic, event) -> byTopic.addAll(readings(topic, event)));
        return channels().stream()
                .map(channel -> byTopic.stream()
                        .filter(reading -> reading.channel().equals(channel))
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    private List<Reading> readings(String topic, Newest.Event<byte[]> event) {
        return switch (event.heard()) {
            case Heard.Said<byte[]>(byte[] document) -> description.codec().readings(topic, document, event.at());
            case Heard.Nothing<byte[]>(Trouble trouble, String detail) ->
                description.codec().values().stream()
                        .filter(value -> value.topic().equals(topic))
                        .map(value -> value.shown().absent(event.at(), trouble, detail))
                        .toList();
        };
    }

    private Mqtt3AsyncClient connect() {
        Mqtt3AsyncClient made = Mqtt3Client.builder()
                .serverHost(description.host())
                .serverPort(description.port())
                .automaticReconnect()
                .initialDelay(FIRST_PAUSE_MS, TimeUnit.MILLISECONDS)
                .maxDelay(LONGEST_PAUSE_MS, TimeUnit.MILLISECONDS)
                .applyAutomaticReconnect()
                .addDisconnectedListener(context -> lost(context.getCause()))
                .buildAsync();
        for (String topic : description.topics()) {
            var unused = made.subscribeWith()
                    .topicFilter(topic)
                    .qos(MqttQos.AT_MOST_ONCE)
                    .callback(this::take)
                    .send()
                    .whenComplete((fine, trouble) -> {
                        if (trouble != null) {
                            lost(trouble);
                        }
                    });
        }
        var unused = made.connectWith().cleanSession(true).keepAlive(10).send();
        return made;
    }

    private void take(Mqtt3Publish message) {
        byte[] document = message.getPayloadAsBytes();
        String topic = message.getTopic().toString();
        tap.moved(description.place() + " " + topic, false, document);
        Newest<byte[]> latest = newest.get(topic);
        if (latest != null && !message.isRetain()) { // what a broker kept may be of any age
            latest.put(new Heard.Said<>(document), clock.instant());
        }
    }

    private void lost(Throwable cause) {
        Heard<byte[]> heard = cause instanceof Mqtt3ConnAckException refusal
                ? new Heard.Nothing<>(
                        Trouble.REFUSED,
                        "the broker refused: " + refusal.getMqttMessage().getReturnCode())
                : new Heard.Nothing<>(
                        Trouble.UNPLUGGED,
                        "no connection to the broker at " + description.place() + ": "
                                + (cause instanceof ConnectionFailedException ? "nobody is there" : "it was lost"));
        newest.values().forEach(latest -> latest.put(heard, clock.instant()));
    }

    @Override
    public void close() {
        closed = true;
        if (client != null) {
            var unused = client.disconnect();
        }
    }
}
