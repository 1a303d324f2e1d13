// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import isohume.journal.Entry;
import isohume.result.Results;
import isohume.run.Order;
import isohume.station.plan.Shelf;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * An invented desk as it was when a run had only so many facts.
 *
 * @param later how long after the last of them it is looked at
 */
public record CutDesk(InventedDesk whole, long last, Duration later) implements Desk {
    @Override
    public String program() {
        return whole.program();
    }

    @Override
    public InstantSource clock() {
        return InstantSource.fixed(
                whole.facts(InventedDesk.RUN, last - 1, 1).get(0).at().plus(later));
    }

    @Override
    public ZoneId zone() {
        return whole.zone();
    }

    @Override
    public String remark() {
        return whole.remark();
    }

    @Override
    public Optional<String> current() {
        return whole.current();
    }

    @Override
    public List<Summary> runs() {
        return whole.runs();
    }

    @Override
    public List<Entry> facts(String run, long after, int most) {
        return whole.facts(run, after, (int) Math.max(0, Math.min(most, last - after)));
    }

    @Override
    public Optional<Results> results(String run) {
        return whole.results(run);
    }

    @Override
    public List<Document> documents(String run) {
        return whole.documents(run);
    }

    @Override
    public Optional<byte[]> document(String run, String name) {
        return whole.document(run, name);
    }

    @Override
    public Shelf plans() {
        return whole.plans();
    }

    @Override
    public Optional<String> ready() {
        return Optional.empty();
    }

    @Override
    public Told begin(String operator) {
        return new Told.Refused("No bench is connected.");
    }

    @Override
    public Told order(String run, Order order, String operator, String reason) {
        return whole.order(run, order, operator, reason);
    }
}
