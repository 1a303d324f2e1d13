// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a file is one that a profile was made for, and where its readings begin. */
final class ProfileFit {
    private final Profile profile;
    private final List<List<String>> rows;

    private ProfileFit(Profile profile, List<String> lines) {
        this.profile = profile;
        rows = lines.stream().map(profile.delimiter()::cells).toList();
    }

    /** The layout, if the headings are those of the profile; otherwise the doubts say where they differ. */
    static Optional<Layout> layout(Profile profile, List<String> lines, Doubts doubts) {
        ProfileFit fit = new ProfileFit(profile, lines);
        TimeColumns times = profile.times().columns();
        int first = 0;
        while (first < fit.rows.size() && !times.in(fit.rows.get(first))) {
            first++;
        }
        if (first == fit.rows.size()) {
            doubts.wrong(
                    0,
                    0,
                    "no row has its time where the profile \"" + profile.title() + "\" says",
                    "import the file without the profile to see what is in it");
            return Optional.empty();
        }
        List<Integer> above = fit.filledAbove(first, lines);
        if (!fit.sameHeadings(above, first, doubts)) {
            return Optional.empty();
        }
        List<String> names = above.isEmpty() ? List.of() : fit.rows.get(above.getFirst());
        List<String> units = above.size() < 2 ? List.of() : fit.rows.get(above.getLast());
        int before = above.isEmpty() ? first : above.getFirst();
        return Optional.of(new Layout(
                profile.delimiter(),
                lines.subList(0, before),
                names,
                units,
                first + 1,
                fit.rows.get(first).size(),
                List.of(times)));
    }

    private List<Integer> filledAbove(int first, List<String> lines) {
        List<Integer> above = new ArrayList<>();
        for (int i = first - 1; i >= 0 && above.size() < profile.headings(); i--) {
            if (!lines.get(i).isBlank()) {
                above.addFirst(i);
            }
        }
        return above;
    }

    private boolean sameHeadings(List<Integer> above, int first, Doubts doubts) {
        if (profile.headings() == 0) {
            return true;
        }
        if (above.size() < profile.headings()) {
            doubts.wrong(first + 1L, 0, "there are no headings above the readings", "the profile needs them");
            return false;
        }
        int line = above.getFirst();
        TimeColumns times = profile.times().columns();
        boolean same = same(line, times.date(), profile.times().headings().getFirst(), doubts);
        same = same(line, times.clock(), profile.times().headings().getLast(), doubts) && same;
        for (LoggedColumn column : profile.columns()) {
            same = same(line, column.number(), column.heading(), doubts) && same;
        }
        return same;
    }

    private boolean same(int line, int column, String needed, Doubts doubts) {
        List<String> cells = rows.get(line);
        String found = column <= cells.size() ? cells.get(column - 1).strip() : "";
        if (found.equals(needed)) {
            return true;
        }
        doubts.wrong(
                line + 1L,
                column,
                "the heading is \"" + found + "\", by the profile it is \"" + needed + "\"",
                "import the file without the profile to see what is in it");
        return false;
    }
}
