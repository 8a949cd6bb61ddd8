package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Adapter;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to set a wrench to for a torque.
 *
 * @param wrench the wrench
 * @param wantedNm the torque at the fastener, N·m, above 0
 * @param adapter what changes its arm, if anything does
 */
public record WrenchSetting(OwnWrench wrench, double wantedNm, Optional<Adapter> adapter) {
    /** The setting in N·m. */
    public double settingNm() {
        return adapter.map(one -> one.settingNm(wantedNm)).orElse(wantedNm);
    }

    /** Whether the wrench can be trusted there. */
    public boolean isTrusted() {
        return wrench.range().trusts(settingNm());
    }

    /** What to set it to, in its own unit, and whether it can be trusted there, each a sentence. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        String set = settingNm() > wrench.range().mostNm()
                ? "The " + wrench.name() + " would have to be set to "
                : "Set the " + wrench.name() + " to ";
        sentences.add(set + wrench.in(settingNm())
                + adapter.map(one -> " for " + WrittenTorque.newtonMetres(wantedNm)
                                + " at the fastener: the adapter makes its arm " + WrittenTorque.number(one.gain())
                                + " times as long")
                        .orElse("")
                + ".");
        sentences.add(isTrusted() ? wrench.sentence() : distrust());
        return sentences;
    }

    /** Why it can't be trusted there. */
    public String distrust() {
        String where = settingNm() > wrench.range().mostNm() ? "more than its scale has" : "too low on its scale";
        return wrench.in(settingNm()) + " is " + where + ": the " + wrench.name() + " can be trusted from "
                + wrench.in(wrench.range().trustedFromNm()) + " to "
                + wrench.in(wrench.range().mostNm()) + ".";
    }

    /** The adapter that was put on with a choice; empty without one, or where nobody said how long the wrench's arm is. */
    public static Optional<Adapter> adapter(WrenchChosen chosen) {
        if (chosen.adapterMm().orElse(0) <= 0 || chosen.armMm().orElse(0) <= 0) {
            return Optional.empty();
        }
        double length = chosen.adapterMm().getAsDouble();
        double angle = chosen.adapterDeg().orElse(0);
        double arm = chosen.armMm().getAsDouble();
        return arm + length * Math.cos(Math.toRadians(angle)) > 0
                ? Optional.of(new Adapter(length, angle, arm))
                : Optional.empty();
    }
}
