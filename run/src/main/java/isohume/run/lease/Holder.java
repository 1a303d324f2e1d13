// SPDX-License-Identifier: Apache-2.0
package isohume.run.lease;

/**
 * Who wants a chamber.
 *
 * @param program name, version, process: {@code Isohume 0.1.0, process 4711}
 * @param machine the machine's name
 */
public record Holder(String program, String machine) {
    String words() {
        return program + " on " + machine;
    }
}
