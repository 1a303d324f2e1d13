// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.Instrument;
import isohume.device.driver.Channels;
import isohume.device.driver.Common;
import isohume.device.line.Heard;
import isohume.device.line.Lines;
import isohume.device.line.Place;
import isohume.device.sheet.Sheet;
import java.time.Duration;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A device that answers lines of text, or sends them by itself, as a person describes it. Immutable. */
public final class TextDescription extends Channels {
    private final Place place;
    private final LineQuestion.Manner manner;
    private final List<Exchange> exchanges;
    private final List<Word> words;
    private final Optional<StatusText> status;
    private final Duration mostAge;

    TextDescription(
            Common common,
            Place place,
            LineQuestion.Manner manner,
            List<Exchange> exchanges,
            List<Word> words,
            Optional<StatusText> status,
            Duration mostAge) {
        super(common, words.stream().map(Word::shown).toList());
        this.place = place;
        this.manner = manner;
        this.exchanges = List.copyOf(exchanges);
        this.words = List.copyOf(words);
        this.status = status;
        this.mostAge = mostAge;
    }

    /**
     * The description in a document.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not valid
     */
    public static TextDescription of(Sheet sheet) {
        return new TextReader(sheet).description();
    }

    @Override
    public String place() {
        return place.toString();
    }

    @Override
    public Instrument open(Lines lines, InstantSource clock) {
        Lines.Share share = lines.share(place, id());
        boolean talksByItself = exchanges.getFirst().ask().isEmpty();
        return talksByItself
                ? new OverheardInstrument(this, share.line(), clock, share.release())
                : new TextInstrument(this, share.line(), clock, share.release());
    }

    LineQuestion.Manner manner() {
        return manner;
    }

    List<Exchange> exchanges() {
        return exchanges;
    }

    Duration mostAge() {
        return mostAge;
    }

    TextCodec codec() {
        return new TextCodec(words, status);
    }

    /** The same for every group. */
    Map<String, Heard<Spoken>> everywhere(Heard<Spoken> heard) {
        Map<String, Heard<Spoken>> all = new HashMap<>();
        exchanges.forEach(exchange -> exchange.pattern().groups().forEach(group -> all.put(group, heard)));
        return all;
    }
}
