// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.line.Place;
import isohume.device.line.Transcript;
import isohume.device.sheet.Sheet;
import java.util.List;

/** The part of a description that says where its line leads: {@code tcp}, {@code serial} or {@code replay}. */
public final class LineSheet {
    private static final List<String> KINDS = List.of("tcp", "serial", "replay");

    private LineSheet() {}

    /** The place in the section {@code line}, which may have other keys for the caller to ask for. */
    public static Place place(Sheet line) {
        List<String> there = KINDS.stream().filter(line::has).toList();
        if (there.size() != 1) {
            throw line.wrongHere(
                    there.isEmpty() ? "the line leads nowhere" : "the line leads to " + String.join(" and ", there),
                    "one of " + String.join(", ", KINDS) + " is needed here");
        }
        Sheet section = line.section(there.getFirst());
        Place place = switch (there.getFirst()) {
            case "tcp" -> new Place.Tcp(Common.host(section), section.whole("port", 1, 65_535));
            case "serial" -> serial(section);
            default -> replay(section);
        };
        section.refuseOthers();
        return place;
    }

    private static Place serial(Sheet sheet) {
        String path = sheet.text("path");
        if (!path.matches("(/[A-Za-z0-9._:@+-]+)+|COM[0-9]{1,3}")) {
            throw sheet.wrong("path", "the port's whole name is needed here, such as /dev/ttyUSB0 or COM3");
        }
        return new Place.Serial(
                path,
                sheet.wholeOr("baud", 50, 4_000_000, 9600),
                sheet.wholeOr("data-bits", 7, 8, 8),
                sheet.oneOfOr("parity", Place.Parity.class, Place.Parity.NONE),
                sheet.wholeOr("stop-bits", 1, 2, 1));
    }

    private static Place replay(Sheet sheet) {
        String name = sheet.text("name");
        try {
            return new Place.Replay(name, Transcript.parse(sheet.text("bytes")));
        } catch (IllegalArgumentException e) {
            throw sheet.wrong("bytes", String.valueOf(e.getMessage()), "write the bytes as device try prints them");
        }
    }
}
