// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.line.Question;

/**
 * What is asked of a device, and how its reply looks.
 *
 * @param ask without its end; empty for a device that talks by itself
 */
record Exchange(String ask, Pattern pattern) {
    Question<Spoken> question(LineQuestion.Manner manner) {
        return new LineQuestion<>(manner, ask, pattern::says);
    }
}
