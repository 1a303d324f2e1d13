// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import java.util.Map;

/** What a line of a device says. */
sealed interface Spoken {
    /** Values by the name of their group; those that the line left out are not there. */
    record Values(Map<String, String> groups, String line) implements Spoken {}

    /** No. */
    record Refused(String line) implements Spoken {}
}
