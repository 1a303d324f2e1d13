// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.device.Setpoint;

/** A condition that is asked for on the way to another and left as soon as the next is safe. Nothing is recorded there. */
public record WayPoint(Setpoint target, Aim aim) {
    /** What a way-point is for. */
    public enum Aim {
        DRYING("drying first"),
        COOLING("cooling while dry"),
        WARMING("warming first");

        private final String words;

        Aim(String words) {
            this.words = words;
        }

        /** As it stands behind "on the way to point 7: ". */
        public String words() {
            return words;
        }
    }
}
