// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import java.util.regex.Pattern;

/**
 * The little of Markdown that our own documents use: headings, paragraphs, lists with dashes, bold. Everything else is
 * shown as it stands.
 */
final class Prose {
    private static final Pattern BOLD = Pattern.compile("\\*\\*(.+?)\\*\\*");

    private static final Pattern BEFORE_UNIT = Pattern.compile("(\\d) (?=°C|J/m²|%|nm|h\\b)");

    private Prose() {}

    static String html(String markdown) {
        StringBuilder out = new StringBuilder();
        for (String block : markdown.strip().split("\\R\\s*\\R")) {
            out.append(block(block)).append('\n');
        }
        return out.toString();
    }

    private static String block(String block) {
        int level = 0;
        while (level < block.length() && block.charAt(level) == '#') {
            level++;
        }
        if (level > 0) {
            return "<h" + level + ">" + inline(block.substring(level)) + "</h" + level + ">";
        }
        return block.startsWith("- ") ? list(block) : "<p>" + inline(block) + "</p>";
    }

    private static String list(String block) {
        StringBuilder out = new StringBuilder("<ul>");
        for (String item : block.substring(2).split("\\R- ")) {
            out.append("<li>").append(inline(item)).append("</li>");
        }
        return out.append("</ul>").toString();
    }

    private static String inline(String text) {
        String safe = text.strip()
                .replaceAll("\\s*\\R\\s*", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
        return BOLD.matcher(BEFORE_UNIT.matcher(safe).replaceAll("$1\u00a0")).replaceAll("<strong>$1</strong>");
    }
}
