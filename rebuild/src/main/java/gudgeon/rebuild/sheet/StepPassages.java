package gudgeon.rebuild.sheet;

import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.List;

/** What there is to say of a step, in the order in which a hand needs it. */
final class StepPassages {
    private final Step step;
    private final Structure structure;
    private final List<Passage> passages = new ArrayList<>();

    StepPassages(Step step, Structure structure) {
        this.step = step;
        this.structure = structure;
    }

    List<Passage> all() {
        add("tools", joined(step.tools()));
        add(
                "parts",
                step.fits().stream()
                        .flatMap(id -> structure.position(id).stream())
                        .map(StepPassages::part)
                        .toList());
        add("into", joined(step.into().stream().map(structure::name).toList()));
        add("how", step.instructions());
        add("oil", step.oil());
        add("grease", step.grease());
        add("sealant", step.sealant());
        add(
                "joint",
                step.tightens().stream()
                        .flatMap(id -> structure.joint(id).stream())
                        .map(StepPassages::joint)
                        .toList());
        add("covers", joined(step.covers().stream().map(structure::name).toList()));
        add("time", time());
        return passages;
    }

    private void add(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            passages.add(new Passage(heading, lines));
        }
    }

    private static List<String> joined(List<String> words) {
        return words.isEmpty() ? List.of() : List.of(String.join(", ", words));
    }

    private static String part(Position position) {
        String many = position.quantity() > 1 ? position.quantity() + " x " : "";
        String mark = position.mark().isEmpty() ? "" : "; " + position.mark();
        return many
                + position.name()
                + mark
                + (position.singleUse() ? "; always new" : "")
                + (position.critical() ? "; compare a copy first" : "");
    }

    private static String joint(Joint joint) {
        return joint.name()
                + (joint.order().isEmpty() ? "" : "; " + joint.order())
                + (joint.note().isEmpty() ? "" : "; " + joint.note());
    }

    private List<String> time() {
        List<String> time = new ArrayList<>();
        if (step.minutes() > 0) {
            time.add("about " + Amount.time(step.minutes()));
        }
        if (step.setMinutes() > 0) {
            time.add(Amount.time(step.setMinutes()) + " to set, dry or cool before work goes on here");
        }
        return joined(time);
    }
}
