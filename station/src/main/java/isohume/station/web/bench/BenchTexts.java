// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;
import isohume.run.Order;

/** Texts of the bench. */
@MessageBundle("bench")
interface BenchTexts {
    @Message("Bench")
    String title();

    @Message("Nothing is on the bench")
    String empty();

    @Message("Ready to begin: {plan}")
    String ready(String plan);

    @Message("The bench is connected. Once begun, the chamber is set to the first point.")
    String ready_what();

    @Message("Operator")
    String ready_by();

    @Message("Begin")
    String begin();

    @Message("No run has been started here yet. As soon as one is, this page shows the air in the chamber, what the run"
            + " waits for and how long still.")
    String empty_what();

    @Message("To see a bench at work with nothing plugged in, end this program and start it with: ./isohume demo")
    String empty_next();

    @Message("Point {point} of {points}")
    String point(int point, int points);

    @Message("for {length}")
    String for_length(String length);

    @Message("{#when key}{#is 'temperature'}Air temperature{#is 'humidity'}Relative humidity{#is 'dew'}Dew point"
            + "{#is 'frost'}Frost point{/when}")
    String figure(String key);

    @Message("set {target}")
    String set(String target);

    @Message("read {time}")
    String read(String time);

    @Message("last read {time}; these figures are old")
    String old(String time);

    @Message("at the end, {time}")
    String at_end(String time);

    @Message("no reading: {why}")
    String missing(String why);

    @Message("This point: about {length} more")
    String this_point(String length);

    @Message("Plan: about {length} more, until {time}, give or take {spread}")
    String plan_left(String length, String time, String spread);

    @Message("How long this point still takes cannot be said yet.")
    String unknown();

    @Message("Points of the plan")
    String plan();

    @Message("{#when standing}{#is AHEAD}ahead{#is NOW}now{#is RECORDED}recorded{#is SKIPPED}skipped{/when}")
    String standing(BenchView.Standing standing);

    @Message("What is being waited for")
    String waiting();

    @Message("What is still moving")
    String wedge();

    @Message("Signal")
    String signal();

    @Message("Now")
    String now();

    @Message("Furthest from met")
    String criterion();

    @Message("limit {limit} {unit}")
    String limit_of(String limit, String unit);

    @Message("Still")
    String left();

    @Message("{#when kind}{#is 'band'}off the set point{#is 'spread'}scatter{#is 'drift'}drift"
            + "{#is 'to_come'}still to come{#is 'frozen'}frozen display{#is 'window'}more readings{/when}")
    String kind(String kind);

    @Message("settled")
    String settled();

    @Message("What went wrong")
    String happenings();

    @Message("since {from}")
    String since(String from);

    @Message("{from} to {until}, over")
    String from_until(String from, String until);

    @Message("Kept: {whole} of {points} points are recorded. No reading that a fault may have touched is in them.")
    String kept(int whole, int points);

    @Message("Strip chart")
    String chart();

    @Message("Last hour")
    String hour();

    @Message("Whole run")
    String whole();

    @Message("The strip chart needs scripts; its figures are under /api/runs.")
    String no_chart();

    @Message("{#when order}{#is HOLD}Hold{#is RESUME}Resume{#is SKIP}Skip this point{#is STOP}Stop"
            + "{#is ABANDON}Give up{/when}")
    String order(Order order);

    @Message("Skip…")
    String skip_open();

    @Message("Stop…")
    String stop_open();

    @Message("The point is left out of the results; the run goes on with the next one.")
    String skip_what();

    @Message("The chamber is brought to rest. What is recorded stays.")
    String stop_what();

    @Message("It can be resumed later, at this point")
    String stop_resumable();

    @Message("It is given up for good")
    String stop_for_good();

    @Message("Reason (may stay empty)")
    String reason();

    @Message("Asked: {order}. The run takes it up at its next step.")
    String asked(String order);

    @Message("Orders to the run")
    String orders();

    @Message("No connection to the program. The figures are old; the run itself goes on.")
    String lost();

    @Message("Settled. Read the display and type what it shows:")
    String read_which();

    @Message("Type the readings")
    String read_type();

    @Message("Readings of displays")
    String entries();

    @Message("Back to the bench")
    String entries_back();

    @Message("Every instrument in this run is read by the program; nothing is to be typed.")
    String entries_none();

    @Message("Nothing is to be read now. The run is in {phase}; this page asks once the point has settled.")
    String entries_not_now(String phase);

    @Message("Point {point}")
    String entries_point(int point);

    @Message("Entry {next} of {of}")
    String entry_of(int next, int of);

    @Message("{standing} of {of}")
    String entries_of(int standing, int of);

    @Message("all there")
    String entries_complete();

    @Message("left out here")
    String entries_omitted();

    @Message("What the display shows, as {pattern}")
    String entry_field(String pattern);

    @Message("Read by")
    String entry_by();

    @Message("Enter")
    String entry_enter();

    @Message("delete")
    String entry_delete();

    @Message("sign")
    String entry_sign();

    @Message("Keys")
    String entry_keys();

    @Message("The display is renewed in {seconds} s.")
    String entry_wait(double seconds);

    @Message("The display has been renewed: read it now.")
    String entry_read_now();

    @Message("Not taken")
    String entry_refused();

    @Message("Is that right?")
    String entry_question();

    @Message("It shows {text}; take it")
    String entry_confirm(String text);

    @Message("It shows {text}")
    String entry_instead(String text);

    @Message("Photo of the display, JPEG or PNG, at most 8 MB")
    String entry_photo();

    @Message("Attach a photo…")
    String entry_photo_open();

    @Message("{name} is attached")
    String entry_photo_kept(String name);

    @Message("photo")
    String entry_photo_link();

    @Message("Entries so far")
    String entries_so_far();

    @Message("Take back")
    String entry_undo();

    @Message("taken back: {why}")
    String entry_withdrawn(String why);

    @Message("Leave it out at this point…")
    String entry_leave_open();

    @Message("It gets no result at this point. The entries that are there stay in the record.")
    String entry_leave_what();

    @Message("Reason")
    String entry_leave_reason();

    @Message("Leave it out")
    String entry_leave();

    @Message(
            "Read through the window. Hands, breath and an open door warm and wet the air; keep the door shut and stand"
                    + " back. The reference is read at the moment of each entry.")
    String entries_care();

    @Message("Across the room")
    String wall();

    @Message("Devices")
    String devices();

    @Message("To see whether an instrument answers, try it:")
    String devices_what();

    @Message("Results")
    String results();

    @Message("Operator {operator}")
    String operator(String operator);
}
