// SPDX-License-Identifier: Apache-2.0
package isohume.device.scpi;

import isohume.device.Instrument;
import isohume.device.driver.Channels;
import isohume.device.driver.Common;
import isohume.device.driver.LineSheet;
import isohume.device.driver.Meaning;
import isohume.device.driver.Shown;
import isohume.device.line.Lines;
import isohume.device.line.Place;
import isohume.device.sheet.Sheet;
import isohume.device.text.LineQuestion;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;

/** A meter that is asked by SCPI, as a person describes it. Immutable. */
public final class ScpiDescription extends Channels {
    private static final LineQuestion.Manner MANNER =
            new LineQuestion.Manner(StandardCharsets.US_ASCII, "\n", "\n", false);

    private final Place place;
    private final List<ScpiChannel> channels;

    private ScpiDescription(Common common, Place place, List<ScpiChannel> channels) {
        super(common, channels.stream().map(ScpiChannel::shown).toList());
        this.place = place;
        this.channels = channels;
    }

    /**
     * The description in a document.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not valid
     */
    public static ScpiDescription of(Sheet sheet) {
        Sheet line = sheet.section("line");
        Common common = Common.of(sheet, line);
        Place place = LineSheet.place(line);
        line.refuseOthers();
        List<ScpiChannel> channels = common.channels(sheet, one -> channel(common, one), ScpiChannel::shown);
        sheet.refuseOthers();
        return new ScpiDescription(common, place, channels);
    }

    private static ScpiChannel channel(Common common, Sheet one) {
        Shown shown = common.shown(one);
        String ask = one.text("ask");
        if (!ask.matches("[*A-Za-z0-9:]+\\?( [A-Za-z0-9(),@.:+-]+)?")) {
            throw one.wrong(
                    "ask", "one query is needed here, such as MEAS:VOLT:DC? (@101); nothing else is sent to a meter");
        }
        return new ScpiChannel(shown, ask, Meaning.read(one, shown.channel().quantity()));
    }

    @Override
    public String place() {
        return place.toString();
    }

    @Override
    public Instrument open(Lines lines, InstantSource clock) {
        Lines.Share share = lines.share(place, id());
        return new ScpiInstrument(this, share.line(), clock, share.release());
    }

    LineQuestion.Manner manner() {
        return MANNER;
    }

    List<ScpiChannel> scpiChannels() {
        return channels;
    }
}
