// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.Setpoint;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.result.Prediction;
import isohume.run.order.Expected;
import isohume.run.order.Sequence;
import isohume.run.reach.Demand;
import isohume.run.reach.Outcome;
import isohume.run.reach.WayPoint;
import isohume.station.plan.Prospect.Ahead;
import java.util.Locale;

/** A prospect and a rearranged plan as JSON; all digits, with the units beside. */
public final class PlanJson {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private PlanJson() {}

    /** What a plan takes. */
    public static ObjectNode prospect(Prospect prospect) {
        ObjectNode node = JSON.createObjectNode();
        node.put("plan", prospect.worksheet().plan().title());
        node.put("bench", prospect.worksheet().job().benchTitle());
        units(node.putObject("units"));
        ArrayNode points = node.putArray("points");
        prospect.points().forEach(ahead -> point(points.addObject(), ahead));
        node.put("reachable", prospect.reachable());
        expected(node.putObject("whole"), prospect.whole());
        node.put("learned_from_points", prospect.lessons());
        Upkeep upkeep = Upkeep.of(prospect);
        ObjectNode use = node.putObject("use");
        upkeep.lines().forEach(line -> {
            ObjectNode one = use.putObject(line.key()).put("needed", line.needed());
            line.left().ifPresent(left -> one.put("left", left));
            one.put("lasts", line.lasts().name().toLowerCase(Locale.ROOT));
        });
        use.put("flow_stated", upkeep.flowStated());
        return node;
    }

    private static void units(ObjectNode units) {
        units.put("temperature", "°C").put("relative_humidity", "% RH").put("dew_point", "°C");
        units.put("air_margin", "K").put("surface_margin", "K").put("line_margin", "K");
        units.put("minutes", "min").put("water", "g").put("drying_agent", "g");
    }

    private static void point(ObjectNode node, Ahead ahead) {
        condition(node, ahead.point());
        switch (ahead.assessment().outcome()) {
            case Outcome.Reachable yes -> node.put("reach", "reachable");
            case Outcome.Marginal near -> {
                ArrayNode why = node.put("reach", "marginal").putArray("why");
                near.why().forEach(why::add);
            }
            case Outcome.NotReachable no -> {
                node.put("reach", "not_reachable").put("limit", no.limit().key());
                node.putArray("why").add(no.why());
                no.nearest().ifPresent(nearest -> condition(node.putObject("nearest"), nearest));
            }
        }
        ahead.assessment().demand().ifPresent(demand -> demand(node, demand));
        ArrayNode way = node.putArray("way_points");
        for (WayPoint point : ahead.way()) {
            condition(way.addObject().put("for", point.aim().words()), point.target());
        }
        expected(node.putObject("approach"), ahead.approach());
        expected(node.putObject("stay"), ahead.stay());
        ArrayNode predictions = node.putArray("predictions");
        ahead.predictions().forEach(p -> prediction(predictions.addObject(), p));
        ahead.notPredicted().ifPresent(why -> node.put("not_predicted", why));
    }

    private static void prediction(ObjectNode node, Prediction prediction) {
        node.put("instrument", prediction.instrument())
                .put("quantity", prediction.quantity().key())
                .put("unit", prediction.quantity().differenceUnit())
                .put("expanded", prediction.expanded())
                .put("tolerance", prediction.tolerance())
                .put("pass_possible", prediction.passPossible());
    }

    private static void demand(ObjectNode node, Demand demand) {
        node.put("dew_point", demand.point().celsius())
                .put("deposit", demand.point().deposit() == Phase.ICE ? "ice" : "water")
                .put("wet_share", demand.wetShare())
                .put("air_margin", demand.air())
                .put("surface_margin", demand.surface())
                .put("line_margin", demand.line());
    }

    private static void condition(ObjectNode node, Setpoint at) {
        node.put("temperature", at.temperature().celsius())
                .put("relative_humidity", at.humidity().percent());
    }

    private static void condition(ObjectNode node, Point point) {
        node.put("point", point.number());
        condition(node, new Setpoint(point.temperature(), point.humidity()));
        node.put("direction", point.direction().key());
    }

    private static void expected(ObjectNode node, Expected expected) {
        node.put("minutes", expected.minutes())
                .put("spread", expected.spread())
                .put("low", expected.low())
                .put("high", expected.high());
    }

    /** A plan in its own order and in the one that takes least. */
    public static ObjectNode rearranged(Rearranged rearranged) {
        ObjectNode node = JSON.createObjectNode();
        node.put("plan", rearranged.before().worksheet().plan().title());
        units(node.putObject("units"));
        node.put("learned_from_points", rearranged.before().lessons());
        sequence(node.putObject("before"), rearranged.given());
        sequence(node.putObject("after"), rearranged.shortest());
        rearranged.relaxed().ifPresent(r -> sequence(node.putObject("wet_last_at_temperature"), r));
        return node;
    }

    private static void sequence(ObjectNode node, Sequence sequence) {
        expected(node.putObject("whole"), sequence.expected());
        if (sequence.bound() > 0) {
            node.put("bound", sequence.bound()).put("gap", sequence.gap()).put("exact", sequence.exact());
        }
        sequence.broken().ifPresent(broken -> node.put("breaks", broken));
        ArrayNode points = node.putArray("points");
        for (int i = 0; i < sequence.points().size(); i++) {
            ObjectNode point = points.addObject();
            condition(point, sequence.points().get(i));
            point.put("was", sequence.were().get(i));
        }
    }
}
