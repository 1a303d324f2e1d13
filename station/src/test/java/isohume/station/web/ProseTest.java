// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProseTest {
    @Test
    void headings_paragraphs_and_lists_become_html() {
        assertEquals(
                "<h2>Dust</h2>\n<p>Wear a <strong>mask</strong> and gloves.</p>\n<ul><li>one goes on</li><li>two</li></ul>\n",
                Prose.html("## Dust\n\nWear a **mask** and\ngloves.\n\n- one\n  goes on\n- two\n"));
    }

    @Test
    void nothing_in_the_text_can_become_markup() {
        assertEquals("<p>a &lt; b &amp; c</p>\n", Prose.html("a < b & c"));
    }
}
