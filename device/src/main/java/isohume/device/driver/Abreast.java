// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.line.Deadline;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/**
 * Several instruments read at the same time, each on a thread of its own, so that one that is dead delays no other. A
 * read waits a little for all of them; of one that is not ready by then it gives what that one answered since the read
 * before, with the instant it is of, or silence.
 */
public final class Abreast implements Instrument {
    private final List<Place> places;
    private final Duration patience;
    private final InstantSource clock;
    private final ExecutorService threads = Executors.newCachedThreadPool(
            task -> Thread.ofPlatform().daemon().name("reads a device").unstarted(task));

    /** An instrument and what it is at. */
    private static final class Place {
        private final Instrument instrument;
        private @Nullable Future<List<Reading>> asked;

        Place(Instrument instrument) {
            this.instrument = instrument;
        }
    }

    /**
     * Takes the instruments over; closing this closes them.
     *
     * @param patience how long a read waits for those that are slow
     * @param clock dates a silence
     */
    public Abreast(List<? extends Instrument> instruments, Duration patience, InstantSource clock) {
        places = instruments.stream().map(Place::new).toList();
        this.patience = patience;
        this.clock = clock;
    }

    @Override
    public String id() {
        return String.join(
                ", ", places.stream().map(place -> place.instrument.id()).toList());
    }

    @Override
    public List<Channel> channels() {
        return places.stream()
                .flatMap(place -> place.instrument.channels().stream())
                .toList();
    }

    @Override
    public List<Reading> read() {
        Instant at = clock.instant();
        Deadline deadline = Deadline.in(patience);
        List<List<Reading>> earlier = places.stream().map(this::ask).toList();
        List<Reading> all = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            all.addAll(answer(places.get(i), earlier.get(i), deadline, at));
        }
        return all;
    }

    /** Asks anew, unless it is still being asked; what it answered meanwhile. */
    private List<Reading> ask(Place place) {
        Future<List<Reading>> asked = place.asked;
        List<Reading> earlier = asked != null && asked.isDone() ? result(asked) : List.of();
        if (asked == null || asked.isDone()) {
            place.asked = threads.submit(place.instrument::read);
        }
        return earlier;
    }

    private static List<Reading> answer(Place place, List<Reading> earlier, Deadline deadline, Instant at) {
        Future<List<Reading>> asked = place.asked;
        try {
            if (asked != null) {
                List<Reading> now =
                        deadline.<List<Reading>, Exception>get(left -> asked.get(left, TimeUnit.MILLISECONDS));
                place.asked = null;
                return now;
            }
        } catch (TimeoutException slow) {
            return earlier.isEmpty() ? waiting(place.instrument, at) : earlier;
        } catch (ExecutionException bug) {
            throw new IllegalStateException(place.instrument.id() + " could not be read", bug.getCause());
        } catch (RuntimeException bug) {
            throw bug;
        } catch (Exception other) {
            throw new IllegalStateException(other);
        }
        return waiting(place.instrument, at);
    }

    private static List<Reading> result(Future<List<Reading>> done) {
        return switch (done.state()) {
            case SUCCESS -> done.resultNow();
            case FAILED -> throw new IllegalStateException("a device could not be read", done.exceptionNow());
            case CANCELLED, RUNNING -> List.of();
        };
    }

    private static List<Reading> waiting(Instrument instrument, Instant at) {
        return instrument.channels().stream()
                .<Reading>map(
                        channel -> new Reading.Absent(channel, at, Trouble.SILENCE, "it is still being waited for"))
                .toList();
    }

    @Override
    public void close() {
        places.forEach(place -> place.instrument.close());
        threads.shutdown();
    }
}
