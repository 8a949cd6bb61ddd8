package gudgeon.rebuild.book;

import java.util.List;
import java.util.stream.Collectors;

/** Tells what a book does not say, and what that leaves open. */
final class Missing {
    private static final int NAMED = 4;

    private final Geometry book;
    private final Faults faults;

    Missing(Geometry book, Faults faults) {
        this.book = book;
        this.faults = faults;
    }

    void tell() {
        Where crank = book.crank().stroke().where();
        if (book.head().chamber().isEmpty()) {
            faults.note(
                    book.cylinder().bore().where(),
                    "head.chamber",
                    "The chamber's volume is not stated, so no compression ratio can be worked out.",
                    "Measure it with a burette and a plate.");
        }
        if (book.cam().isEmpty()) {
            faults.note(
                    crank,
                    "cam",
                    "The cam sprocket's teeth are not stated, so a chain moved by a tooth can't be tried.",
                    "Count them and add 'cam: {sprocket-teeth: ...}'.");
        }
        book.pistons().forEach(this::ofPiston);
        withoutDoubt();
        common();
    }

    private void ofPiston(PistonEntry piston) {
        String path = "pistons." + piston.id();
        if (piston.crownThickness().isEmpty() || piston.groove().isEmpty()) {
            faults.note(
                    piston.land().where(),
                    path,
                    "Crown thickness or ring groove of the piston " + piston.id()
                            + " is not stated, so the metal left beside its pockets can't be worked out in full.",
                    "Add 'crown-thickness' and 'groove' before you cut a pocket deeper.");
        }
        boolean follows = piston.protrusion().isPresent()
                || piston.id().equals(book.pistons().get(0).id());
        boolean heights = piston.compressionHeight().isPresent()
                && book.pistons().get(0).compressionHeight().isPresent();
        if (!follows && book.crank().deckHeight().isEmpty() && !heights) {
            faults.note(
                    piston.land().where(),
                    path,
                    "The piston " + piston.id() + " is taken to stand as high as the first piston of the book.",
                    "Measure 'compression-height' on both.");
        }
    }

    private void withoutDoubt() {
        List<Size> exact = book.sizes().values().stream()
                .filter(size -> size.isKnown() && !size.hasDoubt())
                .toList();
        if (!exact.isEmpty()) {
            String names = exact.stream().limit(NAMED).map(Size::label).collect(Collectors.joining(", "));
            faults.note(
                    exact.get(0).where(),
                    exact.get(0).path(),
                    exact.size() + (exact.size() == 1 ? " size has" : " sizes have") + " no doubt stated (" + names
                            + (exact.size() > NAMED ? ", …" : "")
                            + "): they are taken as exact, so verdicts may sound surer than they are.",
                    "Add '± ' and a figure, or name the instrument with 'with'.");
        }
    }

    private void common() {
        WantedGaps wanted = book.wanted();
        boolean common = wanted.valves().values().stream()
                        .anyMatch(of -> isCommon(of.bore())
                                || isCommon(of.valve())
                                || isCommon(of.nearest())
                                || isCommon(of.side()))
                || isCommon(wanted.valveToValve())
                || isCommon(wanted.wall())
                || isCommon(wanted.deck());
        if (common) {
            faults.note(
                    book.cylinder().bore().where(),
                    "wanted",
                    "Not every wanted gap is stated; common practice stands in, which has no source.",
                    "The maker's figures come first: add them under 'wanted'.");
        }
    }

    private static boolean isCommon(WantedGap gap) {
        return gap.equals(WantedGap.common(gap.mm()));
    }
}
