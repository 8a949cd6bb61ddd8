package gudgeon.rebuild.book;

import gudgeon.rebuild.book.RunningIn.Stage;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/** Reads what a book says of the first start, of what is filled in and of running in, and tells ids that it does not have. */
final class CommissioningReader {
    private final Fields book;
    private final Structure structure;
    private final Faults faults;

    CommissioningReader(Fields book, Structure structure, Faults faults) {
        this.book = book;
        this.structure = structure;
        this.faults = faults;
    }

    Commissioning read() {
        List<Fluid> fluids =
                book.list("fluids", false).stream().map(this::fluid).toList();
        return new Commissioning(start(), fluids, runningIn(fluids));
    }

    private FirstStart start() {
        if (!book.has("start")) {
            return FirstStart.NOT_SAID;
        }
        Fields fields = book.block("start", "");
        String step = fields.text("step");
        if (!step.isEmpty() && structure.step(step).isEmpty()) {
            unknown(new Reference(step, fields.where("step")), fields.at("step"), "step");
        }
        Fields proofs = fields.block("proved-by", "");
        Map<StartPoint, List<String>> provedBy = new EnumMap<>(StartPoint.class);
        for (StartPoint point : StartPoint.values()) {
            List<String> checks = checks(proofs, point.word());
            if (!checks.isEmpty()) {
                provedBy.put(point, checks);
            }
        }
        Set<StartPoint> without = EnumSet.noneOf(StartPoint.class);
        fields.words("without").forEach(word -> StartPoint.of(word).ifPresent(without::add));
        return new FirstStart(step, provedBy, without);
    }

    private Fluid fluid(Fields fields) {
        String id = fields.id();
        if (StartPoint.of(id).isPresent()) {
            faults.fault(
                    fields.where("id"),
                    fields.at("id"),
                    "'" + id + "' is a point of the list before the first start already.",
                    "Give the fluid another id, such as engine-oil.");
        }
        return new Fluid(
                id,
                fields.text("name"),
                fields.text("amount"),
                fields.text("grade"),
                fields.text("at"),
                checks(fields, "proved-by"),
                fields.text("note"));
    }

    private Optional<RunningIn> runningIn(List<Fluid> fluids) {
        if (!book.has("running-in")) {
            return Optional.empty();
        }
        Fields fields = book.block("running-in", "");
        List<Stage> stages = fields.list("stages", false).stream()
                .map(stage -> stage(stage, fluids))
                .toList();
        if (stages.isEmpty()) {
            faults.fault(
                    fields.where(),
                    "running-in",
                    "The scheme of running in has no stages.",
                    "Write its stages, or leave the whole block out.");
        }
        return Optional.of(new RunningIn(fields.text("source"), stages));
    }

    private Stage stage(Fields fields, List<Fluid> fluids) {
        if (fields.has("most-rpm") && fields.has("piston-speed")) {
            faults.fault(
                    fields.where("piston-speed"),
                    fields.at("piston-speed"),
                    "The stage has an engine speed and a mean piston speed.",
                    "Write one of them; the other follows from the stroke.");
        }
        Predicate<String> known = id -> structure.step(id).isPresent()
                || structure.check(id).isPresent()
                || structure.joint(id).isPresent()
                || fluids.stream().anyMatch(fluid -> fluid.id().equals(id));
        OptionalDouble speed = fields.optionalSize("piston-speed").stream()
                .mapToDouble(Size::value)
                .findFirst();
        return new Stage(
                fields.id(),
                fields.text("name"),
                fields.whole("minutes").orElse(1),
                fields.whole("heats").orElse(0),
                fields.whole("km"),
                fields.text("load"),
                fields.whole("most-rpm"),
                speed,
                fields.texts("do"),
                known(fields, "then", known, "step, check, joint or fluid"));
    }

    private List<String> checks(Fields fields, String key) {
        return known(fields, key, id -> structure.check(id).isPresent(), "check");
    }

    private List<String> known(Fields fields, String key, Predicate<String> has, String kind) {
        List<Reference> named = fields.references(key);
        named.stream().filter(one -> !has.test(one.id())).forEach(one -> unknown(one, fields.at(key), kind));
        return named.stream().map(Reference::id).toList();
    }

    private void unknown(Reference named, String path, String kind) {
        faults.fault(
                named.where(),
                path,
                "The book has no " + kind + " '" + Words.shortened(named.id()) + "'.",
                "Write the id of one that it has, or take this out.");
    }
}
