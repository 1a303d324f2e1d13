// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;
import isohume.quantity.Quantity;
import isohume.uncertainty.Origin;

/** Texts of runs and their results. */
@MessageBundle("runs")
interface RunsTexts {
    @Message("Runs")
    String title();

    @Message("There are no runs yet. A run appears here as soon as it is started.")
    String none();

    @Message("Run")
    String run();

    @Message("Plan")
    String plan();

    @Message("Bench")
    String bench();

    @Message("Began")
    String began();

    @Message("Stands at")
    String phase();

    @Message("Points done")
    String done();

    @Message("{done} of {points}")
    String of(int done, int points);

    @Message("No point is recorded yet; results appear with the first one.")
    String no_results();

    @Message("{#when quantity}{#is RELATIVE_HUMIDITY}Relative humidity{#is TEMPERATURE}Temperature"
            + "{#is DEW_POINT}Dew point{#is PRESSURE}Pressure{#is DEPOSIT}Deposit{#is WATER_LEVEL}Water level{/when}")
    String quantity(Quantity quantity);

    @Message("Point")
    String point();

    @Message("Reference")
    String reference();

    @Message("Reading")
    String reading();

    @Message("Error")
    String error();

    @Message("U")
    String expanded();

    @Message("k")
    String k();

    @Message("Tolerance")
    String tolerance();

    @Message("Verdict")
    String verdict();

    @Message("Budget")
    String budget();

    @Message("Budget of point {point}")
    String budget_of(int point);

    @Message("Readings")
    String readings();

    @Message("Readings of point {point}")
    String readings_of(int point);

    @Message("Error is reading minus reference. U is the expanded uncertainty. ▲ approached from below, ▼ from above."
            + " Humidity by {formulation}, over liquid water.")
    String key(String formulation);

    @Message("Files")
    String files();

    @Message("Readings of all points (CSV)")
    String csv();

    @Message("Results with budgets (JSON)")
    String json();

    @Message("Every fact of this run")
    String all_facts();

    @Message("Stands against issuing a certificate")
    String objections();

    @Message("Hysteresis: descending minus ascending")
    String hysteresis();

    @Message("Close")
    String close();

    @Message("Input")
    String input();

    @Message("Estimate")
    String estimate();

    @Message("Distribution")
    String distribution();

    @Message("Standard uncertainty")
    String standard();

    @Message("Degrees of freedom")
    String freedom();

    @Message("Sensitivity")
    String sensitivity();

    @Message("Contribution")
    String contribution();

    @Message("Share")
    String share();

    @Message("Where it comes from")
    String origin();

    @Message("{#when origin}{#is MEASURED}measured{#is CERTIFICATE}certificate{#is ASSUMED}assumed{/when}")
    String origin_of(Origin origin);

    @Message("Combined standard uncertainty {combined} {unit}; effective degrees of freedom {freedom}; k = {k};"
            + " expanded uncertainty U = {expanded} {unit}.")
    String combined(String combined, String unit, String freedom, String k, String expanded);

    @Message("The Monte Carlo method ({trials} trials, seed {seed}) finds {low} to {high} {unit};"
            + "{#if agrees} it validates the budget:{#else} it does not validate the budget, so its interval is reported,"
            + " U = {reported} {unit} with k = {k}:{/if} the ends differ by {lower} and {upper} {unit}, allowed are"
            + " {tolerance} {unit}.{#if !settled} It had not settled to its tolerance.{/if}")
    String second_method(
            String trials,
            String seed,
            String low,
            String high,
            String unit,
            boolean agrees,
            String reported,
            String k,
            String lower,
            String upper,
            String tolerance,
            boolean settled);

    @Message("{count} pairs of readings, worth {effective} independent ones.")
    String pairs(int count, String effective);

    @Message("No.")
    String number();

    @Message("Time")
    String time();

    @Message("{#when key}{#is 'dew_point'}Dew point at the mirror{#is 'temperature'}Air temperature"
            + "{#is 'pressure'}Pressure in the chamber{#is 'mirror_pressure'}Pressure at the mirror{/when}")
    String column(String key);

    @Message("Frost point at the mirror")
    String frost();

    @Message("As shown, references not corrected. Deposit on the mirror: {deposit}, {by}.")
    String as_shown(String deposit, String by);

    @Message("ice")
    String ice();

    @Message("liquid water")
    String water();

    @Message("Facts")
    String facts();

    @Message("In the order in which they were written; nothing here can be changed.")
    String facts_what();

    @Message("Kind")
    String kind();

    @Message("What it says")
    String told();

    @Message("Hash")
    String hash();

    @Message("Earlier")
    String earlier();

    @Message("Later")
    String later();
}
