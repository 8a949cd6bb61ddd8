package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Again;
import gudgeon.rebuild.fasten.Allocation;
import gudgeon.rebuild.fasten.Danger;
import gudgeon.rebuild.fasten.HoleChoice;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.HoleSizes;
import gudgeon.rebuild.fasten.HoleTorque;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.LengthSpan;
import gudgeon.rebuild.fasten.Order;
import gudgeon.rebuild.fasten.Pass;
import gudgeon.rebuild.fasten.Purchase;
import gudgeon.rebuild.fasten.StandProud;
import gudgeon.rebuild.fasten.Tightness;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Fasteners as JSON, described in docs/fasteners-json.md. Keys stay as they are; new ones may be added. */
final class FastenersJson {
    private FastenersJson() {}

    static String text(Build build, List<JointNow> joints, Allocation allocation) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put(
                "joints",
                joints.stream().map(joint -> joint(build, joint, allocation)).toList());
        json.put(
                "buy",
                allocation.purchases().stream().map(FastenersJson::purchase).toList());
        json.put("leftOver", allocation.leftOver());
        json.put(
                "dangers",
                allocation.dangers().stream().map(FastenersJson::danger).toList());
        return Json.text(json);
    }

    /** The name of a word of a list in data. */
    static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Map<String, @Nullable Object> span(LengthSpan span) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("leastMm", number(span.leastMm()));
        json.put("mostMm", number(span.mostMm()));
        json.put("standardMm", span.standard());
        json.put("reasons", span.reasons());
        return json;
    }

    private static @Nullable Object number(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static Map<String, @Nullable Object> joint(Build build, JointNow joint, Allocation allocation) {
        Order order = Order.of(joint);
        Tightness tightness = Tightness.of(joint);
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("joint", joint.id());
        json.put("name", joint.book().name());
        json.put("order", order.holes());
        json.put("orderFrom", key(order.source()));
        json.put("orderWhy", order.why());
        json.put("loosening", order.loosening());
        json.put("passes", tightness.passes().stream().map(FastenersJson::pass).toList());
        json.put("nextHole", tightness.next().map(Tightness.Next::hole).orElse(null));
        json.put("tight", tightness.isTight());
        json.put("state", tightness.sentence());
        json.put("standProud", StandProud.of(joint).sentence());
        json.put(
                "againDue",
                Again.of(build, joint).filter(Again::due).map(Again::sentence).orElse(null));
        json.put(
                "holes",
                joint.holes().stream()
                        .map(hole -> hole(joint, hole, allocation))
                        .toList());
        return json;
    }

    private static Map<String, @Nullable Object> pass(Pass pass) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("number", pass.number());
        json.put("share", pass.share());
        json.put("again", pass.again());
        json.put("had", pass.had());
        json.put("left", pass.left());
        return json;
    }

    private static Map<String, @Nullable Object> hole(JointNow joint, HoleNow hole, Allocation allocation) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("hole", hole.id());
        json.put("thread", hole.thread());
        json.put(
                "lengths",
                HoleSizes.of(hole).map(sizes -> span(LengthSpan.of(sizes))).orElse(null));
        json.put(
                "choice",
                allocation
                        .choice(joint.id(), hole.id())
                        .map(FastenersJson::choice)
                        .orElse(null));
        HoleTorque torque = HoleTorque.of(joint, hole);
        json.put("torqueNm", number(torque.wantedNm()));
        json.put("torqueComputed", torque.isComputed());
        json.put("torque", torque.sentences());
        json.put("pass", hole.pass());
        json.put("marked", hole.marked());
        return json;
    }

    private static Map<String, @Nullable Object> choice(HoleChoice choice) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("kind", choice.kind().orElse(null));
        json.put("verdict", key(choice.verdict()));
        json.put("recorded", choice.recorded());
        json.put("forced", choice.isForced());
        json.put("others", choice.others());
        json.put("buy", choice.isToBuy());
        json.put("sentence", choice.sentence());
        return json;
    }

    private static Map<String, @Nullable Object> purchase(Purchase purchase) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("thread", purchase.thread());
        json.put("lengthsMm", purchase.lengthsMm());
        json.put("holes", purchase.holes());
        json.put("sentence", purchase.sentence());
        return json;
    }

    private static Map<String, @Nullable Object> danger(Danger danger) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("kind", danger.kind());
        json.put("verdict", key(danger.verdict()));
        json.put("holes", danger.holes());
        json.put("sentence", danger.sentence());
        return json;
    }
}
