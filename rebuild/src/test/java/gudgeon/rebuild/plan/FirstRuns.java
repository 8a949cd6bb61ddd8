package gudgeon.rebuild.plan;

import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.runin.StageNow;
import gudgeon.rebuild.runin.Work;
import java.util.List;

/** How a fitter runs an engine in: by its scheme, and never on before what is due is done. */
record FirstRuns(Fitter fitter) {
    /** Runs it through all that is left of its scheme. */
    void toTheEnd() {
        while (runIn().now().isPresent()) {
            stage();
            doesWhatIsDue();
        }
    }

    /** Runs it through the stage that it has come to, in as many spells as it is let go cold. */
    void stage() {
        StageNow now = runIn().now().orElseThrow();
        int spells = Math.max(1, now.stage().heats());
        for (int spell = 0; spell < spells; spell++) {
            int minutes = (now.stage().minutes() + spells - 1) / spells;
            fitter.tells(new RanIn(now.stage().id(), minutes, now.stage().heats() > 0, ""));
        }
    }

    /** Does what is to be done before it runs again: what the plan still has in the plan's way, the rest once more. */
    void doesWhatIsDue() {
        runIn().due().forEach(this::does);
    }

    private void does(Work work) {
        if (fitter.left().contains(work.id())) {
            fitter.does(List.of(work.id()));
            return;
        }
        fitter.tells(
                switch (work.kind()) {
                    case STEP -> SmallBook.done(work.id());
                    case CHECK ->
                        Fitter.passed(
                                fitter.build().structure().check(work.id()).orElseThrow());
                    case JOINT -> new TightenedAgain(work.id(), "", "");
                    case FLUID -> new FluidChanged(work.id(), "");
                });
    }

    private RunIn runIn() {
        return RunIn.of(fitter.build());
    }
}
