package gudgeon.rebuild.bag;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Disposed;
import gudgeon.rebuild.journal.Fact.Fitted;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What lies in which bag, and what its label says. */
class BagTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98}
            positions:
              - {id: cover, name: clutch cover, space: outside}
              - {id: gasket, name: clutch cover gasket, space: [wet, outside], single-use: true}
              - {id: spring, name: clutch spring, quantity: 4, space: wet}
              - {id: lever, name: kick lever}
            steps:
              - {id: springs, name: Springs in, fits: [spring]}
              - {id: close, name: Close the cover, fits: [gasket, cover], covers: [spring], needs: [springs]}
            """;

    private static Build told(Fact... facts) {
        BookReading reading = new EngineBookReader().read(BOOK);
        assertThat(reading).as(() -> reading.faults().toString()).isInstanceOf(BookReading.Read.class);
        List<Entry> entries = new ArrayList<>();
        entries.add(entry(0, new Fact.Started("98-1", "", Found.TOGETHER)));
        for (Fact fact : facts) {
            entries.add(entry(entries.size(), fact));
        }
        return Build.of(((BookReading.Read) reading).book()).after(entries);
    }

    /** Every entry a minute after the one before, the first at half past eleven at night by Greenwich. */
    private static Entry entry(int number, Fact fact) {
        return new Entry(
                "k" + number, Instant.parse("2026-03-02T23:30:00Z").plusSeconds(60L * number), "tablet", number, fact);
    }

    private static TakenOff off(String position, int count, String bag) {
        return new TakenOff(position, count, bag, bag.isBlank() ? "" : "shelf " + bag, "");
    }

    private static Fitted fitted(String part, int count) {
        return new Fitted("spring", part, count, Way.NOT_SAID, "");
    }

    @Test
    void bagsComeInTheOrderInWhichTheyWereFilledAndLoosePartsLast() {
        Build build = told(off("lever", 1, " "), off("cover", 1, "B"), off("gasket", 1, "A"), off("spring", 4, "B "));
        List<Bag> bags = Bag.all(build);
        assertThat(bags).extracting(Bag::title).containsExactly("Bag B", "Bag A", "kick lever");
        assertThat(bags.get(0).left()).extracting(InBag::words).containsExactly("clutch cover", "4 × clutch spring");
        assertThat(Bag.of(build, "B")).isEqualTo(bags.get(0));
        assertThat(Bag.of(build, "Z").holds()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "3, Bag 3",
        "A7, Bag A7",
        "front 2, Bag front 2",
        "bag 3, bag 3",
        "Tray on the left, Tray on the left",
        "blue tin, blue tin"
    })
    void aBagIsCalledWhatItIs(String name, String title) {
        assertThat(new Bag(name, List.of()).title()).isEqualTo(title);
    }

    @Test
    void whatWasFittedAgainLiesThereNoMore() {
        Build some = told(off("spring", 4, "1"), fitted("", 3));
        assertThat(Bag.of(some, "1").left()).extracting(InBag::words).containsExactly("clutch spring (1 of 4)");
        Build all = told(off("spring", 4, "1"), fitted("", 3), fitted("", 1));
        assertThat(Bag.of(all, "1").left()).isEmpty();
        assertThat(Bag.of(all, "1").gone()).extracting(InBag::state).containsExactly("in the engine again");
        assertThat(BagLabel.all(all, ZoneOffset.UTC)).isEmpty();
    }

    @Test
    void anotherPartInItsSteadLeavesTheOldOneInTheBag() {
        Build build = told(
                off("spring", 4, "1"),
                new PartEntered("new springs", "spring", Origin.PATTERN, 4, ""),
                fitted("new springs", 4));
        assertThat(Bag.of(build, "1").left()).extracting(InBag::words).containsExactly("4 × clutch spring");
    }

    @Test
    void movedIntoAnotherBagItIsOnlyThere() {
        Build build = told(off("cover", 1, "1"), off("cover", 1, "2"));
        assertThat(Bag.all(build)).extracting(Bag::name).containsExactly("2");
        assertThat(Bag.of(build, "1").holds()).isEmpty();
    }

    @Test
    void aLabelSaysTheMostNeededFirst() {
        Build build =
                told(off("cover", 1, "1"), off("gasket", 1, "1"), new Disposed("cover", "", Disposition.CLEAN, ""));
        BagLabel label = BagLabel.all(build, ZoneOffset.UTC).get(0);
        assertThat(label.title()).isEqualTo("Bag 1");
        assertThat(label.date()).isEqualTo("2026-03-02");
        assertThat(label.parts()).containsExactly("clutch cover, clean", "clutch cover gasket, not used again");
        assertThat(label.further()).containsExactly("For: Close the cover", "Kept: shelf 1");
        BagLabel one = BagLabel.all(told(off("gasket", 1, "1")), ZoneOffset.UTC).get(0);
        assertThat(one.parts()).containsExactly("clutch cover gasket");
        assertThat(one.further())
                .containsExactly("not used again, between wet and outside", "For: Close the cover", "Kept: shelf 1");
    }

    @Test
    void whatIsNotDecidedIsLeftToThePen() {
        BagLabel label =
                BagLabel.all(told(off("spring", 4, "1")), ZoneOffset.UTC).get(0);
        assertThat(label.further()).containsExactly("wet side", "For: Springs in", "Kept: shelf 1");
    }

    @Test
    void theDayIsThatOfTheWorkshop() {
        Build build = told(off("cover", 1, "1"));
        assertThat(BagLabel.all(build, ZoneId.of("Europe/Berlin")).get(0).date())
                .isEqualTo("2026-03-03");
    }

    @Property(tries = 50)
    void emptyLabelsAreForBagsThatThereAreNot(
            @ForAll @IntRange(max = 300) int count, @ForAll @IntRange(max = 40) int used) {
        Build build = told(off("cover", 1, String.valueOf(used)), off("gasket", 1, String.valueOf(used + 7)));
        List<String> names = BagLabel.empty(build, count).stream()
                .map(label -> label.bag().name())
                .toList();
        assertThat(names).hasSize(count).doesNotHaveDuplicates();
        assertThat(names).doesNotContain(String.valueOf(used), String.valueOf(used + 7));
    }
}
