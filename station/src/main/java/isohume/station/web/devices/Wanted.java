// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import isohume.device.sheet.SheetError;
import isohume.station.convert.NotUnderstood;
import isohume.station.trial.Tryouts;
import jakarta.ws.rs.NotFoundException;
import java.time.Duration;

/** Which device somebody wants to try, and for how long. */
record Wanted(DeviceDescription description, Duration howLong) {
    private static final int LONGEST_TEXT = 50_000;
    private static final String SOURCE = "the description";

    /** A device of the bench, by its id. */
    static Wanted ofBench(Tryouts tryouts, String id, String seconds) {
        DeviceDescription found = tryouts.ofBench().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        return new Wanted(found, howLong(seconds));
    }

    /**
     * A device that was described.
     *
     * @param allowed whether addresses may be given here at all
     * @throws NotUnderstood with the place in the text, if it is no description
     */
    static Wanted described(String text, String seconds, boolean allowed) {
        if (!allowed) {
            throw new NotUnderstood(
                    "description",
                    "This program listens to other machines too, so nobody may name addresses to it. Devices of its"
                            + " bench can be tried here; for others use isohume device try on this machine.");
        }
        if (text.isBlank() || text.length() > LONGEST_TEXT) {
            throw new NotUnderstood(
                    "description",
                    text.isBlank()
                            ? "There is no description; begin with an example."
                            : "A description has at most " + LONGEST_TEXT + " characters, was " + text.length() + ".");
        }
        try {
            return new Wanted(Protocol.parse(text, SOURCE), howLong(seconds));
        } catch (SheetError wrong) {
            throw new NotUnderstood("description", String.valueOf(wrong.getMessage()));
        }
    }

    private static Duration howLong(String seconds) {
        long most = Tryouts.LONGEST.toSeconds();
        if (!seconds.matches("\\d{1,6}") || Long.parseLong(seconds) < 1 || Long.parseLong(seconds) > most) {
            throw new NotUnderstood("seconds", "A trial lasts from 1 to " + most + " seconds, was " + seconds + ".");
        }
        return Duration.ofSeconds(Long.parseLong(seconds));
    }
}
