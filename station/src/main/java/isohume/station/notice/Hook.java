// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

import java.net.URI;
import java.util.List;
import java.util.Set;

/** Who is told, and of what. */
public sealed interface Hook {
    Set<Occasion> about();

    /**
     * A program that is started with these arguments and the message as one more, without a shell; the notice as JSON
     * is on its standard input.
     */
    record Command(List<String> words, Set<Occasion> about) implements Hook {
        public Command {
            words = List.copyOf(words);
            about = Set.copyOf(about);
        }
    }

    /** A program on this machine that takes the notice as JSON by POST. */
    record Webhook(URI address, Set<Occasion> about) implements Hook {
        public Webhook {
            about = Set.copyOf(about);
        }
    }
}
