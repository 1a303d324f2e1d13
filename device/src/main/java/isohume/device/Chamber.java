// SPDX-License-Identifier: Apache-2.0
package isohume.device;

/** Something that can be told where to go. One thread at a time; each call ends within the line's time limit. */
public interface Chamber extends Instrument {
    /** Sends the target and reads back what the controller took, which may differ. Does not wait to settle. */
    Answer request(Setpoint target);

    /**
     * What the controller is set to now, also by others; changes nothing. {@link Answer.AtRest} when it does not drive,
     * {@link Answer.None} when it cannot tell.
     */
    default Answer holds() {
        return new Answer.None(Trouble.REFUSED, "this chamber cannot tell what it is set to");
    }

    /** To the safe state: drives off, fan on. Idempotent, from any thread, also after trouble; never throws. */
    Answer rest();
}
