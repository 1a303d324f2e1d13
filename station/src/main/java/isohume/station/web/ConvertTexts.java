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
            + " are figures of formulas and not results of a calibration. Write 12.03±0.1 for an uncertainty, U at"
            + " k = 2; what the formulas may be wrong by comes on top of it.")
    String basis(String title);

    @Message("The same as data")
    String as_data();

    @Message("U (k = 2)")
    String uncertainty();

    @Message("Not given here")
    String left_out();

    @Message("{#when measure}{#is RELATIVE_HUMIDITY}Relative humidity{#is RELATIVE_HUMIDITY_OVER_ICE}Relative humidity"
            + " over ice{#is DEW_POINT}Dew point (over water){#is FROST_POINT}Frost point (over ice)"
            + "{#is WET_BULB}Wet bulb temperature{#is VAPOUR_PRESSURE}Vapour pressure"
            + "{#is MIXING_RATIO}Mixing ratio (water per dry air){#is SPECIFIC_HUMIDITY}Specific humidity (water per"
            + " moist air){#is ABSOLUTE_HUMIDITY}Absolute humidity{#is VOLUME_FRACTION}Volume fraction (of moist air)"
            + "{#is VOLUME_RATIO}Volume ratio (to dry air){#is ENTHALPY}Enthalpy (per dry air){#is DENSITY}Density"
            + "{#is SATURATION_PRESSURE}Saturation pressure of pure water"
            + "{#is ENHANCEMENT_FACTOR}Enhancement factor{/when}")
    String measure(Measure measure);
}
