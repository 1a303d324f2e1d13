// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** One kind of work as one contestant does it, with what it took each time. */
final class Task {
    private final Contestant contestant;
    private final String work;
    private final List<Spent> runs = new ArrayList<>();

    Task(Contestant contestant, String work) {
        this.contestant = contestant;
        this.work = work;
    }

    /** Lets compilers see the work before anything counts. */
    void warmUp(int milliseconds) throws IOException {
        Spent unused = contestant.time(work, milliseconds);
        assert unused.clock() > 0;
    }

    void run(int milliseconds) throws IOException {
        runs.add(contestant.time(work, milliseconds));
    }

    Spent median() {
        return Spent.median(runs);
    }

    double[] results() throws IOException {
        return contestant.give(work);
    }

    /** Stops the comparison if two do not reckon the same. */
    void mustAgreeWith(Task other, double relative, double absolute) throws IOException {
        double[] mine = results();
        double[] theirs = other.results();
        if (mine.length != theirs.length) {
            throw new IllegalStateException(this + " has " + mine.length + " results, " + other + " " + theirs.length);
        }
        for (int i = 0; i < mine.length; i++) {
            if (!(Math.abs(mine[i] - theirs[i]) <= absolute + relative * Math.abs(theirs[i]))) {
                throw new IllegalStateException("result " + i + " is " + mine[i] + " by " + this + " and " + theirs[i]
                        + " by " + other + "; this is not the same work");
            }
        }
    }

    @Override
    public String toString() {
        return contestant.name() + " " + work;
    }
}
