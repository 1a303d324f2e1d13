// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import static isohume.station.web.bench.EntryForm.text;

import isohume.run.Course;
import isohume.run.entry.Appraisal;
import isohume.run.entry.DisplayEntry;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Photo;
import isohume.run.entry.Word;
import isohume.station.web.Desk;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jspecify.annotations.Nullable;

/** The displays that a person reads, for programs. Instants are this program's. */
@Path("/api/bench/entries")
@Tag(name = "bench")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
public final class EntriesApi {
    private static final int NOT_TAKEN = 422;

    private final Following following;
    private final Desk desk;

    EntriesApi(Following following, Desk desk) {
        this.following = following;
        this.desk = desk;
    }

    /**
     * What is wanted and what is there.
     *
     * @param entries of the record under way, those taken back too
     */
    public record State(String run, String phase, int point, List<Display> channels, List<Entered> entries) {}

    /**
     * A channel; values in {@code unit}.
     *
     * @param wanted whether an entry is asked for now
     * @param secondsToRenewal until the display has been renewed since the last entry
     */
    public record Display(
            String channel,
            String unit,
            String resolution,
            double updateSeconds,
            int standing,
            int of,
            boolean wanted,
            boolean leftOut,
            double secondsToRenewal) {}

    /**
     * An entry.
     *
     * @param number of its fact
     * @param observed number of the observation that it is paired with
     * @param takenBack why; null while it stands
     */
    public record Entered(
            long number,
            String channel,
            String shown,
            Instant at,
            String operator,
            long observed,
            String remark,
            @Nullable String photo,
            @Nullable String takenBack) {}

    /**
     * A reading.
     *
     * @param shown digit for digit as the display shows it
     * @param confirmed true to stand by a figure that was questioned
     * @param first what was typed before a question; may be left out
     */
    public record Reading(
            String channel,
            String shown,
            String operator,
            @Nullable Boolean confirmed,
            @Nullable String first) {}

    /** Who takes an entry back, and why. */
    public record TakingBack(String operator, @Nullable String reason) {}

    /** Who leaves a display out at the present point, and why. */
    public record LeavingOut(String channel, String operator, String reason) {}

    /**
     * Why something was not taken.
     *
     * @param question whether it is taken when sent again with {@code confirmed}
     */
    public record NotTaken(
            String why, boolean question, @Nullable String suggestion) {}

    @GET
    @Operation(summary = "What displays of the run on the bench are to be read by a person, and what was read")
    public State state() {
        String run = desk.current().orElseThrow(NotFoundException::new);
        return following.run(run).look(desk, f -> state(f, desk.clock().instant()));
    }

    private static State state(Followed followed, Instant now) {
        Course course = followed.course();
        return new State(
                followed.run(),
                course.phase().word(),
                course.point(),
                course.entries().channels().stream()
                        .map(c -> display(c, course, now))
                        .toList(),
                course.entries().current().stream().map(EntriesApi::entered).toList());
    }

    private static Display display(DisplayedChannel channel, Course course, Instant now) {
        EntriesView.Channel shown = EntriesView.channel(channel, course, now);
        return new Display(
                channel.id(),
                shown.unit(),
                channel.resolution().toPlainString(),
                channel.update().toMillis() / 1000.0,
                shown.standing(),
                shown.of(),
                shown.wanted(),
                shown.omitted(),
                shown.renewal());
    }

    private static Entered entered(DisplayEntry entry) {
        return new Entered(
                entry.number(),
                entry.channel(),
                entry.shown(),
                entry.at(),
                entry.operator(),
                entry.observed(),
                entry.remark(),
                entry.photo().map(Photo::sha256).orElse(null),
                entry.withdrawn().orElse(null));
    }

    @POST
    @Operation(
            summary = "Types what a display shows",
            description = "201 once the run has written it down. 422 with the reason when it is not taken; where"
                    + " question is true, it is taken when sent again with confirmed.")
    @APIResponse(responseCode = "201")
    @APIResponse(responseCode = "422")
    public Response type(@Nullable Reading reading) {
        if (reading == null) {
            throw new BadRequestException();
        }
        boolean confirmed = reading.confirmed() != null && reading.confirmed();
        return answered(new Word.Shown(
                text(reading.channel()),
                text(reading.shown()),
                desk.clock().instant(),
                text(reading.operator()),
                confirmed,
                text(reading.first()),
                Optional.empty()));
    }

    @POST
    @Path("{number}/taken-back")
    @Operation(summary = "Takes an entry back; the original stays in the record")
    @APIResponse(responseCode = "201")
    @APIResponse(responseCode = "422")
    public Response takeBack(@RestPath long number, @Nullable TakingBack taking) {
        if (taking == null) {
            throw new BadRequestException();
        }
        String why = text(taking.reason()).isEmpty() ? "mistyped" : text(taking.reason());
        return answered(new Word.Mistaken(number, text(taking.operator()), why));
    }

    @POST
    @Path("left-out")
    @Operation(summary = "Leaves a display out at the present point")
    @APIResponse(responseCode = "201")
    @APIResponse(responseCode = "422")
    public Response leaveOut(@Nullable LeavingOut leaving) {
        if (leaving == null) {
            throw new BadRequestException();
        }
        return answered(new Word.Omitted(text(leaving.channel()), text(leaving.operator()), text(leaving.reason())));
    }

    private Response answered(Word word) {
        String run = desk.current().orElseThrow(NotFoundException::new);
        Appraisal said = word.operator().isEmpty() ? new Appraisal.Refused("Say who reads.") : desk.say(run, word);
        return switch (said) {
            case Appraisal.Accepted accepted ->
                Response.status(Response.Status.CREATED).entity(state()).build();
            case Appraisal.Refused refused -> notTaken(new NotTaken(refused.why(), false, null));
            case Appraisal.Questioned q ->
                notTaken(new NotTaken(q.why(), true, q.suggestion().orElse(null)));
        };
    }

    private static Response notTaken(NotTaken why) {
        return Response.status(NOT_TAKEN).entity(why).build();
    }
}
