package gudgeon.rebuild.drill;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Archetypes with figures of an engine of any bore written in, as a person would write them. */
final class VariantBooks {
    static final List<String> ARCHETYPES =
            List.of("upright-pushrod-single", "side-valve-stationary", "lying-overhead-cam-single");

    private VariantBooks() {}

    /** A book whose new bore is from so many millimetres on; its piston skirt 0.035 to 0.02 less; its spigot 5 mm more. */
    static EngineBook of(String archetype, double boreMm) {
        String text = archetype(archetype);
        text = with(text, "piston", "oversizes: [0.25 mm, 0.50 mm, 0.75 mm, 1.00 mm]");
        for (String bearing : List.of("main-bearing-drive", "main-bearing-left")) {
            text = with(text, bearing, "fit: {size: 47 N7/h6, part: steel, into: aluminium, warmest: 120 degC}");
        }
        text = with(text, "bore", span("new", boreMm, boreMm + 0.015), at("at-most", boreMm + 0.06));
        text = with(text, "piston-skirt", span("new", boreMm - 0.035, boreMm - 0.02), at("at-least", boreMm - 0.08));
        text = with(text, "skirt-clearance", span("new", 0.02, 0.05), at("at-most", 0.12));
        text = with(text, "ring-gap-top", at("at-most", 0.8), span("new", 0.004 * boreMm, 0.006 * boreMm));
        text = with(text, "case-mouth", span("new", boreMm + 5, boreMm + 5.03));
        text = with(text, "barrel-spigot", span("new", boreMm + 4.94, boreMm + 4.97));
        text = with(text, "spigot-clearance", at("at-most", 0.2));
        return read(text.contains("id: barrel-spigot\n") ? text + family(boreMm) : text);
    }

    private static String family(double boreMm) {
        return String.format(
                Locale.ROOT,
                "family:%n  - {id: larger, name: larger sister, parts: {barrel: {bore: %.3f mm, barrel-spigot: %.3f mm}}}%n"
                        + "  - {id: equal, name: later series, parts: {barrel: {bore: %.3f mm, barrel-spigot: %.3f mm}}}%n",
                boreMm + 6,
                boreMm + 11,
                boreMm + 0.01,
                boreMm + 4.95);
    }

    static boolean hasCaseMouth(EngineBook book) {
        return book.structure().dimension("spigot-clearance").isPresent();
    }

    static EngineBook read(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    private static String span(String key, double least, double most) {
        return String.format(Locale.ROOT, "%s: {at-least: %.4f, at-most: %.4f}", key, least, most);
    }

    private static String at(String key, double mm) {
        return String.format(Locale.ROOT, "%s: %.4f", key, mm);
    }

    private static String with(String text, String id, String... lines) {
        String head = "\n  - id: " + id + "\n";
        return text.replace(head, head + "    " + String.join("\n    ", lines) + "\n");
    }

    private static String archetype(String name) {
        String path = "/gudgeon/rebuild/archetype/" + name + ".yaml";
        try (InputStream in = Objects.requireNonNull(VariantBooks.class.getResourceAsStream(path))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
