package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the Parts page takes down and says, from the list to what goes back. */
class PartsPagesTest {
    @TempDir
    private Path folder;

    private ServedBuild served;

    @BeforeEach
    void start() throws Exception {
        served = new ServedBuild(folder, Archetype.LYING_OVERHEAD_CAM_SINGLE.text(), Found.TOGETHER);
        served.tell("type", "taken-off", "position", "rocker-cover-gasket");
        served.tell("type", "taken-off", "position", "piston");
        served.tell("type", "disposed", "position", "piston", "disposition", "replace", "why", "seized");
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private <F extends Sourcing> List<F> told(Class<F> kind) {
        return served.build().told(kind).stream().map(Told::fact).toList();
    }

    private HttpResponse<String> orderBoth() throws Exception {
        return served.tell(
                "type",
                "ordered",
                "line",
                "piston",
                "line",
                "rocker-cover-gasket",
                "count.piston",
                "1",
                "price.piston",
                "42,50 €",
                "part.piston",
                "Piston + 0.25",
                "origin.piston",
                "pattern",
                "price.rocker-cover-gasket",
                "GBP 3.20",
                "from",
                "Low Quay Workshop",
                "promised",
                "2024-05-31",
                "least",
                "3",
                "likely",
                "5",
                "most",
                "10",
                "postage",
                "4.90 EUR");
    }

    @Test
    void severalLinesAreOrderedInOneGoWithTheirPostage() throws Exception {
        assertThat(served.page("/parts")).contains("piston", "is to be replaced", "Nobody offered yet");
        assertThat(orderBoth().statusCode()).isEqualTo(303);
        List<Ordered> orders = told(Ordered.class);
        assertThat(orders).extracting(Ordered::position).containsExactly("piston", "rocker-cover-gasket");
        assertThat(orders).extracting(Ordered::order).containsOnly("1");
        assertThat(orders.get(0).days()).contains(new Days(3, 5, 10));
        assertThat(orders.get(0).promised()).contains(LocalDate.of(2024, 5, 31));
        assertThat(orders.get(0).part()).isEqualTo("Piston + 0.25");
        assertThat(served.page("/parts"))
                .contains(
                        "Order 1",
                        "Low Quay Workshop",
                        "late",
                        "should have come by 2024-05-31",
                        "47.40 EUR and 3.20 GBP");
    }

    @Test
    void whatComesIsTickedAndWhatIsShortIsSaid() throws Exception {
        served.tell("type", "ordered", "order", "A", "line", "piston", "count.piston", "3", "from", "Low Quay");
        assertThat(served.tell("type", "arrived", "order", "A", "line", "piston", "count.piston", "1")
                        .statusCode())
                .isEqualTo(303);
        assertThat(served.page("/parts")).contains("1 of 3 came; 2 short.");
        served.tell(
                "type",
                "returned",
                "order",
                "A",
                "position",
                "piston",
                "count",
                "1",
                "why",
                "too large",
                "refund",
                "20 EUR");
        assertThat(told(Sourcing.Returned.class)).hasSize(1);
        assertThat(served.page("/parts")).contains("1 went back.");
    }

    @Test
    void anOfferIsShownUnderItsSupplierAndTakenIntoTheOrder() throws Exception {
        served.tell(
                "type",
                "offered",
                "position",
                "piston",
                "part",
                "P 250",
                "from",
                "Merrow & Tull",
                "price",
                "39 EUR",
                "likely",
                "7",
                "origin",
                "original");
        assertThat(served.page("/parts")).contains("Merrow &amp; Tull", "P 250 39 EUR", "value=\"7\"");
        assertThat(told(Sourcing.Offered.class).get(0).days()).isEqualTo(Optional.of(new Days(7, 7, 7)));
    }

    @Test
    void aPartGoesToTheMachinistAndComesBack() throws Exception {
        served.tell("type", "work-sent", "position", "piston", "to", "Low Quay", "work", "Ream the pin bosses");
        assertThat(served.page("/parts")).contains("Ream the pin bosses", "away");
        served.tell("type", "work-back", "position", "piston");
        assertThat(served.page("/parts")).contains("came back from Low Quay");
    }

    @Test
    void whatCanNotBeReadIsRefusedWithEveryReasonAndNothingIsKept() throws Exception {
        long before = served.build().size();
        HttpResponse<String> answer = served.tell(
                "type",
                "ordered",
                "line",
                "piston",
                "line",
                "nothing",
                "count.piston",
                "0",
                "price.piston",
                "42",
                "least",
                "9",
                "likely",
                "5",
                "promised",
                "soon",
                "postage",
                "4 EUR 5 GBP");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains(
                        "no position 'nothing'",
                        "A count is 1 to 999, not 0.",
                        "has no currency",
                        "from the fewest over the likeliest to the most",
                        "'soon' is not a day",
                        "is not one price");
        assertThat(served.tell("type", "ordered", "from", "Low Quay").body()).contains("Nothing is ticked.");
        assertThat(served.tell("type", "arrived", "order", "B", "line", "piston")
                        .body())
                .contains("No order 'B' for the piston");
        assertThat(served.tell("type", "offered", "position", "piston", "most", "5", "from", "x")
                        .body())
                .contains("write the likeliest number");
        assertThat(served.tell("type", "pace-set", "hours", "many").statusCode())
                .isEqualTo(422);
        assertThat(served.build().size()).isEqualTo(before);
    }

    @Test
    void whatIsTypedIsShownAsTextAndNeverAsMarkup() throws Exception {
        String markup = "<script>alert(1)</script>\"><img src=x onerror=alert(2)>";
        served.tell("type", "offered", "position", "piston", "part", markup, "from", markup);
        served.tell("type", "ordered", "line", "piston", "order", markup, "from", markup, "part.piston", markup);
        served.tell("type", "arrived", "order", markup, "line", "piston", "remark", markup);
        served.tell("type", "work-sent", "position", "barrel", "to", markup, "work", markup);
        for (String page : List.of("", "/parts", "/journal")) {
            assertThat(served.page(page)).as(page).doesNotContain("<script>alert", "<img src=x");
        }
        assertThat(served.page("/parts")).contains("&lt;script&gt;");
    }

    private HttpResponse<String> sent(String text) throws Exception {
        return served.upload("/parts/file", "file", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aSpreadsheetsFileIsShownWithWhatIsNotUnderstoodBeforeAnythingIsKept() throws Exception {
        long before = served.build().size();
        String text = "\uFEFFposition;from;price;ordered\r\npiston;Low Quay;42,50 €;1\r\npistol;Low Quay;1 EUR;1\r\n";
        HttpResponse<String> answer = sent(text);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("1 entry understood, 1 line not.", "Line 3.", "no position 'pistol'", "at 42,50 € each");
        assertThat(served.build().size()).isEqualTo(before);
        assertThat(served.tell("type", "parts-file", "text", text.substring(1)).statusCode())
                .isEqualTo(303);
        assertThat(told(Ordered.class)).extracting(Ordered::price).containsExactly("42,50 €");
        assertThat(sent("position\n<script>alert(1)</script>\n").body()).doesNotContain("<script>alert");
        assertThat(sent("").statusCode()).isEqualTo(422);
        assertThat(served.tell("type", "parts-file", "text", "position\npiston").statusCode())
                .isEqualTo(422);
    }

    @Test
    void theListIsDownloadedForASpreadsheet() throws Exception {
        HttpResponse<String> list = served.get("/parts/list.csv");
        assertThat(list.headers().firstValue("Content-Type")).hasValue("text/csv; charset=utf-8");
        assertThat(list.body()).startsWith("\uFEFFposition,").contains("rocker-cover-gasket,", "to be replaced");
    }

    @Test
    void aPartThatCameIsInspectedRefusedAndSentBackWithALetter() throws Exception {
        served.tell("type", "ordered", "order", "A", "line", "piston", "part.piston", "P 1", "from", "Low Quay");
        served.tell("type", "arrived", "order", "A", "line", "piston");
        assertThat(served.page("/parts/inspect?position=piston")).contains("value=\"P 1\"", "Enter the part that came");
        served.tell("type", "part-entered", "position", "piston", "part", "P 1", "origin", "pattern", "price", "");
        String inspected = served.page("/parts/inspect?position=piston&part=P+1");
        assertThat(inspected).contains("not all compared", "Book", "Old part", "name=\"reading.");
        assertThat(served.page("/parts")).contains("Inspect before fitting");
        assertThat(served.page("")).contains("Inspect before fitting", "When it is done");
        String look = served.build()
                .structure()
                .position("piston")
                .orElseThrow()
                .compare()
                .get(0);
        assertThat(served.tell("type", "inspected", "position", "piston", "part", "P 1", "look.0", "differs:" + look)
                        .statusCode())
                .isEqualTo(303);
        assertThat(served.page("/parts/inspect?position=piston&part=P+1"))
                .contains("does not agree", "What to write to Low Quay", "is not as wanted", look);
        assertThat(served.tell("type", "refused", "position", "piston", "part", "P 1", "why", "")
                        .body())
                .contains("Write why it is refused");
        served.tell(
                "type",
                "refused",
                "position",
                "piston",
                "part",
                "P 1",
                "why",
                "pocket too shallow",
                "returned",
                "yes",
                "order",
                "A",
                "count",
                "1",
                "refund",
                "20 EUR");
        assertThat(told(Sourcing.Returned.class).get(0).why()).isEqualTo("pocket too shallow");
        assertThat(served.build().part("piston", "P 1").orElseThrow().spent()).isTrue();
        assertThat(served.page("/parts")).contains("1 went back.").doesNotContain("Inspect before fitting");
        assertThat(served.page("/parts/inspect?position=piston&part=P+1")).contains("not to be used");
    }

    @Test
    void readingsOfAnInspectionAreTakenDownOnceSomethingIsWritten() throws Exception {
        served.tell("type", "part-entered", "position", "piston", "part", "P 1", "origin", "pattern");
        assertThat(served.tell("type", "inspected", "position", "piston", "part", "P 1")
                        .body())
                .contains("Nothing was measured or looked at.");
        String dimension = served.build().structure().dimensionsOf("piston").stream()
                .filter(each -> each.inspect() && each.isRead())
                .findFirst()
                .orElseThrow()
                .id();
        served.tell(
                "type",
                "inspected",
                "position",
                "piston",
                "part",
                "P 1",
                "reading." + dimension + ".1.0",
                "38,97",
                "answer.reading." + dimension + ".1.0",
                "stands");
        assertThat(served.build().readings(dimension, "P 1"))
                .extracting(told -> told.fact().value())
                .containsExactly("38,97 mm");
        assertThat(served.get("/parts/inspect?position=nothing").statusCode()).isEqualTo(404);
        assertThat(served.get("/parts/inspect").statusCode()).isEqualTo(404);
    }

    @Test
    void theDateFollowsTheHoursOfTheWeek() throws Exception {
        assertThat(served.page("/parts/schedule")).contains("Nobody said how many hours a week", "This evening");
        served.tell("type", "pace-set", "hours", "2,5");
        assertThat(served.page("/parts/schedule")).contains("2.5 h a week for the bench", "value=\"2.5\"");
    }

    @Test
    void arrivalsAndHoldPointsAreDownloadedAsACalendar() throws Exception {
        HttpResponse<String> calendar = served.get("/parts/calendar.ics");
        assertThat(calendar.headers().firstValue("Content-Type")).hasValue("text/calendar; charset=utf-8");
        assertThat(calendar.body()).startsWith("BEGIN:VCALENDAR").contains("the piston", "Hold point: ");
    }

    @Test
    void whatIsShortHasItsLetter() throws Exception {
        served.tell("type", "ordered", "order", "A", "line", "piston", "count.piston", "2", "from", "Low Quay");
        served.tell("type", "arrived", "order", "A", "line", "piston", "count.piston", "1");
        assertThat(served.page("/parts")).contains("What to write to Low Quay", "ordered 2, arrived 1");
    }
}
