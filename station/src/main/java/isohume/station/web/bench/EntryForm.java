// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.run.entry.Photo;
import isohume.run.entry.Word;
import java.time.Instant;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** What the keypad's form sends: one key, or the whole reading. */
public class EntryForm {
    private static final int LONGEST = 100;
    private static final String BACK = "back";
    private static final String SIGN = "sign";

    @RestForm
    public @Nullable String run;

    @RestForm
    public @Nullable String channel;

    /** What stands in the field. */
    @RestForm
    public @Nullable String shown;

    /** A key that was pressed where no script runs. */
    @RestForm
    public @Nullable String key;

    /** What was typed before the person was asked. */
    @RestForm
    public @Nullable String first;

    /** Says that the person stands by it. */
    @RestForm
    public @Nullable String confirmed;

    /** A suggestion that the person follows. */
    @RestForm
    public @Nullable String instead;

    @RestForm
    public @Nullable String operator;

    @RestForm("photo")
    public @Nullable FileUpload photo;

    /** Hash of a photo that came before. */
    @RestForm("photo_kept")
    public @Nullable String photoKept;

    @RestForm("photo_name")
    public @Nullable String photoName;

    static String text(@Nullable String field) {
        String text = field == null ? "" : field.strip();
        return text.substring(0, Math.min(text.length(), LONGEST));
    }

    boolean isKey() {
        return !text(key).isEmpty();
    }

    /** The field after the key. */
    EntriesView.Typed pressed() {
        String before = text(shown);
        String after = switch (text(key)) {
            case BACK -> before.substring(0, Math.max(0, before.length() - 1));
            case SIGN -> before.startsWith("-") ? before.substring(1) : "-" + before;
            default -> text(before + text(key));
        };
        return new EntriesView.Typed(after, text(first), text(operator), text(photoKept), text(photoName));
    }

    Word.Shown word(Instant now, Optional<Photo> picture) {
        boolean corrected = !text(instead).isEmpty();
        return new Word.Shown(
                text(channel),
                corrected ? text(instead) : text(shown),
                now,
                text(operator),
                !text(confirmed).isEmpty(),
                corrected ? text(shown) : text(first),
                picture);
    }
}
