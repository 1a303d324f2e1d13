// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.journal.Entry;
import isohume.run.Course;
import isohume.run.Entering;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.entry.Appraisal;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Word;
import isohume.simulator.SimulatedBench;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An invented person who stands at a simulated bench, reads the displays that are asked for and types what they show. */
final class Reader {
    private static final String NAME = "an invented reader";

    private final SimulatedBench bench;
    private final Course course = new Course();
    private final Map<String, Instant> last = new HashMap<>();
    private boolean idle;

    Reader(SimulatedBench bench) {
        this.bench = bench;
    }

    /** Sees the next fact of the run, and says what there is to say. */
    void see(Entry entry, RunFact fact, Run run) {
        if (fact instanceof RunFact.Started started) {
            idle = started.displays().isEmpty();
        }
        if (idle) {
            return;
        }
        course.take(entry, fact);
        if (fact instanceof RunFact.Observed) {
            List<DisplayedChannel> wanted = course.entries().wanted(course.point());
            wanted.stream().filter(this::isRenewed).forEach(channel -> read(channel, run));
        }
    }

    private boolean isRenewed(DisplayedChannel channel) {
        Instant before = last.get(channel.id());
        return before == null || before.plus(channel.update()).isBefore(bench.now());
    }

    private void read(DisplayedChannel channel, Run run) {
        Word.Shown word = new Word.Shown(channel.id(), SimulatedDisplays.shown(bench, channel), bench.now(), NAME);
        switch (new Entering(course).appraise(word)) {
            case Appraisal.Accepted accepted -> say(word, run);
            case Appraisal.Questioned questioned -> say(word.thatStands(), run); // who copies digits makes no mistakes
            case Appraisal.Refused refused -> {}
        }
    }

    private void say(Word.Shown word, Run run) {
        last.put(word.channel(), word.at());
        run.say(word);
    }
}
