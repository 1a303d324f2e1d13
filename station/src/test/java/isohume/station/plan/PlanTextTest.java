// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlanTextTest {
    private static final Direction UP = Direction.ASCENDING;
    private static final Direction DOWN = Direction.DESCENDING;

    @Test
    void only_the_points_change_and_comments_stay() {
        String before = """
                plan: A plan
                points:      # in order
                  # first the cold ones
                  - {temperature: 10, humidity: [20]}

                # rules of ours
                rules: {readings: 5}
                """;
        assertEquals(
                """
                plan: A plan
                points: # in order
                  # first the cold ones
                  - {temperature: 23.5, humidity: [20, 50, 20]}

                # rules of ours
                rules: {readings: 5}
                """,
                PlanText.with(
                        before,
                        List.of(point(1, 23.5, 20, UP), point(2, 23.5, 50, UP), point(3, 23.5, 20, DOWN)),
                        Set.of()));
    }

    @Test
    void a_list_at_the_margin_is_replaced_whole() {
        assertEquals(
                "points:\n  - {temperature: 10, humidity: [33.3]}\nplan: x\n",
                PlanText.with(
                        "points:\n- temperature: 5\n  humidity: [1]\n- temperature: 6\n  humidity:\n  - 2\nplan: x\n",
                        List.of(point(1, 10, 33.3, UP)),
                        Set.of()));
    }

    @Test
    void a_direction_is_written_where_the_order_does_not_say_it_or_the_plan_did() {
        assertEquals(
                "points:\n  - {temperature: 10, humidity: [50], direction: descending}\n",
                PlanText.with("points:\n  - x\n", List.of(point(1, 10, 50, DOWN)), Set.of()));
        assertEquals(
                "points:\n  - {temperature: 10, humidity: [20, 50], direction: ascending}\n",
                PlanText.with("points:\n  - x\n", List.of(point(1, 10, 20, UP), point(2, 10, 50, UP)), Set.of(2)));
    }

    @Test
    void a_document_on_one_line_is_refused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> PlanText.with("{plan: x, points: []}", List.of(point(1, 10, 50, UP)), Set.of())
                        .length());
    }

    private static Point point(int number, double celsius, double percent, Direction direction) {
        return new Point(number, Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent), direction);
    }
}
