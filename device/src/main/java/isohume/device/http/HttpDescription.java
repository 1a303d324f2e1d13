// SPDX-License-Identifier: Apache-2.0
package isohume.device.http;

import isohume.device.Instrument;
import isohume.device.driver.Channels;
import isohume.device.driver.Common;
import isohume.device.json.JsonCodec;
import isohume.device.json.JsonSheet;
import isohume.device.line.Lines;
import isohume.device.sheet.Sheet;
import java.net.URI;
import java.time.InstantSource;
import java.util.List;

/** A device that gives a JSON document over HTTP, as a person describes it. Immutable. */
public final class HttpDescription extends Channels {
    private final URI address;
    private final JsonCodec codec;

    private HttpDescription(Common common, URI address, JsonCodec codec) {
        super(common, codec.values().stream().map(JsonCodec.Value::shown).toList());
        this.address = address;
        this.codec = codec;
    }

    /**
     * The description in a document.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not valid
     */
    public static HttpDescription of(Sheet sheet) {
        Sheet line = sheet.section("line");
        Common common = Common.of(sheet, line);
        Sheet http = line.section("http");
        String host = Common.host(http);
        int port = http.wholeOr("port", 1, 65_535, 80);
        String path = http.text("path");
        if (!path.matches("/[A-Za-z0-9._~/?=&%-]{0,255}")) {
            throw http.wrong("path", "a path such as /values.json is needed here");
        }
        http.refuseOthers();
        line.refuseOthers();
        List<JsonCodec.Value> values =
                common.channels(sheet, one -> JsonSheet.value(common, one, ""), JsonCodec.Value::shown);
        JsonCodec codec = new JsonCodec(values, JsonSheet.expected(sheet));
        sheet.refuseOthers();
        String bracketed = host.contains(":") ? "[" + host + "]" : host;
        try {
            return new HttpDescription(common, URI.create("http://" + bracketed + ":" + port + path), codec);
        } catch (IllegalArgumentException e) {
            throw http.wrong("path", "an address cannot be made of it");
        }
    }

    @Override
    public String place() {
        return address.toString();
    }

    @Override
    public Instrument open(Lines lines, InstantSource clock) {
        return new HttpInstrument(this, lines.tap(), clock);
    }

    URI address() {
        return address;
    }

    JsonCodec codec() {
        return codec;
    }
}
