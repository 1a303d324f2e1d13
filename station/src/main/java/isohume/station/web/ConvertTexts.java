// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;
import isohume.station.convert.Measure;

/** Texts of the Convert page. */
@MessageBundle("convert")
interface ConvertTexts {
    @Message("Convert")
    String title();

    @Message("From one measure of humidity to the others.")
    String lead();

    @Message("Air temperature")
    String temperature();

    @Message("What is known")
    String known();

    @Message("Its value")
    String value();

    @Message("Air pressure")
    String pressure();

    @Message("Formulas")
    String formulation();

    @Message("Dew point, °C (over water)")
    String dew_point();

    @Message("Frost point, °C (over ice)")
    String frost_point();

    @Message("Relative humidity, % RH")
    String relative_humidity();

    @Message("Convert")
    String go();

    @Message("Measures of this air")
    String answer();

    @Message("Quantity")
    String quantity();

    @Message("Value")
    String figure();

    @Message("Unit")
    String unit();

    @Message("By {title}; relative humidity is over liquid water at every temperature; temperatures on ITS-90. These"
            + " are figures of formulas: they carry no uncertainty and are not results of a calibration.")
    String basis(String title);

    @Message("The same as data")
    String as_data();

    @Message("{#when measure}{#is RELATIVE_HUMIDITY}Relative humidity{#is DEW_POINT}Dew point"
            + "{#is FROST_POINT}Frost point{#is VAPOUR_PRESSURE}Vapour pressure"
            + "{#is SATURATION_PRESSURE}Saturation pressure of pure water"
            + "{#is ENHANCEMENT_FACTOR}Enhancement factor{#is MIXING_RATIO}Mixing ratio (water per dry air)"
            + "{#is ABSOLUTE_HUMIDITY}Absolute humidity{/when}")
    String measure(Measure measure);
}
