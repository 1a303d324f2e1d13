// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Chamber;
import java.time.Duration;
import java.util.function.Consumer;

/** Brings a chamber to rest, and does not give up at once when it does not answer. */
final class Resting {
    static final int PERSISTENT = 100;
    static final int SHORT = 10;
    static final int ONCE = 1;

    private static final Duration BETWEEN = Duration.ofSeconds(6);

    private final Chamber chamber;
    private final Timekeeper time;
    private final int tries;

    Resting(Chamber chamber, Timekeeper time, int tries) {
        this.tries = tries;
        this.chamber = chamber;
        this.time = time;
    }

    /** The last fact, once the chamber rests or has been asked often enough. Every answer that is new is written. */
    RunFact.Finished after(RunFact.Finished finished, Consumer<RunFact> write) {
        Answer answer = chamber.rest();
        write.accept(new RunFact.Rested(answer));
        for (int i = 1; i < tries && !rests(answer); i++) {
            pause();
            Answer next = chamber.rest();
            if (!next.equals(answer)) {
                write.accept(new RunFact.Rested(next));
            }
            answer = next;
        }
        return rests(answer)
                ? finished
                : new RunFact.Finished(
                        finished.ending(),
                        finished.why() + "; the chamber did not confirm that it is at rest: look at it");
    }

    /** As far as it goes when nothing can be written any more. */
    void withoutRecord() {
        for (int i = 0; i < tries && !rests(chamber.rest()); i++) {
            pause();
        }
    }

    private void pause() {
        time.waitUntil(time.instant().plus(BETWEEN), () -> false);
    }

    private static boolean rests(Answer answer) {
        return answer instanceof Answer.AtRest;
    }
}
