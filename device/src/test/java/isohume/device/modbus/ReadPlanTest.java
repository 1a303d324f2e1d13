// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReadPlanTest {
    @Test
    void neighbours_and_near_neighbours_of_a_table_are_read_together() {
        assertEquals(List.of(input(0, 12)), ReadPlan.of(List.of(input(10, 2), input(0, 2), input(0, 1)), 8));
        assertEquals(List.of(input(0, 2), input(11, 1)), ReadPlan.of(List.of(input(11, 1), input(0, 2)), 8));
        assertEquals(List.of(input(0, 1), holding(1, 1)), ReadPlan.of(List.of(holding(1, 1), input(0, 1)), 8));
    }

    @Test
    void no_question_asks_for_more_than_125_registers() {
        assertEquals(List.of(input(0, 125)), ReadPlan.of(List.of(input(0, 120), input(123, 2)), 8));
        assertEquals(List.of(input(0, 120), input(124, 2)), ReadPlan.of(List.of(input(0, 120), input(124, 2)), 8));
    }

    private static Span input(int address, int count) {
        return new Span(Table.INPUT, address, count);
    }

    private static Span holding(int address, int count) {
        return new Span(Table.HOLDING, address, count);
    }
}
