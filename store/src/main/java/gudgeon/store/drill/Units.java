package gudgeon.store.drill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.mechanics.bolt.TorqueUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The units and decimal marks in which a size or a torque is written. */
final class Units {
    private static final double MM_PER_INCH = 25.4;
    private static final double THOU_PER_INCH = 1000;

    private static final Pattern SIZE = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (mm|N\\.m)");
    private static final List<String> FIELDS = List.of("value", "torque", "length");

    private Units() {}

    /** Writes the same sizes as another person would. */
    static void rewrite(Line line, Set<String> asWritten, Random chance) {
        FIELDS.stream()
                .filter(field -> !asWritten.contains(field))
                .forEach(field -> rewrite(line.json(), field, chance));
        if (line.json().path("sizes") instanceof ObjectNode sizes && !asWritten.contains("sizes")) {
            sizes.properties().stream().map(Map.Entry::getKey).toList().forEach(field -> rewrite(sizes, field, chance));
        }
    }

    private static void rewrite(ObjectNode in, String field, Random chance) {
        JsonNode written = in.path(field);
        Matcher size = SIZE.matcher(written.isTextual() ? written.textValue() : "");
        if (size.matches()) {
            double number = Double.parseDouble(size.group(1));
            String text = size.group(2).equals("mm")
                    ? length(size.group(1), number, chance)
                    : torque(size.group(1), number, chance);
            in.put(field, text);
        }
    }

    private static String length(String written, double mm, Random chance) {
        return switch (chance.nextInt(6)) {
            case 0 -> written.replace('.', ',') + " mm";
            case 1 -> written;
            case 2 -> text("%.5f in", mm / MM_PER_INCH);
            case 3 -> text("%.2f thou", THOU_PER_INCH * mm / MM_PER_INCH);
            default -> written + " mm";
        };
    }

    private static String torque(String written, double nm, Random chance) {
        return switch (chance.nextInt(5)) {
            case 0 -> written.replace('.', ',') + " Nm";
            case 1 -> text("%.3f lbf.ft", TorqueUnit.POUND_FORCE_FOOT.fromNm(nm));
            case 2 -> text("%.4f kgf.m", TorqueUnit.KILOGRAM_FORCE_METRE.fromNm(nm));
            default -> written + " N.m";
        };
    }

    private static String text(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }
}
