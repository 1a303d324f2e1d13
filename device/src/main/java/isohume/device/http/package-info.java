// SPDX-License-Identifier: Apache-2.0
/**
 * Devices that give a JSON document over HTTP on the bench network. Start at
 * {@link isohume.device.http.HttpDescription}. Only the described address is asked, only if it is this machine's own or a
 * private one, and nobody is sent elsewhere.
 */
@NullMarked
@CheckReturnValue
package isohume.device.http;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
