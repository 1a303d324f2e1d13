// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import static isohume.station.web.bench.EntryForm.text;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.run.entry.Appraisal;
import isohume.run.entry.Photo;
import isohume.run.entry.Word;
import isohume.station.imported.Photos;
import isohume.station.web.Desk;
import isohume.station.web.NotNow;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** A keypad for the displays that a person reads. Its keys are plain submit buttons; a script only spares the way. */
@Path("/bench/entries")
@Produces(MediaType.TEXT_HTML)
public final class EntriesPage {
    private static final int NOT_TAKEN = 422;

    private final Following following;
    private final Desk desk;

    EntriesPage(Following following, Desk desk) {
        this.following = following;
        this.desk = desk;
    }

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance entries(EntriesView view);
    }

    @GET
    public TemplateInstance page(@RestQuery @Nullable String channel, @RestQuery @Nullable String operator) {
        return page(text(channel), EntriesView.Typed.by(text(operator)), Optional.empty());
    }

    private TemplateInstance page(String channel, EntriesView.Typed typed, Optional<Appraisal> said) {
        String run = desk.current().orElseThrow(NotFoundException::new);
        return EntriesView.of(following.run(run), desk, channel, typed, said)
                .map(Templates::entries)
                .orElseThrow(NotFoundException::new);
    }

    /** One key, or the whole reading. */
    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response type(@BeanParam EntryForm form) throws IOException {
        if (form.isKey()) {
            return Response.ok(page(text(form.channel), form.pressed(), Optional.empty()))
                    .build();
        }
        Optional<Photos.Outcome> photo = photo(form);
        if (photo.isPresent() && photo.get() instanceof Photos.Outcome.Refused refused) {
            return notTaken(form.word(desk.clock().instant(), Optional.empty()), new Appraisal.Refused(refused.why()));
        }
        Optional<Photo> kept = photo.map(outcome -> ((Photos.Outcome.Kept) outcome).photo());
        Word.Shown word = form.word(desk.clock().instant(), kept);
        return answered(word, said(form.run, word));
    }

    private Optional<Photos.Outcome> photo(EntryForm form) throws IOException {
        if (desk.photos().isEmpty()) {
            return Optional.empty();
        }
        Photos photos = desk.photos().get();
        if (form.photo != null && form.photo.size() > 0) {
            return Optional.of(photos.keep(form.photo.uploadedFile(), text(form.photo.fileName())));
        }
        return photos.find(text(form.photoKept), text(form.photoName)).map(Photos.Outcome.Kept::new);
    }

    private Appraisal said(@Nullable String run, Word word) {
        if (word.operator().isEmpty()) {
            return new Appraisal.Refused("Write down who reads.");
        }
        String current = desk.current().filter(r -> r.equals(run)).orElse("");
        return current.isEmpty()
                ? new Appraisal.Refused("The run that this reading was meant for is no longer on the bench.")
                : desk.say(current, word);
    }

    private Response answered(Word.Shown word, Appraisal said) {
        return said instanceof Appraisal.Accepted
                ? Response.seeOther(back(word.operator())).build()
                : notTaken(word, said);
    }

    private Response notTaken(Word.Shown word, Appraisal said) {
        EntriesView.Typed typed = new EntriesView.Typed(
                word.text(),
                word.first(),
                word.operator(),
                word.photo().map(Photo::sha256).orElse(""),
                word.photo().map(Photo::name).orElse(""));
        return Response.status(NOT_TAKEN)
                .entity(page(word.channel(), typed, Optional.of(said)))
                .build();
    }

    private static URI back(String operator) {
        return URI.create("/bench/entries?operator=" + URLEncoder.encode(operator, StandardCharsets.UTF_8));
    }

    /** An entry was a mistake. */
    @POST
    @Path("{number}/taken-back")
    public Response takeBack(
            @RestPath long number,
            @FormParam("run") @Nullable String run,
            @FormParam("operator") @Nullable String operator,
            @FormParam("reason") @Nullable String reason) {
        String why = text(reason).isEmpty() ? "mistyped" : text(reason);
        return done(said(run, new Word.Mistaken(number, text(operator), why)), text(operator));
    }

    /** A display is not read at this point. */
    @POST
    @Path("left-out")
    public Response leaveOut(
            @FormParam("run") @Nullable String run,
            @FormParam("channel") @Nullable String channel,
            @FormParam("operator") @Nullable String operator,
            @FormParam("reason") @Nullable String reason) {
        return done(said(run, new Word.Omitted(text(channel), text(operator), text(reason))), text(operator));
    }

    private static Response done(Appraisal said, String operator) {
        return switch (said) {
            case Appraisal.Accepted accepted ->
                Response.seeOther(back(operator)).build();
            case Appraisal.Refused refused -> throw new NotNow(refused.why());
            case Appraisal.Questioned questioned -> throw new NotNow(questioned.why());
        };
    }

    /** A photo of a display as it came. */
    @GET
    @Path("photos/{sha256}")
    @Produces({"image/jpeg", "image/png"})
    public Response photo(@RestPath String sha256) throws IOException {
        Photos photos = desk.photos().orElseThrow(NotFoundException::new);
        Photo photo = photos.find(sha256, sha256).orElseThrow(NotFoundException::new);
        return Response.ok(photos.file(sha256).orElseThrow().toFile(), photo.mediaType())
                .build();
    }
}
