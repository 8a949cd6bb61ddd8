package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact.Cleaned;
import gudgeon.rebuild.journal.Fact.FaultFound;
import gudgeon.rebuild.journal.Fact.TakenOff;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The fitter's logic of keeping and replacing, in its order: what can't be used twice, what is broken, what is measured out, what is
 * cheap and buried, what is dirty, what is not proved; only what is left over is used again. Common practice, no source.
 */
final class Judgement {
    /** Words of damage as a person writes them at strip-down. */
    private static final Pattern DAMAGE = Pattern.compile(
            "\\b(crack|broke|bent|bend|scor(e|ed|ing)|pitt|stripped|seiz|burn|perish|chip|rust|corrod|torn|missing|worn)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NO_DAMAGE =
            Pattern.compile("\\b(no|not|never|without)\\b[^.;,]*", Pattern.CASE_INSENSITIVE);

    /** What is proposed. */
    record Answer(Optional<Disposition> disposition, String what, List<String> reasons) {
        Answer(Disposition disposition, String what, List<String> reasons) {
            this(Optional.of(disposition), what, reasons);
        }
    }

    private final Build build;
    private final Buried buried;

    Judgement(Build build) {
        this.build = build;
        this.buried = new Buried(build);
    }

    Answer of(Position position, Part part) {
        if (part.spent() || (position.singleUse() && part.name().isEmpty())) {
            return new Answer(Disposition.REPLACE, "Fit a new one.", List.of("It can be used only once."));
        }
        if (!part.agrees()) {
            return new Answer(
                    Disposition.REPLACE,
                    "Send it back, or find out which of the two is right.",
                    List.of("Held against the old one and the book it does not agree: "
                            + String.join(", ", part.differing()) + "."));
        }
        Optional<String> damage = part.name().isEmpty() ? damage(position) : Optional.empty();
        if (damage.isPresent()) {
            return new Answer(
                    Disposition.REPLACE,
                    "Replace it, unless someone who does such work says that it can be repaired.",
                    List.of("Seen on it: '" + damage.get().strip() + "'."));
        }
        return measured(position, part, new Measured(build, position, part.name()));
    }

    private Answer measured(Position position, Part part, Measured measured) {
        if (!measured.out().isEmpty()) {
            return measured.isClearedByBoring()
                    ? new Answer(
                            Disposition.REPAIR,
                            "Have it bored to an oversize that cleans it up, by a machinist, with the new part in the hand"
                                    + " first.",
                            measured.out())
                    : new Answer(
                            Disposition.REPLACE,
                            "Replace it. If it can be repaired or had used, draw that as an option and compare.",
                            measured.out());
        }
        if (part.name().isEmpty()) {
            Optional<String> cheap = buried.cheap(position);
            if (cheap.isPresent()) {
                return new Answer(Disposition.REPLACE, "Fit a new one while it can be got at.", List.of(cheap.get()));
            }
            Optional<String> dirty = dirty(position);
            if (dirty.isPresent()) {
                List<String> reasons = new ArrayList<>(List.of(dirty.get()));
                reasons.addAll(measured.open());
                return new Answer(
                        Disposition.CLEAN,
                        reasons.size() > 1 ? "Clean it, then measure it." : "Clean it, then look at it in good light.",
                        reasons);
            }
        }
        if (!measured.open().isEmpty()) {
            return new Answer(Optional.empty(), "Measure before it is kept: unproven is not passed.", measured.open());
        }
        return kept(position, measured);
    }

    private Answer kept(Position position, Measured measured) {
        List<String> reasons = new ArrayList<>(measured.in());
        if (reasons.isEmpty()) {
            reasons.add("The book has no limits for it, and nothing bad was said of it. Look at it in good light.");
        }
        if (measured.isWorn()) {
            buried.weigh(position).ifPresent(reasons::add);
        }
        return new Answer(Disposition.USE_AGAIN, "Use it again.", reasons);
    }

    /** The last remark of damage that is not a denial of it. */
    private Optional<String> damage(Position position) {
        Stream<String> remarks = Stream.concat(
                build.told(TakenOff.class, position.id()).stream()
                        .map(told -> told.fact().remark()),
                build.told(FaultFound.class, position.id()).stream()
                        .filter(told -> build.openFaults().contains(told.number()))
                        .map(told -> told.fact().what()));
        return remarks.filter(Judgement::tellsOfDamage).reduce((first, last) -> last);
    }

    static boolean tellsOfDamage(String remark) {
        return DAMAGE.matcher(NO_DAMAGE.matcher(remark).replaceAll(" ")).find();
    }

    /** Why it is not clean yet, if it is not. */
    private Optional<String> dirty(Position position) {
        Optional<Cleaned> last = build.told(Cleaned.class, position.id()).stream()
                .map(Told::fact)
                .reduce((first, then) -> then);
        if (last.isEmpty()) {
            return Optional.of("It was not cleaned yet; dirt hides cracks and reads as size.");
        }
        return last.filter(cleaned -> cleaned.how().leavesGrit())
                .map(cleaned -> "It was " + cleaned.how().words()
                        + " last: grit is left in corners and oilways. Wash it until nothing comes out.");
    }
}
