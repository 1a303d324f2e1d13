// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SameOriginTest {
    @Test
    void this_programs_own_pages_may_give_orders() {
        assertTrue(SameOrigin.allowed("same-origin", "http://127.0.0.1:8640", "127.0.0.1:8640"));
        assertTrue(SameOrigin.allowed(null, "http://127.0.0.1:8640", "127.0.0.1:8640"));
    }

    @Test
    void a_page_of_another_origin_may_not() {
        assertFalse(SameOrigin.allowed("cross-site", "http://127.0.0.1:8640", "127.0.0.1:8640"));
        assertFalse(SameOrigin.allowed("same-site", null, "127.0.0.1:8640"));
        assertFalse(SameOrigin.allowed(null, "http://elsewhere.example", "127.0.0.1:8640"));
        assertFalse(SameOrigin.allowed(null, "http://127.0.0.1:9999", "127.0.0.1:8640"));
        assertFalse(SameOrigin.allowed(null, "null", "127.0.0.1:8640"));
        assertFalse(SameOrigin.allowed(null, "http://[", "127.0.0.1:8640"));
    }

    @Test
    void a_program_that_is_no_browser_may() {
        assertTrue(SameOrigin.allowed(null, null, "127.0.0.1:8640"));
    }

    @Test
    void a_foreign_name_that_leads_here_is_not_this_machine() {
        assertTrue(SameOrigin.ownMachine("localhost"));
        assertTrue(SameOrigin.ownMachine("127.0.0.1:8640"));
        assertTrue(SameOrigin.ownMachine("[::1]:8640"));
        assertFalse(SameOrigin.ownMachine("rebound.example:8640"));
        assertFalse(SameOrigin.ownMachine("127.0.0.1.rebound.example"));
    }
}
