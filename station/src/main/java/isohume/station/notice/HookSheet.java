// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

import isohume.device.sheet.Sheet;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A bench's {@code notify}, as a person writes it; described in {@code docs/formats/bench.md}. */
public final class HookSheet {
    private static final Set<Occasion> USUAL = EnumSet.complementOf(EnumSet.of(Occasion.OVER));

    private HookSheet() {}

    /** The hooks in a section: none, a command, a webhook or both. */
    public static List<Hook> read(Sheet sheet) {
        Set<Occasion> about = about(sheet);
        List<Hook> hooks = new ArrayList<>();
        if (sheet.has("command")) {
            List<String> words = sheet.texts("command");
            if (words.isEmpty()) {
                throw sheet.wrong("command", "the list is empty", "name the program first, then its arguments");
            }
            hooks.add(new Hook.Command(words, about));
        }
        if (sheet.has("webhook")) {
            hooks.add(new Hook.Webhook(loopback(sheet), about));
        }
        sheet.refuseOthers();
        return hooks;
    }

    private static Set<Occasion> about(Sheet sheet) {
        if (!sheet.has("about")) {
            return USUAL;
        }
        Set<Occasion> about = EnumSet.noneOf(Occasion.class);
        for (String word : sheet.texts("about")) {
            about.add(Arrays.stream(Occasion.values())
                    .filter(o -> o.name().toLowerCase(Locale.ROOT).equals(word))
                    .findFirst()
                    .orElseThrow(() -> sheet.wrong(
                            "about", "nothing is called " + word, "use noticed, over, held, point, reading or ended")));
        }
        return about;
    }

    /** The program sends nothing beyond its own machine; the host is not looked up, so it cannot be made to. */
    private static URI loopback(Sheet sheet) {
        String text = sheet.text("webhook");
        String remedy = "write it as http://127.0.0.1:9000/path; from there another program can pass it on";
        try {
            URI address = new URI(text);
            String host = String.valueOf(address.getHost());
            boolean own = host.matches("127\\.\\d{1,3}\\.\\d{1,3}\\.\\d{1,3}") || host.equals("[::1]");
            if (!"http".equals(address.getScheme()) || !own) {
                throw sheet.wrong("webhook", text + " is not on this machine", remedy);
            }
            return address;
        } catch (URISyntaxException wrong) {
            throw sheet.wrong("webhook", text + " is no address", remedy);
        }
    }
}
