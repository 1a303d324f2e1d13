// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Job;
import isohume.result.Prediction;
import isohume.result.Specification;
import isohume.run.Plan;
import isohume.run.PlanSheet;
import isohume.run.Roles;
import isohume.run.RunFact;
import isohume.run.Targets;
import isohume.run.entry.DisplayedChannel;
import isohume.run.order.Constraints;
import isohume.run.reach.Attainment;
import isohume.run.reach.Range;
import isohume.run.reach.Reach;
import isohume.run.watch.Bounds;
import isohume.run.watch.Policies;
import isohume.run.watch.WatchSheet;
import isohume.station.notice.Hook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Everything written down before the work, read and checked.
 *
 * @param devices names of the device descriptions: the chamber's first, then references and instruments under test;
 *     empty when the readings come from elsewhere
 * @param displays channels of instruments under test that a person reads; the roles do not name them
 * @param depositBy who decided on the phase of the mirror's deposit, for readings that come from elsewhere
 * @param recorded the files with the readings, where the plan names them
 * @param capacity what the bench is capable of
 * @param bounds from where on something on the bench counts as a fault
 * @param policies what is done about faults: what the plan says, else what its bench says
 * @param hooks who is told of what happens to a run
 * @param record the documents themselves, to be kept with the run
 */
