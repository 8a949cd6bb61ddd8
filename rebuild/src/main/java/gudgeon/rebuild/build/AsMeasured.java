package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.fit.Choice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The engine as its parts at hand make it: the book's figures with the sizes measured on those parts laid over them.
 *
 * @param geometry the figures
 * @param choice the piston and head gasket at hand, and whether the piston went in turned
 * @param laid the parts whose sizes count in place of the book's
 * @param unread sizes measured that can't be used
 */
public record AsMeasured(Geometry geometry, Choice choice, List<Laid> laid, List<Unread> unread) {
    public AsMeasured {
        laid = List.copyOf(laid);
        unread = List.copyOf(unread);
    }

    /** The engine as a build's parts make it; empty where the book has no figures. */
    public static Optional<AsMeasured> of(Build build) {
        return of(build, position -> true);
    }

    /**
     * The same with the parts of some positions only; the others are as the book has them.
     *
     * @param counts whether the part of a position counts
     */
    public static Optional<AsMeasured> of(Build build, Predicate<String> counts) {
        return build.book().geometry().map(booked -> new Overlay(build, booked).with(counts));
    }

    /** Whether the journal says anything of the parts that the book does not. */
    public boolean differs() {
        return !laid.isEmpty() || choice.turned();
    }

    /** What was measured, what is taken from the book and what can't be used; sentences. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (Laid part : laid) {
            notes.add(note(part));
        }
        unread.forEach(size -> notes.add(size.sentence()));
        return notes;
    }

    private static String note(Laid laid) {
        String part = laid.position().name() + (laid.part().isEmpty() ? " that came off" : " '" + laid.part() + "'");
        int measured = laid.measured().size();
        int all = measured + laid.booked().size();
        return measured == 0
                ? "Nothing was measured on the " + part + " yet: its " + all + " sizes are taken from the book."
                : "On the " + part + " " + measured + " of " + all + " sizes "
                        + (measured == 1 ? "was" : "were") + " measured"
                        + (measured < all ? "; the others are taken from the book." : ".");
    }
}
