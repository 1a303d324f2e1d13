// SPDX-License-Identifier: Apache-2.0
package isohume.station.desk;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.entry.Appraisal;
import isohume.run.entry.Word;
import isohume.station.bench.WallTime;
import java.time.Duration;
import java.util.Optional;

/** Looks into the journal for the fact with which a run answers a word that was passed on to it. */
final class Answered {
    private static final Duration GLANCE = Duration.ofMillis(30);
    private static final Duration LONGEST = Duration.ofSeconds(4); // a poll with a silent device takes a second or two

    private final Journal journal;
    private final StreamName stream;
    private final Word word;

    Answered(Journal journal, StreamName stream, Word word) {
        this.journal = journal;
        this.stream = stream;
        this.word = word;
    }

    /** What the run made of it; accepted too where it has not come to it yet, which its facts will show. */
    Appraisal after(long number) {
        long end = System.nanoTime() + LONGEST.toNanos();
        long seen = number;
        while (System.nanoTime() < end) {
            for (Entry entry : journal.read(stream, seen, Integer.MAX_VALUE)) {
                Optional<Appraisal> answer = answer(RunNotation.decode(entry.fact()));
                if (answer.isPresent()) {
                    return answer.get();
                }
                seen = entry.number();
            }
            WallTime.pause(GLANCE);
        }
        return new Appraisal.Accepted();
    }

    private Optional<Appraisal> answer(RunFact fact) {
        boolean taken = switch (word) {
            case Word.Shown shown ->
                fact instanceof RunFact.Typed t && t.channel().equals(shown.channel()) && t.at().equals(shown.at());
            case Word.Mistaken mistaken -> fact instanceof RunFact.TakenBack t && t.entry() == mistaken.entry();
            case Word.Omitted omitted ->
                fact instanceof RunFact.LeftOut l && l.channel().equals(omitted.channel());
        };
        if (taken) {
            return Optional.of(new Appraisal.Accepted());
        }
        boolean declined = word instanceof Word.Shown shown
                && fact instanceof RunFact.Declined d
                && d.channel().equals(shown.channel())
                && d.at().equals(shown.at());
        return declined ? Optional.of(new Appraisal.Refused(((RunFact.Declined) fact).why())) : Optional.empty();
    }
}
