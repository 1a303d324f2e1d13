// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Well-formed XML, written from start to end. Whatever is passed as text or as an attribute is escaped. */
final class Markup {
    private static final Pattern SYMBOL = Pattern.compile("(?<![\\w\u2019])[Uknw](?![\\w\u2019])");

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private final UnaryOperator<String> lettering;

    Markup() {
        this(UnaryOperator.identity());
    }

    /**
     * Markup in a typeface.
     *
     * @param lettering what is done to every text before it is escaped
     */
    Markup(UnaryOperator<String> lettering) {
        this.lettering = lettering;
    }

    /** @param attributes names and values in turn */
    @CanIgnoreReturnValue
    Markup open(String name, String... attributes) {
        start(name, attributes);
        out.append('>');
        open.push(name);
        return this;
    }

    @CanIgnoreReturnValue
    Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    @CanIgnoreReturnValue
    Markup empty(String name, String... attributes) {
        start(name, attributes);
        out.append("/>");
        return this;
    }

    @CanIgnoreReturnValue
    Markup element(String name, String text, String... attributes) {
        return open(name, attributes).text(text).close();
    }

    @CanIgnoreReturnValue
    Markup text(String text) {
        escape(lettering.apply(text));
        return this;
    }

    /** A sentence of this program in which U, k, n and w are symbols. Not for text from outside. */
    @CanIgnoreReturnValue
    Markup sentence(String name, String sentence, String... attributes) {
        open(name, attributes);
        Matcher symbols = SYMBOL.matcher(sentence);
        int done = 0;
        while (symbols.find()) {
            text(sentence.substring(done, symbols.start())).element("i", symbols.group());
            done = symbols.end();
        }
        return text(sentence.substring(done)).close();
    }

    /** Markup that this program made. */
    @CanIgnoreReturnValue
    Markup made(String markup) {
        out.append(markup);
        return this;
    }

    /** The whole; an error when something is still open. */
    String finish() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }

    private void start(String name, String... attributes) {
        out.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    private void escape(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(allowed(c) ? Character.toString(c) : named(c));
            }
        });
    }

    /** A character that cannot be shown, by its number, so that nothing is lost silently. */
    static String named(int codePoint) {
        return String.format(Locale.ROOT, "[U+%04X]", codePoint);
    }

    /** Char of XML 1.0, production 2. */
    private static boolean allowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || (c >= 0x10000 && c <= 0x10FFFF);
    }
}
