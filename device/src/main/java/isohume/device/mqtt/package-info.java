// SPDX-License-Identifier: Apache-2.0
/**
 * Devices whose readings are published to an MQTT broker on the bench network. Start at
 * {@link isohume.device.mqtt.MqttDescription}. It subscribes and never publishes.
 */
@NullMarked
@CheckReturnValue
package isohume.device.mqtt;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
