// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

/** What was done, what the words mean, and what U is (ISO/IEC 17025:2017, 7.8.2.1 f and n, 7.8.4.1 a). */
final class MethodSection {
    private final Certificate certificate;

    MethodSection(Certificate certificate) {
        this.certificate = certificate;
    }

    void write(Markup to) {
        to.element("h2", "Method");
        to.element(
                "p",
                "The instrument was compared with the references in the air of the chamber, at rest at each point,"
                        + " according to procedure " + certificate.job().method()
                        + ". Reference values are the conditions that"
                        + " were measured, not those that were set. Error is reading minus reference.");
        to.element(
                "p",
                "Relative humidity is defined over liquid water at all temperatures and computed from dew or frost"
                        + " point, air temperature and pressures with the formulation "
                        + certificate.job().formulation().title() + ". Temperatures are on ITS-90.");
        to.element("h2", "Uncertainty");
        to.sentence(
                "p",
                "U is the expanded uncertainty of the error: the standard uncertainty multiplied by the coverage factor"
                        + " k that is given with it, so that the interval covers about 95" + Figures.THIN
                        + "% of the values that can reasonably be attributed to the error. It was evaluated according"
                        + " to the Guide to the expression of uncertainty in measurement (GUM, JCGM 100:2008) and"
                        + " includes the instrument\u2019s resolution and its scatter during the readings, not its"
                        + " behaviour over time. U is given with two significant digits and the values to the same"
                        + " place; each figure is rounded by itself.");
        to.sentence("p", SecondMethod.sentence(certificate));
    }
}
