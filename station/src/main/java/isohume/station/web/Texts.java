// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Texts of every page: the rail, the notices, the errors. */
@MessageBundle("say")
interface Texts {
    @Message("Bench")
    String bench();

    @Message("Plans")
    String plans();

    @Message("Runs")
    String runs();

    @Message("Import")
    String imports();

    @Message("Convert")
    String convert();

    @Message("Safety")
    String safety();

    @Message("Pages")
    String pages();

    @Message("Skip to the content")
    String skip_to_content();

    @Message("Before you open the chamber")
    String notice_title();

    @Message(
            "Let a safe stop finish: lamp off, heaters off. Touch no line, saturator or measuring head that may be hot."
                    + " Stay out of the beam of a UV-C lamp, keep your face out of the mist, and let a purged chamber air out.")
    String notice();

    @Message("What was kept")
    String kept();

    @Message("What to do next")
    String next();

    @Message("There is no page here")
    String no_page();

    @Message("Nothing in this program has the address {path}. It may have been mistyped, or belong to a run or an"
            + " instrument that this station does not hold.")
    String no_page_what(String path);

    @Message("Nothing was changed.")
    String nothing_changed();

    @Message("Start again from the bench or from the list of runs.")
    String no_page_next();

    @Message("This could not be understood")
    String wrong_input();

    @Message("Go back, correct it, and send it again.")
    String wrong_input_next();

    @Message("Something went wrong in this program")
    String trouble();

    @Message("The page could not be made, because of a fault in the program and not because of what you did.")
    String trouble_what();

    @Message("Every fact that a run has written is on disk; a run that is under way goes on without this page.")
    String trouble_kept();

    @Message("Load the page again. If it happens again, report it with the time {at} and the program's log.")
    String trouble_next(String at);

    @Message("This cannot be done now")
    String not_now();

    @Message("Look at the bench: it shows where the run stands and what it can be told.")
    String not_now_next();

    @Message("This was not allowed")
    String refused();

    @Message("Requests that change something are taken only from this program's own pages.")
    String refused_what();

    @Message("Open this program in the browser by its own address and do it from there.")
    String refused_next();
}
