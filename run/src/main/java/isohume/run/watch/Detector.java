// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.util.function.Consumer;

/** Looks for one kind of trouble. */
interface Detector {
    /** Takes the next poll and tells of what is wrong in it. */
    void look(Poll poll, Consumer<Sighting> seen);

    /** Another target was set: what was seen on the way to the last one says nothing about this one. */
    void retarget();
}
