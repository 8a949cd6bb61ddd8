package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.runin.RunIn;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first start and running in, told by forms without a script. */
class StartPagesTest {
    @TempDir
    Path folder;

    private static String tarn() throws Exception {
        return Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
    }

    private static void pass(ServedBuild served, String check, String reading) throws Exception {
        assertThat(served.tell("type", "check", "check", check, "reading", reading, "outcome", "passed")
                        .statusCode())
                .isLessThan(400);
    }

    @Test
    void theListIsTickedSignedAndTheEngineRunIn() throws Exception {
        try (ServedBuild served = new ServedBuild(folder, tarn(), Found.TOGETHER)) {
            assertThat(served.page("/start"))
                    .contains("Oil seen at the rockers", "Fire extinguisher at hand", "no certificate");
            assertThat(served.tell("type", "start-signed", "by", "the fitter").body())
                    .contains("why it is started");
            pass(served, "two-turns", "");
            pass(served, "valve-clearance", "0.05 mm");
            pass(served, "oil-in", "");
            pass(served, "oil-seen", "");
            pass(served, "ready-to-start", "");
            for (String item : new String[] {"petrol", "spark", "extinguisher", "air"}) {
                served.tell("type", "start-item-seen", "item", item, "good", "yes");
            }
            assertThat(served.page("/start")).contains("Nothing is open. Sign before you start it.");
            served.tell("type", "start-signed", "by", "the fitter");
            assertThat(served.build().told(StartSigned.class))
                    .singleElement()
                    .satisfies(told -> assertThat(told.fact().open()).isEmpty());
            served.tell("type", "step-begun", "step", "first-start");
            served.tell("type", "ran-in", "stage", "first-heat", "minutes", "5", "cooled", "yes", "found", "dry");
            assertThat(RunIn.of(served.build()).due()).hasSize(3);
            assertThat(served.page("/start/run-in"))
                    .contains("Go over the head nuts once cold again", "3000/min", "dry");
            assertThat(served.page("")).contains("Before it runs again");
        }
    }

    @Test
    void signedOverWhatIsOpenTheServerKeepsWhatThatWas() throws Exception {
        try (ServedBuild served = new ServedBuild(folder, tarn(), Found.TOGETHER)) {
            served.tell("type", "start-signed", "by", "the fitter", "reason", "Only to hear it.");
            assertThat(served.build().told(StartSigned.class))
                    .singleElement()
                    .satisfies(told -> assertThat(told.fact().open())
                            .contains("Oil seen at the rockers", "Fire extinguisher at hand"));
            assertThat(served.page("/start")).contains("Open when it was signed", "Only to hear it.");
        }
    }
}
