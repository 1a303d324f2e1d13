// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be wrong with a bench. */
public enum Fault {
    /** A device gives no answer. */
    SILENT(true, "does not answer", "Look at its power and its cable; once it answers, the point settles anew."),
    /** A device answers with nonsense. */
    GARBLED(true, "answers with nonsense", "Look at its cable, its line's settings and what else is on that line."),
    /** A device answers that it will not. */
    REFUSED(true, "refuses to be read", "Look at the device's own display for its reason."),
    /** A device is not there. */
    UNPLUGGED(true, "is not connected", "Plug it in again; once it answers, the point settles anew."),
    /** A display stands still while it should move. */
    FROZEN(true, "stands still", "Restart the instrument, or take it out of the plan."),
    /** A value lies beyond what its description vouches for. */
    OUT_OF_RANGE(
            true,
            "is out of its range",
            "Look at the sensor and its cable; a broken wire often reads as an end of the range."),
    /** An instrument calls its own values doubtful. */
    DOUBTFUL(true, "calls its values doubtful", "Look at the instrument's own display for its reason."),
    /** A reference is contradicted by everything else that measures the same. */
    DISAGREEING(
            true,
            "is contradicted by the others",
            "Look at the reference first: mirror, sample line, sensor's place. Resume only when you know which one is wrong."),
    /** The door is open, or the air behaves as if it were. */
    DOOR_OPEN(true, "tells of an open door", "Close the door; the point settles anew."),
    /** Little water is left. */
    WATER_LOW(false, "tells of little water", "Fill the tank as its maker says, then resume."),
    /** The air stays too humid. */
    DRY_AIR(false, "stays too humid", "Renew or regenerate the drying agent as its maker says; look for leaks."),
    /** The air stays too dry. */
    WET_AIR(false, "stays too dry", "Look at the water and the saturator."),
    /** The temperature stays off its target. */
    TEMPERATURE_OFF(false, "stays off its target", "Look at the chamber's drive, its fan and the room it stands in."),
    /** Something is hotter than it may be. */
    OVER_TEMPERATURE(true, "is too hot", "Let it cool, and have a competent person find out why before it runs again."),
    /** The mirror does not decide between water and ice. */
    DEPOSIT_UNDECIDED(
            true,
            "does not decide between water and ice",
            "Force frost on the mirror and resume, or choose a point whose dew point lies farther from 0 °C."),
    /** A point does not settle in the plan's time. */
    NOT_SETTLED(false, "did not settle in time", "Resume to wait longer, or skip the point."),
    /** Nobody has read a display in the plan's time. */
    UNREAD(false, "was not read", "Resume and type what it shows once it is asked for, or leave it out at this point."),
    /** The chamber no longer holds the target that it was given. */
    TARGET_LOST(true, "does not hold its target", "Find out who or what set the chamber; then resume."),
    /** The clock was set while the run went on. */
    CLOCK_STEPPED(true, "was set", "Nothing needs to be done; find out what sets the clock of this machine."),
    /** Little room is left on the disk. */
    DISK_LOW(false, "has little room left", "Free some space on the journal's disk, then resume.");

    private final boolean touches;
    private final String words;
    private final String remedy;

    Fault(boolean touches, String words, String remedy) {
        this.touches = touches;
        this.words = words;
        this.remedy = remedy;
    }

    /** Whether readings taken meanwhile may not be used. */
    public boolean touches() {
        return touches;
    }

    /** What is said of a channel that has it: {@code stands still}. */
    public String words() {
        return words;
    }

    /** What a person can do about it. */
    public String remedy() {
        return remedy;
    }

    /** As it is written in files: {@code door-open}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The fault that is written so. */
    public static Optional<Fault> ofKey(String key) {
        return Arrays.stream(values()).filter(fault -> fault.key().equals(key)).findFirst();
    }
}
