package gudgeon.bench.cli;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.decide.LeadTime;
import gudgeon.rebuild.decide.Mate;
import gudgeon.rebuild.decide.Option;
import gudgeon.rebuild.decide.OptionFigure;
import gudgeon.rebuild.decide.OptionPart;
import gudgeon.rebuild.decide.Options;
import gudgeon.rebuild.decide.Outcome;
import gudgeon.rebuild.decide.Proposal;
import gudgeon.rebuild.decide.Proposal.Decision;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.source.Money;
import gudgeon.rebuild.source.Sum;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Options and proposals as JSON, described in docs/options-json.md. Keys stay as they are; new ones may be added. */
final class OptionsJson {
    private OptionsJson() {}

    static String text(Options options, List<Proposal> proposals) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("rpm", options.rpm());
        json.put("now", figures(options.now()));
        json.put("options", options.options().stream().map(OptionsJson::outcome).toList());
        json.put("assumptions", Options.assumptions());
        json.put("parts", proposals.stream().map(OptionsJson::proposal).toList());
        return Json.text(json);
    }

    private static Map<String, @Nullable Object> outcome(Outcome outcome) {
        Option option = outcome.option().orElseThrow();
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("option", option.id());
        json.put("name", outcome.name());
        json.put("why", option.why());
        json.put("state", word(option.state()));
        json.put("said", option.said());
        json.put("lines", outcome.parts().stream().map(OptionsJson::part).toList());
        json.put("money", sum(outcome.bill().all()));
        json.put("moneyToCome", sum(outcome.bill().toCome()));
        json.put("unpriced", outcome.bill().unpriced());
        json.put("leadTime", leadTime(outcome.leadTime()));
        json.put("figures", figures(outcome));
        json.put("mates", outcome.mates().stream().map(OptionsJson::mate).toList());
        json.put("cautions", outcome.cautions());
        json.put("notes", outcome.notes());
        return json;
    }

    private static Map<String, @Nullable Object> part(OptionPart part) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("position", part.line().position());
        json.put("what", part.line().what());
        json.put("origin", part.line().origin().map(OptionsJson::word).orElse(null));
        json.put("family", part.line().family());
        json.put("price", part.line().price());
        json.put("days", part.line().days().map(OptionsJson::days).orElse(null));
        json.put("sizes", part.line().sizes());
        json.put("inHand", part.inHand());
        json.put("standing", part.standing());
        return json;
    }

    private static List<Map<String, Object>> sum(Sum sum) {
        return sum.amounts().stream().map(OptionsJson::money).toList();
    }

    private static Map<String, Object> money(Money money) {
        return Map.of("amount", money.amount(), "currency", money.currency().getCurrencyCode());
    }

    private static Map<String, @Nullable Object> leadTime(LeadTime leadTime) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("days", leadTime.days().map(OptionsJson::days).orElse(null));
        json.put("unknown", leadTime.unknown());
        json.put("sentence", leadTime.sentence());
        return json;
    }

    private static Map<String, Object> days(Days days) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("least", days.least());
        json.put("likely", days.likely());
        json.put("most", days.most());
        return json;
    }

    private static List<Map<String, @Nullable Object>> figures(Outcome outcome) {
        return outcome.figures().stream().map(OptionsJson::figure).toList();
    }

    private static Map<String, @Nullable Object> figure(OptionFigure figure) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("key", figure.key());
        json.put("label", figure.label());
        json.put("unit", figure.unit());
        json.put("low", figure.low());
        json.put("high", figure.high());
        json.put("expandedUncertainty", figure.expanded());
        json.put(
                "verdict",
                figure.verdict().map((Verdict verdict) -> word(verdict)).orElse(null));
        return json;
    }

    private static Map<String, Object> mate(Mate mate) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("dimension", mate.dimension());
        json.put("value", mate.value());
        json.put("goes", word(mate.goes()));
        json.put("sentence", mate.sentence());
        return json;
    }

    private static Map<String, @Nullable Object> proposal(Proposal proposal) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("position", proposal.position().id());
        json.put("part", proposal.part());
        json.put(
                "proposed",
                proposal.disposition().map((Disposition one) -> word(one)).orElse(null));
        json.put("what", proposal.what());
        json.put("reasons", proposal.reasons());
        json.put("decided", proposal.decided().map(OptionsJson::decision).orElse(null));
        json.put("keptAgainstIt", proposal.isKeptAgainstIt());
        return json;
    }

    private static Map<String, Object> decision(Decision decision) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("disposition", word(decision.disposition()));
        json.put("why", decision.why());
        json.put("entry", decision.number());
        return json;
    }

    private static String word(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
