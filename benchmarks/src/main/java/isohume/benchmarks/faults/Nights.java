// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.journal.SqliteJournal;
import isohume.run.lease.Holder;
import isohume.run.lease.Lease;
import isohume.run.lease.LeaseRefused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Passes nights, each in a folder of its own that is gone afterwards. */
final class Nights {
    private static final Duration LATER = Duration.ofHours(14);

    private Nights() {}

    static Outcome pass(Trouble trouble, long seed) throws IOException {
        Path folder = Files.createTempDirectory("night");
        try {
            return switch (trouble) {
                case PROCESS_KILLED -> killed(seed, folder);
                case TWO_PROGRAMS -> two(seed, folder);
                default -> plain(trouble, seed, folder);
            };
        } finally {
            try (Stream<Path> left = Files.walk(folder)) {
                for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }

    private static Outcome plain(Trouble trouble, long seed, Path folder) {
        try (Night night = new Night(trouble, seed, Night.START, folder, number -> {})) {
            night.pass();
            return new Verdict(night).outcome(seed, trouble);
        }
    }

    /** The program is killed; the next morning it is started again, with the chamber still where it was sent. */
    private static Outcome killed(long seed, Path folder) throws IOException {
        Dice dice = new Dice(seed + 1_000_003);
        List<Long> told = Killed.after(dice.whole(5, 250), folder, seed);
        try (Night morning = new Night(Trouble.PROCESS_KILLED, seed, Night.START.plus(LATER), folder, number -> {})) {
            if (new Verdict(morning).course().ending().isEmpty()) {
                morning.drive();
            }
            morning.startAgain();
            long last = new Verdict(morning).course().taken();
            morning.mornings();
            Outcome outcome = new Verdict(morning).outcome(seed, Trouble.PROCESS_KILLED);
            long missing = told.stream().filter(number -> number > last).count();
            return missing == 0
                    ? outcome
                    : outcome.with(missing, missing + " facts that the killed program had acknowledged are not there");
        }
    }

    /** While a run is at work, two others reach for its chamber: a program of this machine, and another machine's. */
    private static Outcome two(long seed, Path folder) {
        Path locks = folder.resolve("locks");
        try (Night night = new Night(Trouble.TWO_PROGRAMS, seed, Night.START, folder, number -> {});
                Lease lease = Lease.take(
                        night.witness(),
                        night.chamber(),
                        new Holder("the first", "this machine"),
                        locks,
                        night.time())) {
            boolean[] keptOff = {false};
            night.time().at(Duration.ofMinutes(new Dice(seed).whole(1, 30)), () -> {
                lease.renew();
                keptOff[0] = Killed.isKeptOff(locks, night.chamber()) && isRefused(night, folder);
            });
            night.pass();
            Outcome outcome = new Verdict(night).outcome(seed, Trouble.TWO_PROGRAMS);
            return keptOff[0] ? outcome : outcome.with(0, "another program could take the chamber");
        }
    }

    /** Another machine has locks of its own, and the same journal. */
    private static boolean isRefused(Night night, Path folder) {
        Holder stranger = new Holder("the third", "another machine");
        try (SqliteJournal same = SqliteJournal.open(night.file(), night.time());
                Lease granted =
                        Lease.take(same, night.chamber(), stranger, folder.resolve("other-locks"), night.time())) {
            granted.renew();
            return false;
        } catch (LeaseRefused refused) {
            return true;
        }
    }
}
