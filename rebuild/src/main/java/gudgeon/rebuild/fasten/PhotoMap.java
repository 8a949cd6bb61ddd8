package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.plane.FacePoint;
import gudgeon.mechanics.plane.MarkedFace;
import gudgeon.mechanics.plane.MarkedFace.Located;
import gudgeon.mechanics.plane.Match;
import gudgeon.mechanics.plane.NoPerspective;
import gudgeon.mechanics.plane.Pixel;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.fasten.MarkedPhoto.MeasuredApart;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What comes of a joint that was marked in a photo. */
public sealed interface PhotoMap {
    /** How many corners a sheet has. */
    int CORNERS = 4;

    /**
     * It can be mapped.
     *
     * @param fact where its outline and holes lie, with how that was found
     */
    record Mapped(JointMapped fact) implements PhotoMap {}

    /**
     * It can't.
     *
     * @param sentences why, and what to do
     */
    record Refused(List<String> sentences) implements PhotoMap {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }

    /** The map of a joint out of a marked photo. */
    static PhotoMap of(JointNow joint, MarkedPhoto marked) {
        try {
            if (marked.corners().size() != CORNERS) {
                throw new NoPerspective(NoPerspective.Kind.TOO_FEW);
            }
            MarkedFace face = MarkedFace.of(corners(marked), marked.within());
            List<String> before = Stream.concat(unmarked(joint, marked).stream(), lying(marked).stream())
                    .toList();
            return before.isEmpty() ? new Reader(joint.id(), marked, face).read() : new Refused(before);
        } catch (NoPerspective fault) {
            return new Refused(List.of(sentence(fault)));
        }
    }

    /** A map of some holes only would stand askew to the places that the book gives for the rest. */
    private static Optional<String> unmarked(JointNow joint, MarkedPhoto marked) {
        List<String> left = joint.book().holes().stream()
                .map(hole -> hole.id())
                .filter(id -> !marked.holes().containsKey(id))
                .toList();
        if (marked.holes().isEmpty()) {
            return Optional.of("No hole is marked. Touch each hole of the joint in the photo.");
        }
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("Not marked yet: " + Sentence.list(left)
                        + ". Mark every hole of the joint, so that all are measured from one corner.");
    }

    /** A sheet that lies the other way than was said would stretch the map. */
    private static Optional<String> lying(MarkedPhoto marked) {
        double across = apart(marked, 0, 1) + apart(marked, 3, 2);
        double up = apart(marked, 0, 3) + apart(marked, 1, 2);
        SheetOfPaper sheet = marked.sheet();
        boolean otherWay = (across - 1.1 * up) * (sheet.heightMm() - 1.1 * sheet.widthMm()) > 0
                && (up - 1.1 * across) * (sheet.widthMm() - 1.1 * sheet.heightMm()) > 0;
        return otherWay
                ? Optional.of("The sheet is " + (across > up ? "wider than high" : "higher than wide")
                        + " in the photo, but a sheet lying the other way is chosen. Choose how it lies, or take the photo"
                        + " from straight above.")
                : Optional.empty();
    }

    private static double apart(MarkedPhoto marked, int one, int other) {
        Pixel from = marked.corners().get(one);
        Pixel to = marked.corners().get(other);
        return Math.hypot(to.across() - from.across(), to.down() - from.down());
    }

    private static List<Match> corners(MarkedPhoto marked) {
        double width = marked.sheet().widthMm();
        double height = marked.sheet().heightMm();
        List<FacePoint> known = List.of(
                new FacePoint(0, height), new FacePoint(width, height), new FacePoint(width, 0), new FacePoint(0, 0));
        List<Match> matches = new ArrayList<>();
        for (int i = 0; i < known.size(); i++) {
            matches.add(new Match(marked.corners().get(i), known.get(i)));
        }
        return matches;
    }

    private static String sentence(NoPerspective fault) {
        String order = " Mark top left, top right, bottom right and bottom left, in this order.";
        return switch (fault.kind()) {
            case TOO_FEW -> "A sheet has four corners, and fewer are marked." + order;
            case IN_LINE -> "Three corners of the sheet are in line, or two are on one spot." + order;
            case CROSSED -> "The corners of the sheet are marked crosswise." + order;
            case MIRRORED -> "The corners of the sheet are marked the wrong way round." + order;
        };
    }

    /** Reads the marks one by one. */
    record Reader(String joint, MarkedPhoto marked, MarkedFace face) {
        /** A place is said with its expanded uncertainty, k = 2 (JCGM 100:2008, 6.2). */
        private static final double COVERAGE = 2;