public record Worksheet(
        Job job,
        Plan plan,
        Roles roles,
        List<String> devices,
        List<DisplayedChannel> displays,
        Optional<String> depositBy,
        Optional<Recorded> recorded,
        Capacity capacity,
        Ordering ordering,
        Bounds bounds,
        Policies policies,
        List<Hook> hooks,
        String record) {
    /**
     * What the plan says about the order of its points.
     *
     * @param stated numbers of the points whose direction is written down
     */
    public record Ordering(Constraints constraints, Set<Integer> stated) {
        public Ordering {
            stated = Set.copyOf(stated);
        }
    }

    public Worksheet {
        devices = List.copyOf(devices);
        displays = List.copyOf(displays);
        hooks = List.copyOf(hooks);
    }

    /** A plan and what it names, from its folder. */
    public static Worksheet read(Path plan) {
        return read(plan, true);
    }

    /** As {@link #read(Path)}, for somebody who looks at it: points may be beyond the bench's reach. */
    public static Worksheet draft(Path plan) {
        return read(plan, false);
    }

    private static Worksheet read(Path plan, boolean reachable) {
        Path folder = plan.toAbsolutePath().getParent();
        Path name = plan.getFileName();
        if (folder == null || name == null) {
            throw new IllegalArgumentException(plan + " is a folder; name the plan's file");
        }
        return read(Texts.in(folder), name.toString(), reachable);
    }

    /** A plan and what it names. */
    public static Worksheet read(Texts texts, String planName) {
        return read(texts, planName, true);
    }

    /** As {@link #read(Texts, String)}, with points that may be beyond the bench's reach. */
    public static Worksheet draft(Texts texts, String planName) {
        return read(texts, planName, false);
    }

    private static Worksheet read(Texts texts, String planName, boolean reachable) {
        Kept kept = new Kept(texts);
        Sheet plan = kept.sheet(planName);
        BenchSheet bench = new BenchSheet(kept.sheet(plan.text("bench")));
        Sheet order = plan.section("job");
        Formulation formulation = order.oneOfOr("formulation", Formulation.class, Formulation.SONNTAG_1990);
        PlanSheet form = reachable
                ? new PlanSheet(new Attainment(bench.reach(), MoistAir.by(formulation)))
                : PlanSheet.ofAnyReach();
        Plan points = form.read(plan);
        Ordering ordering = new Ordering(OrderSheet.read(plan.optional("order")), PlanSheet.statedDirections(plan));
        List<Item> items = new ArrayList<>();
        List<Range> ranges = new ArrayList<>();
        List<String> devices = new ArrayList<>(bench.devices());
        List<DisplayedChannel> displays = new ArrayList<>();
        for (Sheet item : plan.list("instruments")) {
            items.add(ItemSheet.read(item));
            ranges.addAll(ItemSheet.ranges(item));
            displays.addAll(DisplaySheet.read(item));
            if (item.has("device")) {
                devices.add(item.text("device"));
            }
            item.refuseOthers();
        }
        Policies policies = bench.policies().with(WatchSheet.policies(plan.optional("faults")));
        Optional<Recorded> recorded = plan.optional("recorded").map(section -> RecordedSheet.read(section, items));
        plan.refuseOthers();
        refuseTwice(plan, items);
        Optional<String> depositBy = order.has("deposit-by") ? Optional.of(order.text("deposit-by")) : Optional.empty();
        Job job = job(order, formulation, bench, items);
        Capacity capacity = bench.capacity();
        return new Worksheet(
                job,
                points,
                bench.roles(withoutDisplays(judged(items), displays)),
                devices,
                displays,
                depositBy,
                recorded,
                capacity.with(capacity.reach().and(ranges)),
                ordering,
                bench.bounds(),
                policies,
                bench.hooks(),
                kept.record());
    }

    /** The same with the bench's streams as they were observed. */
    public Worksheet now(Optional<DewPoint> dryFloor, Optional<DewPoint> wetCeiling) {
        Reach reach = capacity.reach();
        Capacity present = capacity.with(reach.with(reach.streams().observed(dryFloor, wetCeiling)));
        return new Worksheet(
                job, plan, roles, devices, displays, depositBy, recorded, present, ordering, bounds, policies, hooks,
                record);
    }

    private static Job job(Sheet order, Formulation formulation, BenchSheet bench, List<Item> items) {
        Job job = new Job(
                order.text("number"),
                party(order.section("laboratory")),
                party(order.section("customer")),
                order.text("place"),
                order.text("method"),
                order.text("operator"),
                formulation,
                order.oneOf("decision", Job.Decision.class),
                bench.title(),
                bench.references(),
                bench.characterisation(),
                items);
        order.refuseOthers();
        return job;
    }

    private static Job.Party party(Sheet sheet) {
        Job.Party party = new Job.Party(sheet.text("name"), sheet.texts("address"));
        sheet.refuseOthers();
        return party;
    }

    /** Channels that a run waits for; a dew point that is read is recorded beside them. */
    private static List<String> judged(List<Item> items) {
        return items.stream()
                .flatMap(item -> item.read().stream()
                        .filter(c -> c.quantity() != Quantity.DEW_POINT)
                        .map(c -> item.key(c.quantity())))
                .toList();
    }

    /** Every channel of the instruments under test that is read and not derived. */
    public List<String> readChannels() {
        return job.items().stream()
                .flatMap(item -> item.read().stream().map(c -> item.key(c.quantity())))
                .toList();
    }

    private static List<String> withoutDisplays(List<String> channels, List<DisplayedChannel> displays) {
        List<String> read = displays.stream().map(DisplayedChannel::id).toList();
        return channels.stream().filter(id -> !read.contains(id)).toList();
    }

    private static void refuseTwice(Sheet plan, List<Item> items) {
        List<String> ids =
                items.stream().map(i -> i.id().toLowerCase(Locale.ROOT)).toList();
        for (String id : ids) {
            if (ids.indexOf(id) != ids.lastIndexOf(id)) {
                throw plan.wrong("instruments", "two instruments are called " + id, "give each its own id");
            }
        }
    }

    /** The first fact of a run of this worksheet. */
    public RunFact.Started started(String operator, String program) {
        return new RunFact.Started(
                plan, job.benchTitle(), roles, job.formulation(), operator, program, record, targets(), displays);
    }

    /** What each result is to have: the uncertainty that is predicted; none of an item where that cannot be done. */
    private Targets targets() {
        Map<String, List<Double>> byChannel = new TreeMap<>();
        for (Item item : job.items()) {
            for (Specification channel : item.channels()) {
                predicted(item, channel).ifPresent(points -> byChannel.put(item.key(channel.quantity()), points));
            }
        }
        return new Targets(byChannel);
    }

    private Optional<List<Double>> predicted(Item item, Specification channel) {
        try {
            List<Double> points = plan.points().stream()
                    .flatMap(point -> Prediction.of(job, item, channel, point).stream())
                    .map(Prediction::expanded)
                    .toList();
            return points.isEmpty() ? Optional.empty() : Optional.of(points);
        } catch (IllegalArgumentException notCovered) {
            return Optional.empty(); // the evaluation will say so; until then the usual target is aimed at
        }
    }

    /** The documents themselves by their names, the plan's first. */
    public Map<String, String> documents() {
        return Kept.documents(record);
    }

    /** The worksheet that a run was begun with, from the record that was kept with it. */
    public static Worksheet keptIn(String record) {
        return Kept.read(record);
    }
}
