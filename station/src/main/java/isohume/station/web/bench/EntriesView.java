// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.quarkus.qute.TemplateData;
import isohume.run.Course;
import isohume.run.Phase;
import isohume.run.entry.Appraisal;
import isohume.run.entry.DisplayEntry;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.EntrySheet;
import isohume.run.entry.Photo;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The displays of a run that a person reads, as they are shown. What the reference says is left out on purpose: who
 * knows it reads the display with it in mind.
 *
 * @param word the run's phase
 * @param recording whether readings are wanted at this moment
 * @param channels all of them
 * @param channel the one that is to be typed now; one without an id when none is
 * @param entries of that channel in the record under way, the newest first
 * @param typed what stands in the form
 * @param why why it was not taken, or what is odd about it; empty when nothing was typed
 * @param question whether it may be taken all the same
 * @param suggestion what it may have been meant to be; may be empty
 */
@TemplateData
public record EntriesView(
        String run,
        String remark,
        String operator,
        boolean recording,
        String word,
        int point,
        List<Channel> channels,
        Channel channel,
        List<Row> entries,
        Typed typed,
        String why,
        boolean question,
        String suggestion) {

    /**
     * A channel.
     *
     * @param name in plain words
     * @param pattern how a figure of it looks, for a hint: {@code 0.0}
     * @param renewal seconds until the display has been renewed since the last entry
     */
    @TemplateData
    public record Channel(
            String id,
            String name,
            String quantity,
            String unit,
            String pattern,
            int standing,
            int of,
            boolean wanted,
            boolean omitted,
            double renewal) {
        static final Channel NONE = new Channel("", "", "", "", "", 0, 0, false, false, 0);

        /** The number of the entry that is wanted next. */
        public int next() {
            return Math.min(standing + 1, of);
        }

        /** Whether there is one. */
        public boolean some() {
            return !id.isEmpty();
        }
    }

    /**
     * An entry.
     *
     * @param place 1 for the first
     * @param photo hash of its photo; empty when there is none
     * @param withdrawn why it was taken back; empty while it stands
     */
    @TemplateData
    public record Row(
            long number, int place, String shown, String time, String remark, String photo, String withdrawn) {}

    /**
     * What stands in the form.
     *
     * @param first what was typed before the person was asked
     * @param photo hash of a photo that came with it
     */
    @TemplateData
    public record Typed(String text, String first, String operator, String photo, String photoName) {
        static Typed by(String operator) {
            return new Typed("", "", operator, "", "");
        }
    }

    /** Empty when the run has no facts. */
    static Optional<EntriesView> of(
            Followed followed, Desk desk, String channel, Typed typed, Optional<Appraisal> said) {
        return followed.look(
                desk,
                f -> f.course().hasStarted() ? Optional.of(view(f, desk, channel, typed, said)) : Optional.empty());
    }

    private static EntriesView view(Followed followed, Desk desk, String asked, Typed typed, Optional<Appraisal> said) {
        Course course = followed.course();
        Instant now = desk.clock().instant();
        Optional<DisplayedChannel> chosen = chosen(course, asked);
        return new EntriesView(
                followed.run(),
                desk.remark(),
                typed.operator().isEmpty() ? course.started().operator() : typed.operator(),
                course.phase() == Phase.RECORD,
                course.phase().word(),
                course.point(),
                course.entries().channels().stream()
                        .map(c -> channel(c, course, now))
                        .toList(),
                chosen.map(c -> channel(c, course, now)).orElse(Channel.NONE),
                chosen.map(c -> rows(course.entries().of(c), new Clockface(desk.zone())))
                        .orElse(List.of()),
                typed,
                said.map(EntriesView::why).orElse(""),
                said.filter(Appraisal.Questioned.class::isInstance).isPresent(),
                said.flatMap(EntriesView::suggestion).orElse(""));
    }

    /** The one that was asked for, else of those wanted the one read least often: a display shows all at once. */
    private static Optional<DisplayedChannel> chosen(Course course, String asked) {
        EntrySheet sheet = course.entries();
        return sheet.channel(asked)
                .or(() -> sheet.wanted(course.point()).stream().min(Comparator.comparingInt(sheet::standing)))
                .or(() -> sheet.channels().stream().findFirst());
    }

    static Channel channel(DisplayedChannel channel, Course course, Instant now) {
        EntrySheet sheet = course.entries();
        List<DisplayEntry> entries = sheet.of(channel);
        Duration wait = entries.isEmpty()
                ? Duration.ZERO
                : Duration.between(now, entries.getLast().at().plus(channel.update()));
        boolean wanted = sheet.wanted(course.point()).contains(channel);
        return new Channel(
                channel.id(),
                name(channel),
                channel.quantity().key(),
                channel.quantity().unit(),
                channel.decimals() == 0 ? "0" : "0." + "0".repeat(channel.decimals()),
                sheet.standing(channel),
                channel.entries(),
                course.phase() == Phase.RECORD && wanted,
                sheet.isOmitted(channel, course.point()),
                Math.max(0, wait.toMillis() / 1000.0));
    }

    /** {@code C-3310 relative humidity}. */
    static String name(DisplayedChannel channel) {
        return channel.instrument() + " " + channel.quantity().key().replace('_', ' ');
    }

    private static List<Row> rows(List<DisplayEntry> entries, Clockface clock) {
        List<Row> rows = new ArrayList<>();
        for (DisplayEntry e : entries) {
            rows.addFirst(new Row(
                    e.number(),
                    rows.size() + 1,
                    e.shown(),
                    clock.time(e.at()),
                    e.remark(),
                    e.photo().map(Photo::sha256).orElse(""),
                    e.withdrawn().orElse("")));
        }
        return List.copyOf(rows);
    }

    private static String why(Appraisal said) {
        return switch (said) {
            case Appraisal.Accepted accepted -> "";
            case Appraisal.Refused refused -> refused.why();
            case Appraisal.Questioned questioned -> questioned.why();
        };
    }

    private static Optional<String> suggestion(Appraisal said) {
        return said instanceof Appraisal.Questioned questioned ? questioned.suggestion() : Optional.empty();
    }
}
