// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Texts of the Import pages. */
@MessageBundle("imports")
interface ImportTexts {
    @Message("Import")
    String title();

    @Message(
            "Files that loggers and recorders exported. What a file has in it is recognised, and what it leaves open is"
                    + " asked; nothing is guessed. The file itself is kept untouched, with its hash.")
    String lead();

    @Message("Exported file")
    String file();

    @Message("Look at it")
    String look();

    @Message("This station keeps no files: it was started without a data folder.")
    String none();

    @Message("Imported before")
    String before();

    @Message("File")
    String name();

    @Message("First reading")
    String first();

    @Message("Last reading")
    String last();

    @Message("Rows")
    String rows();

    @Message("By")
    String by();

    @Message("Understood")
    String understood();

    @Message("In doubt")
    String in_doubt();

    @Message("Cannot be read as it is")
    String refused();

    @Message("Questions")
    String questions();

    @Message("Another answer")
    String other();

    @Message("Answer")
    String answer();

    @Message("Where it is broken")
    String broken();

    @Message("Line")
    String line();

    @Message("Cell")
    String cell();

    @Message("What was found")
    String what();

    @Message("What to do")
    String remedy();

    @Message("The file as a whole")
    String whole();

    @Message("What was found along the way")
    String found();

    @Message("Columns that are used")
    String columns();

    @Message("Heading")
    String heading();

    @Message("Read as")
    String read_as();

    @Message("Unit")
    String unit();

    @Message("Least")
    String least();

    @Message("Greatest")
    String greatest();

    @Message("Gaps")
    String gaps();

    @Message("{rows} rows, every {interval} s, by the logger's clock from {first} to {last}")
    String extent(int rows, double interval, String first, String last);

    @Message("The first rows")
    String preview();

    @Message("Time")
    String time();

    @Message("Your name")
    String operator();

    @Message("Keep the file and how it is read")
    String keep();

    @Message("Save the profile")
    String profile();

    @Message("Nothing was kept. Mend the file or export it again, then")
    String nothing_kept();

    @Message("choose another file")
    String again();

    @Message("Clocks")
    String clocks();

    @Message("Reference to compare with")
    String reference();

    @Message("Lay it over the reference")
    String lay();

    @Message("The logger's clock was ahead by {offset}. The line of the logger is moved by that much.")
    String offset(String offset);

    @Message("The clocks are not aligned")
    String not_aligned();

    @Message("The two belong together so: confirm")
    String confirm();

    @Message("time of the reference's clock, {zone}")
    String axis(String zone);

    @Message("Points of")
    String points_of();

    @Message("Show what would be used")
    String show_used();

    @Message("Readings of this record at the points of the plan")
    String used();

    @Message("Point")
    String point();

    @Message("Condition")
    String condition();

    @Message("Readings")
    String readings();

    @Message("too few for a result; hold it for at least 10 intervals of the logger")
    String few();

    @Message("Readings that are not used, and why")
    String not_used();

    @Message("Reference: solid. Logger: dashed.")
    String legend();

    @Message("The file is kept.")
    String kept();

    @Message("Align its clock")
    String align();
}
