// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Quantity;
import isohume.result.Job.Decision;
import isohume.result.PointResult;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class ErrorPlotTest {
    private static final Decision RULE = Decision.GUARD_BAND_FOUR_ANSWERS;

    @Test
    void a_triangle_stands_for_every_point_upwards_when_ascending() throws Exception {
        List<PointResult> points = SampleJob.authorised().of(Quantity.RELATIVE_HUMIDITY);
        List<Element> triangles = all(parsed(ErrorPlot.svg(points, RULE)), "polygon").stream()
                .filter(e -> e.hasAttribute("stroke"))
                .toList();
        assertEquals(points.size() + 2, triangles.size()); // and two in the key
        long open = triangles.stream()
                .filter(e -> e.getAttribute("fill").equals("#FFFFFF"))
                .count();
        assertEquals(4 + 1, open);
    }

    @Test
    void axes_name_their_units_and_lines_their_temperatures() throws Exception {
        List<String> words =
                all(parsed(ErrorPlot.svg(SampleJob.authorised().of(Quantity.RELATIVE_HUMIDITY), RULE)), "text").stream()
                        .map(Element::getTextContent)
                        .toList();
        for (String expected : List.of(
                "Error, %\u00A0RH",
                "Reference, %\u00A0RH",
                "10\u202F\u00B0C",
                "23\u202F\u00B0C",
                "40\u202F\u00B0C",
                "ascending",
                "descending",
                "tolerance",
                "\u22121")) {
            assertTrue(words.contains(expected), expected + " in " + words);
        }
    }

    @Test
    void lines_of_different_temperatures_differ_without_colour() throws Exception {
        long dashes =
                all(parsed(ErrorPlot.svg(SampleJob.authorised().of(Quantity.RELATIVE_HUMIDITY), RULE)), "polyline")
                        .stream()
                        .filter(e -> e.getAttribute("stroke").equals("#4A58B8")
                                && e.getAttribute("stroke-width").equals("0.9"))
                        .map(e -> e.getAttribute("stroke-dasharray"))
                        .distinct()
                        .count();
        assertEquals(3, dashes);
    }

    @Test
    void without_a_decision_there_is_no_band() {
        List<PointResult> points =
                SampleJob.results(SampleJob.job(Decision.NONE, SampleJob.items()), SampleJob.points(1))
                        .of("A-1042")
                        .stream()
                        .filter(p -> p.quantity() == Quantity.TEMPERATURE)
                        .toList();
        assertFalse(ErrorPlot.svg(points, Decision.NONE).contains("tolerance"));
    }

    @Test
    void one_point_alone_can_be_shown() throws Exception {
        Document one = parsed(ErrorPlot.svg(
                SampleJob.authorised().of(Quantity.RELATIVE_HUMIDITY).subList(0, 1), RULE));
        assertTrue(all(one, "text").size() > 5);
    }

    @Test
    void two_quantities_in_one_plot_are_refused() {
        List<PointResult> both = SampleJob.authorised().points();
        assertThrows(IllegalArgumentException.class, () -> ErrorPlot.svg(both, RULE));
        assertThrows(IllegalArgumentException.class, () -> ErrorPlot.svg(List.of(), RULE));
    }

    @Test
    void ticks_are_round_and_cover_the_span() {
        long seed = 20260305;
        Random random = new Random(seed);
        for (int i = 0; i < 10_000; i++) {
            double low = random.nextGaussian() * Math.pow(10, random.nextInt(9) - 4);
            double high = low + Math.abs(random.nextGaussian()) * Math.pow(10, random.nextInt(9) - 4);
            Axis axis = Axis.covering(low, high, 9);
            String told = "seed " + seed + ": " + low + " to " + high + " gave " + axis;
            double slack = axis.step() * 1e-6;
            assertTrue(axis.low() <= low + slack && axis.high() >= high - slack, told);
            assertTrue(axis.ticks().size() <= 9 && axis.ticks().size() >= 2, told);
            double mantissa = axis.step() / Math.pow(10, Math.floor(Math.log10(axis.step()) + 1e-9));
            assertTrue(
                    IntStream.of(1, 2, 5, 10).anyMatch(m -> Math.abs(m - mantissa) < 1e-6), told + " step " + mantissa);
        }
    }

    @Test
    void neighbours_that_would_hide_each_other_are_moved_apart_and_others_stay() {
        double[] places = SideBySide.spread(new double[] {100, 10, 100, 100}, Integer::compare, 6);
        assertEquals(List.of(94.0, 10.0, 100.0, 106.0), boxed(places));
    }

    @Test
    void a_heap_does_not_reach_into_the_next() {
        double[] wanted = new double[40];
        for (int i = 20; i < 40; i++) {
            wanted[i] = 30;
        }
        double[] places = SideBySide.spread(wanted, Integer::compare, 7);
        double left = boxed(places).subList(0, 20).stream().max(Double::compare).orElseThrow();
        double right =
                boxed(places).subList(20, 40).stream().min(Double::compare).orElseThrow();
        assertTrue(left < right, left + " and " + right);
    }

    private static List<Double> boxed(double[] values) {
        List<Double> list = new ArrayList<>();
        for (double v : values) {
            list.add(v);
        }
        return list;
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> all(Document document, String name) {
        var nodes = document.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .toList();
    }
}
