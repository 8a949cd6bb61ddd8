package gudgeon.rebuild.archetype;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Structure;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A damaged archetype is read or refused in sentences, and never ends in a stack trace. */
class DamagedArchetypeTest {
    @Property(tries = 150)
    void anyDamageIsReadOrRefused(@ForAll int which, @ForAll int where, @ForAll byte cut, @ForAll("damage") String by) {
        String text = text(which);
        int at = Math.floorMod(where, text.length());
        int to = Math.min(text.length(), at + Math.floorMod(cut, 40));
        told(text.substring(0, at) + by + text.substring(to));
    }

    @Property(tries = 100)
    void aLineLostOrDoubledIsReadOrRefused(@ForAll int which, @ForAll int where, @ForAll boolean doubled) {
        List<String> lines = text(which).lines().toList();
        int at = Math.floorMod(where, lines.size());
        List<String> before = lines.subList(0, at + 1);
        List<String> after = lines.subList(doubled ? at : at + 1, lines.size());
        List<String> first = doubled ? before : before.subList(0, at);
        told(String.join("\n", first) + "\n" + String.join("\n", after) + "\n");
    }

    private static void told(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            Structure structure = read.book().structure();
            assertThat(structure.precedence().order())
                    .hasSize(structure.steps().size() + structure.checks().size());
        } else {
            assertThat(reading.faults())
                    .isNotEmpty()
                    .allSatisfy(fault ->
                            assertThat(fault.sentence()).doesNotContain("null").doesNotContain("Exception"));
        }
    }

    private static String text(int which) {
        Archetype[] all = Archetype.values();
        return all[Math.floorMod(which, all.length)].text();
    }

    @Provide
    Arbitrary<String> damage() {
        return Arbitraries.oneOf(
                Arbitraries.strings()
                        .withChars(" \n\t:-,.[]{}&*!'\"#|>%@`?~±°09azOl/")
                        .ofMaxLength(6),
                Arbitraries.of("piston", "[piston, barrel]", "{a: b}", "close-case", "\n    needs: [first-start]\n"));
    }
}
