package gudgeon.bench.cli;

import gudgeon.rebuild.fasten.DeskWrench;
import gudgeon.rebuild.fasten.Unanswerable;
import gudgeon.rebuild.fasten.WrenchSetting;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether a torque wrench can be trusted for a torque, and what to set it to, without a build. */
@Command(
        name = "wrench",
        mixinStandardHelpOptions = true,
        description =
                "Says whether a torque wrench can be trusted for a torque, and what to set it to with an adapter on it.")
final class WrenchCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "RANGE", description = "what its scale spans, such as '5 to 25 N.m'")
    private String range = "";

    @Parameters(index = "1", paramLabel = "TORQUE", description = "wanted at the fastener, such as '9 N.m'")
    private String torque = "";

    @Option(
            names = "--adapter",
            paramLabel = "LENGTH",
            description = "from the drive to the fastener, in mm or with a unit")
    private String adapter = "";

    @Option(
            names = "--angle",
            paramLabel = "DEGREES",
            description = "of the adapter: 0 in line, 90 square, 180 backwards")
    private String angle = "";

    @Option(
            names = "--arm",
            paramLabel = "LENGTH",
            description = "of the wrench from its drive to the middle of its grip")
    private String arm = "";

    @Option(names = "--json", description = "as JSON, described in docs/torque-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        WrenchSetting answer = answer();
        if (json) {
            out.println(Json.text(json(answer)));
        } else {
            answer.sentences().forEach(out::println);
        }
        return answer.isTrusted() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private WrenchSetting answer() {
        try {
            return DeskWrench.of(new DeskWrench.Asked(range, torque, adapter, angle, arm));
        } catch (Unanswerable fault) {
            throw new Unusable(String.join("\n", fault.sentences()));
        }
    }

    private static Map<String, @Nullable Object> json(WrenchSetting answer) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("wantedNm", answer.wantedNm());
        json.put("settingNm", answer.settingNm());
        json.put("setting", answer.wrench().in(answer.settingNm()));
        json.put("trusted", answer.isTrusted());
        json.put("trustedFromNm", answer.wrench().range().trustedFromNm());
        json.put("trustedToNm", answer.wrench().range().mostNm());
        json.put("mayErrPercent", answer.wrench().mayErrPercent());
        json.put("sentences", answer.sentences());
        return json;
    }
}
