// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Texts of plans and their editor. */
@MessageBundle("plans")
interface PlansTexts {
    @Message("Plans")
    String title();

    @Message(
            "There are no plans yet. Start the program with one (serve --plan), or put one into the folder plans of the"
                    + " data folder, with its bench beside it.")
    String none();

    @Message("Plan")
    String plan();

    @Message("Bench")
    String bench();

    @Message("Points")
    String points();

    @Message("File")
    String file();

    @Message("on the bench now")
    String loaded();

    @Message("This cannot be read")
    String unreadable();

    @Message("Reach map")
    String map();

    @Message("Reach map: temperature across, humidity up. Open paper can be reached, hatched paper cannot. Points are"
            + " numbered in their order; the table has the same points as figures.")
    String map_what();

    @Message(
            "Drag a point, or tap the paper to add one. With the keyboard: arrow keys move a point, Delete removes it.")
    String hint();

    @Message(
            "Dotted: near an edge (a stream under 3 %, or a surface within 1 K of the dew point); it can be reached, but"
                    + " takes care.")
    String dotted();

    @Message("Also hatched: {reasons}")
    String also(String reasons);

    @Message("relative humidity")
    String axis_humidity();

    @Message("dew point")
    String axis_dew();

    @Message("Axis")
    String axis();

    @Message("Check")
    String check();

    @Message("Add a point")
    String add();

    @Message("Undo")
    String undo();

    @Message("Put in the best order")
    String order();

    @Message("Earlier")
    String earlier();

    @Message("Remove")
    String remove();

    @Message("Temperature of point {number}, °C")
    String temperature_of(int number);

    @Message("Relative humidity of point {number}, % RH")
    String humidity_of(int number);

    @Message("Direction of point {number}")
    String direction_of(int number);

    @Message("Point {number} earlier")
    String earlier_of(int number);

    @Message("Remove point {number}")
    String remove_of(int number);

    @Message("Direction")
    String approached();

    @Message("by order")
    String by_order();

    @Message("up")
    String up();

    @Message("down")
    String down();

    @Message("Keep as a new plan")
    String keep();

    @Message("Title of the new plan")
    String new_title();

    @Message("Kept as {file}. Nothing else was changed; the plan that is on the bench stays the one that it was.")
    String kept(String file);

    @Message("As data")
    String as_data();
}
