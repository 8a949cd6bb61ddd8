package gudgeon.rebuild.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.lesson.Amendment.Add;
import gudgeon.rebuild.lesson.Amendment.Put;
import java.util.List;
import org.junit.jupiter.api.Test;

class ManuscriptTest {
    private static final String BOOK = """
            # the book
            book: 1   # its form

            joints:
              - id: head-joint   # on four studs
                holes:
                  - {id: h1, thread: M8, stack: 20}   # the oilway
                  - id: h2
                    thread: M8 # two

              # about steps
            steps:
              - id: fit
                do: Oil it, then push.
                note: >-
                  folded
                  lines

              - id: turn
                minutes:
                do:
                - One.
                - Two.   # not three

            # the end
            """;

    private static String with(Amendment... amendments) {
        return Manuscript.of(BOOK).with(List.of(amendments)).text();
    }

    private static Put put(String value, String... path) {
        return new Put(List.of(path), value);
    }

    private static Add add(String value, String... path) {
        return new Add(List.of(path), value);
    }

    @Test
    void nothingAcceptedLeavesEveryLetter() {
        assertThat(with()).isEqualTo(BOOK);
    }

    @Test
    void aValueWithinBracesIsChangedInPlace() {
        assertThat(with(put("21.5 mm", "joints", "head-joint", "holes", "h1", "stack")))
                .isEqualTo(BOOK.replace("stack: 20}", "stack: 21.5 mm}"));
    }

    @Test
    void aNewKeyWithinBracesStandsLast() {
        assertThat(with(put("[1.0, 2.0]", "joints", "head-joint", "holes", "h1", "at")))
                .isEqualTo(BOOK.replace("stack: 20}", "stack: 20, at: [1.0, 2.0]}"));
    }

    @Test
    void aNewKeyOfABlockStandsBelowItsLastLineBehindTheRemark() {
        assertThat(with(put("20 mm", "joints", "head-joint", "holes", "h2", "stack")))
                .isEqualTo(BOOK.replace("M8 # two\n", "M8 # two\n        stack: 20 mm\n"));
        assertThat(with(put("12", "steps", "fit", "minutes")))
                .isEqualTo(BOOK.replace("      lines\n", "      lines\n    minutes: 12\n"));
    }

    @Test
    void aKeyThatStandsEmptyIsFilled() {
        assertThat(with(put("12", "steps", "turn", "minutes"))).isEqualTo(BOOK.replace("minutes:\n", "minutes: 12\n"));
    }

    @Test
    void aTextOverLinesIsChangedWhole() {
        assertThat(with(put("short", "steps", "fit", "note")))
                .isEqualTo(BOOK.replace(">-\n      folded\n      lines", "short"));
    }

    @Test
    void anEntryJoinsAListHoweverItIsWritten() {
        assertThat(with(add("Three.", "steps", "turn", "do")))
                .isEqualTo(BOOK.replace("not three\n", "not three\n    - Three.\n"));
        assertThat(with(add("Look.", "steps", "fit", "do")))
                .isEqualTo(BOOK.replace("Oil it, then push.", "[\"Oil it, then push.\", Look.]"));
        assertThat(with(add("Look.", "steps", "turn", "cautions")))
                .isEqualTo(BOOK.replace("not three\n", "not three\n    cautions: [Look.]\n"));
    }

    @Test
    void whatTheBookHasNoPlaceForIsLeftOut() {
        Put elsewhere = put("20", "joints", "cover", "holes", "h1", "stack");
        assertThat(with(elsewhere)).isEqualTo(BOOK);
        assertThat(Manuscript.of(BOOK).hasPlaceFor(elsewhere)).isFalse();
    }

    @Test
    void theDifferenceIsTheLinesThatChangeAndNoOthers() {
        Manuscript book = Manuscript.of(BOOK);
        Difference changed = book.difference(put("21", "joints", "head-joint", "holes", "h1", "stack"));
        assertThat(changed.line()).isEqualTo(7);
        assertThat(changed.taken()).containsExactly("      - {id: h1, thread: M8, stack: 20}   # the oilway");
        assertThat(changed.put()).containsExactly("      - {id: h1, thread: M8, stack: 21}   # the oilway");
        Difference added = book.difference(put("12", "steps", "fit", "minutes"));
        assertThat(added.taken()).isEmpty();
        assertThat(added.put()).containsExactly("    minutes: 12");
        assertThat(added.line()).isEqualTo(18);
    }

    @Test
    void amendmentsThatMeetAtOnePlaceAreAllWritten() {
        assertThat(with(
                        add("Look.", "steps", "fit", "do"),
                        add("Listen.", "steps", "fit", "do"),
                        put("3", "steps", "fit", "minutes"),
                        put("4", "steps", "fit", "sets"),
                        add("{id: h3}", "joints", "head-joint", "holes"),
                        put("22", "joints", "head-joint", "holes", "h3", "stack")))
                .isEqualTo(BOOK.replace("Oil it, then push.", "[\"Oil it, then push.\", Listen., Look.]")
                        .replace("      lines\n", "      lines\n    minutes: 3\n    sets: 4\n")
                        .replace("M8 # two\n", "M8 # two\n      - {id: h3, stack: 22}\n"));
    }

    @Test
    void lettersBeyondTheFirstPlaneAndLineBreaksOfAnotherSystemAreKept() {
        String book = "# \uD83D\uDD27 tools\r\nsteps:\r\n  - id: fit\r\n    minutes: 5 # \uD83D\uDD27\r\n";
        Manuscript changed = Manuscript.of(book)
                .with(List.of(put("7", "steps", "fit", "minutes"), put("Look.", "steps", "fit", "do")));
        assertThat(changed.text()).isEqualTo(book.replace("5 #", "7 #") + "    do: Look.\r\n");
    }

    @Test
    void aTextWithoutALastLineBreakIsContinued() {
        assertThat(Manuscript.of("steps:\n  - id: fit")
                        .with(List.of(put("7", "steps", "fit", "minutes")))
                        .text())
                .isEqualTo("steps:\n  - id: fit\n    minutes: 7");
    }
}
