// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import isohume.device.sheet.Sheet;
import isohume.device.sheet.SheetError;
import isohume.run.order.Lesson;
import isohume.station.job.Worksheet;
import isohume.station.plan.PlanText.Leg;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Plans that can be looked at: those in a folder, and the one that the program was started with. A plan is kept as a new
 * file; nothing is overwritten. Safe for any thread.
 */
public final class Shelf {
    /** The name of the plan that the program was started with. */
    public static final String LOADED = "loaded";

    private static final String ENDING = ".yaml";
    private static final int MOST_FILES = 9999;

    private final Path folder;
    private final Optional<Worksheet> loaded;
    private final Function<String, List<Lesson>> lessons;

    /**
     * A shelf.
     *
     * @param folder where plans are kept; made when the first one is
     * @param lessons what past runs teach about the bench of a title
     */
    public Shelf(Path folder, Optional<Worksheet> loaded, Function<String, List<Lesson>> lessons) {
        this.folder = folder;
        this.loaded = loaded;
        this.lessons = lessons;
    }

    /**
     * A plan in the list.
     *
     * @param name its address
     * @param trouble why it cannot be read; empty when it can
     */
    public record Listed(String name, String title, String bench, int points, String trouble) {}

    /** A plan with the documents that it is made of, its own first. */
    public record Plan(String name, Worksheet worksheet, Map<String, String> documents) {
        public Plan {
            documents = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(documents));
        }

        private String own() {
            return documents.keySet().iterator().next();
        }

        /** The same with other points; an empty list leaves them as they are. */
        public Plan with(List<Leg> legs) {
            return with(document -> PlanText.with(document, legs));
        }

        /** The same with another title. */
        public Plan titled(String title) {
            return with(document -> PlanText.titled(document, title));
        }

        private Plan with(Function<String, String> change) {
            Map<String, String> changed = new java.util.LinkedHashMap<>(documents);
            changed.computeIfPresent(own(), (name, text) -> change.apply(text));
            return new Plan(name, Worksheet.draft(n -> Objects.requireNonNull(changed.get(n), n), own()), changed);
        }
    }

    /** Every plan: the loaded one first, then the files by name. */
    public List<Listed> list() {
        List<Listed> all = new ArrayList<>();
        loaded.ifPresent(worksheet -> all.add(listed(LOADED, worksheet)));
        for (String name : files()) {
            try {
                all.add(listed(name, Worksheet.draft(folder.resolve(name))));
            } catch (SheetError | IllegalArgumentException unreadable) {
                if (isPlan(name)) {
                    all.add(new Listed(name, name, "", 0, String.valueOf(unreadable.getMessage())));
                }
            }
        }
        return all;
    }

    /** A bench lies beside its plans and is none. */
    private boolean isPlan(String name) {
        try {
            return Sheet.read(folder.resolve(name)).has("plan");
        } catch (SheetError unreadable) {
            return true;
        }
    }

    private static Listed listed(String name, Worksheet worksheet) {
        return new Listed(
                name,
                worksheet.plan().title(),
                worksheet.job().benchTitle(),
                worksheet.plan().points().size(),
                "");
    }

    private List<String> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * A plan by its name; empty when there is none of that name.
     *
     * @throws SheetError when it cannot be read
     */
    public Optional<Plan> plan(String name) {
        Optional<Worksheet> worksheet = name.equals(LOADED)
                ? loaded
                : files().contains(name) ? Optional.of(Worksheet.draft(folder.resolve(name))) : Optional.empty();
        return worksheet.map(w -> new Plan(name, w, w.documents()));
    }

    /** What a plan takes, by what past runs of its bench teach. */
    public Prospect prospect(Plan plan) {
        return Prospect.of(plan.worksheet(), lessons(plan));
    }

    /** A plan's points in a better order. */
    public Rearranged rearranged(Plan plan) {
        return Rearranged.of(plan.worksheet(), lessons(plan));
    }

    private List<Lesson> lessons(Plan plan) {
        return lessons.apply(plan.worksheet().job().benchTitle());
    }

    /** Keeps a plan as a new file with the next number, its bench beside it, and says under what name. */
    public synchronized String keep(Plan plan) {
        try {
            Files.createDirectories(folder);
            String own = plan.own();
            String document = Objects.requireNonNull(plan.documents().get(own));
            for (Map.Entry<String, String> beside : plan.documents().entrySet()) {
                if (!beside.getKey().equals(own)) {
                    String kept = put(beside.getKey(), beside.getValue());
                    document = kept.equals(beside.getKey()) ? document : PlanText.onBench(document, kept);
                }
            }
            String stem = stem(plan.worksheet().plan().title());
            for (int number = 1; number <= MOST_FILES; number++) {
                String name = String.format(Locale.ROOT, "%04d-%s%s", number, stem, ENDING);
                if (taken(number) || !write(name, document)) {
                    continue;
                }
                return name;
            }
            throw new IllegalStateException("there are " + MOST_FILES + " plans in " + folder);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private boolean taken(int number) {
        String prefix = String.format(Locale.ROOT, "%04d-", number);
        return files().stream().anyMatch(name -> name.startsWith(prefix));
    }

    /** Puts a document beside the plans, under a name of its own if another stands there, and says which. */
    private String put(String name, String document) throws IOException {
        String last = String.valueOf(Path.of(name).getFileName());
        String stem = last.endsWith(ENDING) ? last.substring(0, last.length() - ENDING.length()) : last;
        for (int number = 1; number <= MOST_FILES; number++) {
            String free = number == 1 ? stem + ENDING : stem + "-" + number + ENDING;
            Path file = folder.resolve(free);
            if (Files.exists(file) ? Files.readString(file).equals(document) : write(free, document)) {
                return free;
            }
        }
        throw new IllegalStateException("there are " + MOST_FILES + " files like " + name + " in " + folder);
    }

    private boolean write(String name, String document) throws IOException {
        try {
            Files.write(folder.resolve(name), document.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    private static String stem(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String stem = plain.isEmpty() ? "plan" : plain;
        return stem.substring(0, Math.min(stem.length(), 40));
    }
}
