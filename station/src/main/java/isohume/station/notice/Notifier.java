// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.JournalLost;
import isohume.journal.StreamName;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Calls the hooks of a bench, one after another, on a thread of its own. Whoever tells it something waits for nothing;
 * when hooks are too slow, further notices are dropped and that is logged. How each call went is a fact of the stream
 * {@code notice/RUN}.
 */
public final class Notifier implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Notifier.class.getName());
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Duration LIMIT = Duration.ofSeconds(20); // of one call
    private static final int MOST_WAITING = 200;
    private static final int CALLED = 1; // the form of the fact

    private final List<Hook> hooks;
    private final Journal journal;
    private final Duration limit;
    private final BlockingQueue<Notice> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final @Nullable Thread thread;
    private volatile boolean closing;

    public Notifier(List<Hook> hooks, Journal journal) {
        this(hooks, journal, LIMIT);
    }

    Notifier(List<Hook> hooks, Journal journal, Duration limit) {
        this.hooks = List.copyOf(hooks);
        this.journal = journal;
        this.limit = limit;
        this.thread = hooks.isEmpty()
                ? null
                : Thread.ofPlatform().daemon().name("notifier").start(this::work);
    }

    /** Hears of the next fact of a run. */
    public void hear(Entry entry) {
        if (!hooks.isEmpty()) {
            Notice.of(entry).ifPresent(this::tell);
        }
    }

    /** A run ended without a last fact of its own, since the journal could not keep one. */
    public void lost(StreamName run, Instant at, String what) {
        tell(new Notice(run.id(), 0, at, Occasion.ENDED, what, "See to the disk, then resume it on the Bench page."));
    }

    private void tell(Notice notice) {
        if (!hooks.isEmpty() && !waiting.offer(notice)) {
            LOG.log(Level.WARNING, "too many notices wait; dropped: " + notice.message());
        }
    }

    private void work() {
        Calling calling = new Calling(limit);
        try {
            while (!closing || !waiting.isEmpty()) {
                Notice notice = waiting.poll(200, TimeUnit.MILLISECONDS);
                if (notice != null) {
                    for (Hook hook : hooks) {
                        if (hook.about().contains(notice.occasion())) {
                            keep(notice, hook, calling.call(hook, notice));
                        }
                    }
                }
            }
        } catch (InterruptedException told) {
            Thread.currentThread().interrupt();
        }
    }

    private void keep(Notice notice, Hook hook, String outcome) {
        String name = switch (hook) {
            case Hook.Command command -> command.words().getFirst();
            case Hook.Webhook webhook -> webhook.address().toString();
        };
        String text = JSON.createObjectNode()
                .put("about", notice.number())
                .put("occasion", notice.occasion().name())
                .put("hook", name)
                .put("outcome", outcome)
                .toString();
        try {
            journal.append(new StreamName("notice", notice.run()), new Fact(CALLED, text));
        } catch (JournalLost | IllegalStateException gone) {
            LOG.log(Level.WARNING, "a notice's outcome could not be kept: " + text + ": " + gone.getMessage());
        }
    }

    /** Lets what waits be told, for a little. Idempotent. */
    @Override
    public void close() {
        closing = true;
        if (thread == null) {
            return;
        }
        try {
            if (!thread.join(limit)) {
                thread.interrupt();
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