        PhotoMap read() {
            List<String> beyond = Stream.concat(
                            marked.holes().entrySet().stream()
                                    .filter(mark -> !face.sees(mark.getValue()))
                                    .map(Map.Entry::getKey)
                                    .sorted(),
                            marked.outline().stream()
                                    .filter(corner -> !face.sees(corner))
                                    .map(corner -> "a corner of the outline"))
                    .toList();
            if (!beyond.isEmpty()) {
                return new Refused(List.of("No point of the sheet's face is seen where this is marked: "
                        + Sentence.list(beyond) + ". Mark it where it is, or mark the sheet again."));
            }
            Map<String, Located> holes = new TreeMap<>();
            marked.holes().forEach((id, mark) -> holes.put(id, turned(face.at(mark))));
            List<FacePoint> outline = marked.outline().stream()
                    .map(corner -> turned(face.at(corner)).point())
                    .toList();
            double worst = COVERAGE
                    * holes.values().stream()
                            .mapToDouble(Located::standardUncertaintyMm)
                            .max()
                            .orElse(0);
            List<String> checked = new ArrayList<>();
            List<String> faults = new ArrayList<>();
            marked.check().ifPresent(check -> check(check, holes, faults, checked));
            return faults.isEmpty()
                    ? new Mapped(fact(outline, holes, how(worst) + String.join("", checked)))
                    : new Refused(faults);
        }

        private Located turned(Located seen) {
            FacePoint point = seen.point();
            return marked.fromInside()
                    ? new Located(new FacePoint(-point.xMm(), point.yMm()), seen.standardUncertaintyMm())
                    : seen;
        }

        private void check(MeasuredApart check, Map<String, Located> holes, List<String> faults, List<String> checked) {
            Located one = holes.get(check.one());
            Located other = holes.get(check.other());
            Optional<Quantity> length = TypedSize.quantity(Unit.MM, check.length());
            if (one == null || other == null || check.one().equals(check.other()) || length.isEmpty()) {
                faults.add(
                        "The distance to check by can't be used. Choose two marked holes, and write what was measured"
                                + " from middle to middle, such as 62.0 mm.");
                return;
            }
            double seen = one.point().distanceMm(other.point());
            double off = Math.abs(seen - length.get().value());
            double doubt = COVERAGE
                    * Math.hypot(
                            Math.hypot(one.standardUncertaintyMm(), other.standardUncertaintyMm()),
                            length.get().standardUncertainty());
            String told = check.one() + " to " + check.other() + " is " + mm(seen) + " by the photo and "
                    + mm(length.get().value()) + " measured, " + mm(off) + " apart";
            if (off > doubt) {
                faults.add(
                        "From " + told + "; marking explains " + mm(doubt)
                                + ". A face higher or lower than the sheet looks larger or smaller: lay the sheet level with the"
                                + " face, photograph from further away, or look whether the sheet and the holes are the right ones.");
            } else {
                checked.add("; " + told);
            }
        }

        private String how(double worst) {
            return "from photo "
                    + marked.photo().substring(0, Math.min(8, marked.photo().length())) + ", beside "
                    + marked.sheet().name() + (marked.fromInside() ? ", seen from inside" : "") + ": residual "
                    + mm(face.residualMm()) + ", which four corners always have, places within ±" + mm(worst)
                    + " by marking within " + Math.round(marked.within())
                    + " points; bending by the lens is not removed";
        }

        /** Places are counted from the lower left of all that is marked, so that the sheet's place does not matter. */
        private JointMapped fact(List<FacePoint> outline, Map<String, Located> holes, String how) {
            List<FacePoint> all = Stream.concat(
                            outline.stream(), holes.values().stream().map(Located::point))
                    .toList();
            double left = all.stream().mapToDouble(FacePoint::xMm).min().orElse(0);
            double low = all.stream().mapToDouble(FacePoint::yMm).min().orElse(0);
            return new JointMapped(
                    joint,
                    outline.stream().map(point -> from(left, low, point)).toList(),
                    holes.entrySet().stream()
                            .collect(Collectors.toMap(
                                    Map.Entry::getKey,
                                    hole -> from(left, low, hole.getValue().point()))),
                    how);
        }

        private static Point from(double left, double low, FacePoint point) {
            return new Point(tenth(point.xMm() - left), tenth(point.yMm() - low));
        }

        /** Nobody touches a photo nearer than a tenth of a millimetre. */
        private static double tenth(double mm) {
            return Math.round(mm * 10) / 10.0;
        }

        private static String mm(double value) {
            return String.format(Locale.ROOT, "%.1f mm", value);
        }
    }
}
