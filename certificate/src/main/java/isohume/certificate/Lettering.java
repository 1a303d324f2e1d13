// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * What the typeface can show. A character that it lacks is printed as its number, {@code [U+4E2D]}: a certificate must
 * not lose one silently, nor be turned round by one that nobody sees.
 */
final class Lettering {
    static final String REGULAR = "sans-regular.ttf";
    static final String SEMIBOLD = "sans-semibold.ttf";
    static final String ITALIC = "sans-italic.ttf";

    private final CmapLookup characters;

    Lettering() {
        try (InputStream file = open(REGULAR);
                var font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            characters = font.getUnicodeCmapLookup();
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own typeface " + REGULAR + " cannot be read", broken);
        }
    }

    static InputStream open(String font) {
        return Objects.requireNonNull(
                Lettering.class.getResourceAsStream("/META-INF/resources/fonts/" + font),
                () -> "the program's own typeface " + font + " is missing");
    }

    /**
     * A face for the text of a document. Without ligatures: those of this typeface have no character of their own, and
     * a reader that speaks, or a search, would lose the letters behind them (ISO 19005-3, 6.2.11.7.2).
     */
    static PDFont load(String font, PDDocument document) throws IOException {
        try (InputStream file = open(font)) {
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(file));
            face.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(face);
            return PDType0Font.load(document, face, true);
        }
    }

    String legible(String text) {
        StringBuilder out = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .forEach(c -> out.append(shown(c) ? Character.toString(c) : Markup.named(c)));
        return out.toString();
    }

    private boolean shown(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL -> c == '\n' || c == '\t' || c == '\r';
            case Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> false;
            default -> characters.getGlyphId(c) != 0;
        };
    }
}
