// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a program here can be told.
 *
 * @param json where to write the figures for programs
 * @param quick whether a run only shows that everything works; its figures mean nothing
 * @param own what only this program knows, by its name with the dashes
 */
public record Options(Optional<Path> json, boolean quick, Map<String, String> own) {
    public Options {
        own = Map.copyOf(own);
    }

    public Options(Optional<Path> json, boolean quick) {
        this(json, quick, Map.of());
    }

    /**
     * {@code [--json FILE] [--quick]} and what else the program knows; {@link IllegalArgumentException} says what was
     * found instead.
     *
     * @param more as they are written, for example {@code --seeds N}
     */
    public static Options of(String[] arguments, String... more) {
        Optional<Path> json = Optional.empty();
        boolean quick = false;
        Map<String, String> own = new LinkedHashMap<>();
        for (int i = 0; i < arguments.length; i++) {
            String name = arguments[i];
            if (name.equals("--quick")) {
                quick = true;
            } else if (i + 1 < arguments.length && name.equals("--json")) {
                json = Optional.of(Path.of(arguments[++i]));
            } else if (i + 1 < arguments.length
                    && List.of(more).stream().anyMatch(known -> known.startsWith(name + " "))) {
                own.put(name, arguments[++i]);
            } else {
                throw new IllegalArgumentException(use(more) + "; \"" + name + "\" is not understood");
            }
        }
        return new Options(json, quick, own);
    }

    private static String use(String... more) {
        StringBuilder use = new StringBuilder("use:");
        for (String known : more) {
            use.append(" [").append(known).append(']');
        }
        return use.append(" [--json FILE] [--quick]").toString();
    }

    /**
     * A whole number that this program was told.
     *
     * @throws IllegalArgumentException when it is not one, or below {@code least}
     */
    public long whole(String name, long least, long usual) {
        String told = own.get(name);
        if (told == null) {
            return usual;
        }
        try {
            long value = Long.parseLong(told);
            if (value >= least) {
                return value;
            }
        } catch (NumberFormatException unread) {
            // said below
        }
        throw new IllegalArgumentException(name + " takes a whole number from " + least + ", was " + told);
    }
}
