// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.quantity.Phase;
import isohume.result.Item;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The section {@code recorded} of a plan: which files have the readings of a job that was done without a connection. */
final class RecordedSheet {
    private RecordedSheet() {}

    static Recorded read(Sheet sheet, List<Item> items) {
        Map<String, Recorded.Source> instruments = new LinkedHashMap<>();
        Map<String, Clock> clocks = new LinkedHashMap<>();
        for (Sheet instrument : sheet.list("instruments")) {
            String id = instrument.text("id");
            if (items.stream().noneMatch(item -> item.id().equals(id))) {
                throw instrument.wrong("id", "the plan has no instrument " + id, "name one of its instruments");
            }
            if (instruments.put(id, source(instrument)) != null) {
                throw instrument.wrong("id", "there is a file of " + id + " already", "give each instrument one file");
            }
            if (instrument.has("clock")) {
                clocks.put(id, clock(instrument));
            }
            instrument.refuseOthers();
        }
        Sheet reference = sheet.section("reference");
        Recorded recorded = new Recorded(source(reference), instruments, clocks, deposit(sheet));
        reference.refuseOthers();
        sheet.refuseOthers();
        return recorded;
    }

    private static Recorded.Source source(Sheet sheet) {
        Optional<String> profile = sheet.has("profile") ? Optional.of(sheet.text("profile")) : Optional.empty();
        if (profile.isPresent() && !profile.get().matches(".*\\.ya?ml")) {
            throw sheet.wrong("profile", "the name of a profile, which ends with .yaml, is needed here");
        }
        return new Recorded.Source(sheet.text("file"), profile);
    }

    private static Clock clock(Sheet sheet) {
        try {
            return Clock.read(sheet.text("clock"));
        } catch (IllegalArgumentException unfit) {
            throw sheet.wrong(
                    "clock",
                    "same, same±30 (in seconds) or two moments as LOGGER/REFERENCE,LOGGER/REFERENCE are needed here");
        }
    }

    private static Optional<Phase> deposit(Sheet sheet) {
        if (!sheet.has("deposit")) {
            return Optional.empty();
        }
        return Optional.of(sheet.oneOf("deposit", List.of("water", "ice")).equals("ice") ? Phase.ICE : Phase.WATER);
    }
}
