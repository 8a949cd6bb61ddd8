package gudgeon.rebuild.desk;

import gudgeon.mechanics.limits.Bearing;
import gudgeon.mechanics.limits.BearingSuffix;
import gudgeon.mechanics.limits.UnknownDesignation;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;

/** Answers about rolling bearings by number. */
public final class BearingDesk {
    private BearingDesk() {}

    /** Tells the sizes of a bearing and what the letters behind its number mean. */
    public static DeskAnswer answer(String number) {
        Bearing bearing;
        try {
            bearing = Bearing.of(number);
        } catch (UnknownDesignation unknown) {
            return new DeskAnswer.Refused(unknown.sentences());
        }
        return new DeskAnswer.Told(
                bearing.number() + ": a " + words(bearing.kind()) + ", bore " + DeskFigure.mm(bearing.boreMm())
                        + ", outside " + DeskFigure.mm(bearing.outsideMm()) + ", width "
                        + DeskFigure.mm(bearing.widthMm()) + ".",
                List.of(
                        new DeskFigure("bore", "bore", bearing.boreMm(), DeskFigure.Unit.MM),
                        new DeskFigure("outside", "outside diameter", bearing.outsideMm(), DeskFigure.Unit.MM),
                        new DeskFigure("width", "width", bearing.widthMm(), DeskFigure.Unit.MM)),
                suffixes(bearing),
                List.of(
                        "The maker's parts list comes first. A bearing of the same sizes with another clearance, seal or cage is another "
                                + "bearing."),
                List.of(
                        "Boundary dimensions: ISO 15:2017. Clearance groups: ISO 5753-1. Other letters: common in the trade, no standard."));
    }

    private static List<String> suffixes(Bearing bearing) {
        List<String> sentences = new ArrayList<>();
        bearing.suffixes().forEach(suffix -> sentences.add(suffix.letters() + ": " + words(suffix) + "."));
        if (!bearing.others().isEmpty()) {
            sentences.add(
                    Sentence.list(bearing.others()) + ": the bearing maker's own letters; ask him what they mean.");
        }
        if (bearing.suffixes().stream().noneMatch(suffix -> suffix.name().startsWith("CLEARANCE"))) {
            sentences.add("No clearance group is written, so its radial clearance is normal.");
        }
        return sentences;
    }

    private static String words(Bearing.Kind kind) {
        return switch (kind) {
            case BALL -> "single-row deep groove ball bearing";
            case ROLLER -> "single-row cylindrical roller bearing";
        };
    }

    private static String words(BearingSuffix suffix) {
        return switch (suffix) {
            case CLEARANCE_1 -> "less radial clearance than group C2";
            case CLEARANCE_2 -> "less radial clearance than normal";
            case CLEARANCE_NORMAL -> "normal radial clearance";
            case CLEARANCE_3 -> "more radial clearance than normal";
            case CLEARANCE_4 -> "more radial clearance than group C3";
            case CLEARANCE_5 -> "more radial clearance than group C4";
            case SHIELD -> "a metal shield on one side";
            case SHIELDS -> "metal shields on both sides";
            case SEAL -> "a rubbing seal on one side";
            case SEALS -> "rubbing seals on both sides";
            case GROOVE -> "a groove for a snap ring in the outer ring";
            case SNAP_RING -> "a groove in the outer ring, with its snap ring";
            case TAPERED -> "a tapered bore, 1 in 12";
        };
    }
}
