package gudgeon.rebuild.source;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * A part at a machinist's.
 *
 * @param position the position whose part it is
 * @param name what a fitter calls it
 * @param part the part entered; empty for the one that came off
 * @param to who does it, may be empty
 * @param work what is to be done
 * @param written what it costs, as written; may be empty
 * @param on the day it went
 * @param days how long it is away, if that is known
 * @param back the day it came back, if it did
 */
public record OutWork(
        String position,
        String name,
        String part,
        String to,
        String work,
        String written,
        LocalDate on,
        Optional<Days> days,
        Optional<LocalDate> back) {
    /** All work of a build that was sent out, in the order in which it went. */
    public static List<OutWork> of(Build build) {
        return build.told(WorkSent.class).stream()
                .filter(told ->
                        build.structure().position(told.fact().position()).isPresent())
                .map(told -> of(build, told))
                .toList();
    }

    private static OutWork of(Build build, Told<WorkSent> told) {
        WorkSent sent = told.fact();
        return new OutWork(
                sent.position(),
                build.structure().name(sent.position()),
                sent.part(),
                sent.to(),
                sent.work(),
                sent.price(),
                day(told),
                sent.days(),
                build.told(WorkBack.class, sent.position()).stream()
                        .filter(back -> back.number() > told.number())
                        .filter(back -> back.fact().part().equals(sent.part()))
                        .findFirst()
                        .map(OutWork::day));
    }

    private static LocalDate day(Told<?> told) {
        return LocalDate.ofInstant(told.at(), ZoneOffset.UTC);
    }

    /** Where it is, as a sentence. */
    public String sentence() {
        String who = to.isEmpty() ? "the machinist" : to;
        return back.map(day -> "The " + name + " came back from " + who + " on " + day + ".")
                .orElseGet(() -> "The " + name + " went to " + who + " on " + on
                        + days.map(span -> ", back by " + on.plusDays(span.most()))
                                .orElse("; no day was said") + ".");
    }
}
