package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;

import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Sentence;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What an entry says, as a sentence in the names that the engine book has; the same on page, print and terminal. */
public final class Telling {
    private final Naming naming;

    private Telling(Structure structure) {
        this.naming = new Naming(structure);
    }

    /** The sentence of a fact. */
    public static String of(Fact fact, Structure structure) {
        return new Telling(structure).sentence(fact);
    }

    /**
     * What a fitter calls a size of a part.
     *
     * @param key the key that the book's figures have for it, such as {@code pockets.exhaust.depth}
     */
    public static String sizeName(String key) {
        String[] words = key.replace('-', ' ').split("\\.", -1);
        return words.length == 3 && words[0].equals("pockets")
                ? words[1] + " pocket " + words[2]
                : String.join(" ", words);
    }

    private String sentence(Fact fact) {
        String told = ofWork(fact);
        told = told.isEmpty() ? ofPart(fact) : told;
        return told.isEmpty() ? ofBuild(fact) : told;
    }

    private String ofWork(Fact fact) {
        if (fact instanceof Fact.StepBegun begun) {
            return "Step begun: " + naming.name(begun.step()) + ".";
        }
        if (fact instanceof Fact.StepDone done) {
            return "Step done: " + naming.name(done.step()) + "." + and(done.remark());
        }
        if (fact instanceof Fact.StepStopped stopped) {
            return "Step stopped: " + naming.name(stopped.step()) + "." + and(stopped.why());
        }
        if (fact instanceof Fact.Undone undone) {
            return "Undone again: " + naming.name(undone.step()) + "." + and(undone.why())
                    + (undone.toBuy().isEmpty() ? "" : " To be bought new: " + naming.names(undone.toBuy()) + ".");
        }
        if (fact instanceof Fact.CheckPassed passed) {
            return "Check passed: " + naming.name(passed.check()) + read(passed.reading()) + "." + and(passed.remark());
        }
        if (fact instanceof Fact.CheckFailed failed) {
            return "Check failed: " + naming.name(failed.check()) + read(failed.reading()) + "." + and(failed.remark());
        }
        if (fact instanceof Fact.CheckWaived waived) {
            return "Going on without the check: " + naming.name(waived.check()) + "." + and(waived.why());
        }
        if (fact instanceof Fact.FaultFound fault) {
            return "Fault found at " + naming.name(fault.at()) + "." + and(fault.what());
        }
        return fact instanceof Fact.WentTight tight ? tight(tight) : "";
    }

    private String tight(Fact.WentTight fact) {
        String where = angle(fact.forwardDeg(), " turning forward")
                + (fact.forwardDeg().isPresent() && fact.backwardDeg().isPresent() ? " and" : "")
                + angle(fact.backwardDeg(), " turning backward");
        return "Turned by hand, the crank goes tight" + (where.isEmpty() ? "" : where) + "." + and(fact.remark());
    }

    private static String angle(OptionalDouble deg, String way) {
        return deg.isPresent() ? String.format(Locale.ROOT, " at %.1f°%s", deg.getAsDouble(), way) : "";
    }

    private String ofPart(Fact fact) {
        if (fact instanceof Fact.TakenOff off) {
            return "Taken off: " + naming.counted(off.position(), off.count())
                    + (off.bag().isEmpty() ? "" : ", into bag " + off.bag())
                    + (off.place().isEmpty() ? "" : ", kept " + off.place()) + "." + and(off.remark());
        }
        if (fact instanceof Fact.PartEntered part) {
            return "In hand for " + naming.counted(part.position(), part.count()) + ": '" + part.part() + "', "
                    + part.origin().words()
                    + Naming.with(", from ", naming.name(part.family())) + Naming.with(", ", part.price()) + "."
                    + and(part.remark());
        }
        if (fact instanceof Fact.Measured measured) {
            return "Measured on " + naming.part(measured.position(), measured.part()) + ": " + sizes(measured.sizes())
                    + ".";
        }
        if (fact instanceof Fact.Compared compared) {
            return "Compared with the old part and the book: " + naming.part(compared.position(), compared.part())
                    + (compared.agrees() ? " agrees" : " does not agree")
                    + (compared.what().isEmpty() ? "." : " (" + String.join(", ", compared.what()) + ").")
                    + and(compared.remark());
        }
        if (fact instanceof Fact.Cleaned cleaned) {
            return Sentence.capital(naming.name(cleaned.position())) + " "
                    + cleaned.how().words() + "." + and(cleaned.remark());
        }
        if (fact instanceof Fact.Disposed disposed) {
            return "Decided for " + naming.part(disposed.position(), disposed.part()) + ": "
                    + disposed.disposition().words() + "." + and(disposed.why());
        }
        if (fact instanceof Fact.Fitted fitted) {
            return "Fitted: " + naming.counted(fitted.position(), fitted.count())
                    + (fitted.part().isEmpty() ? "" : ", part '" + fitted.part() + "'")
                    + (fitted.way() == Way.NOT_SAID ? "" : ", " + fitted.way().words()) + "." + and(fitted.remark());
        }
        return ofTrade(fact);
    }

    private String ofTrade(Fact fact) {
        if (fact instanceof Measuring measuring) {
            return new MeasuringWords(naming).sentence(measuring);
        }
        if (fact instanceof Sourcing sourcing) {
            return new SourcingWords(naming).sentence(sourcing);
        }
        if (fact instanceof Deciding deciding) {
            return new DecidingWords(naming).sentence(deciding);
        }
        return fact instanceof Fastening fastening ? new FasteningWords(naming).sentence(fastening) : ofProof(fact);
    }

    private String ofProof(Fact fact) {
        if (fact instanceof Finding finding) {
            return new FindingWords().sentence(finding);
        }
        if (fact instanceof Proving proving) {
            return new ProvingWords(naming).sentence(proving);
        }
        return fact instanceof Handing handing ? new HandingWords().sentence(handing) : "";
    }

    private String ofBuild(Fact fact) {
        if (fact instanceof Fact.Started started) {
            return "Rebuild" + (started.engine().isEmpty() ? "" : " of " + started.engine())
                    + " begun; the engine was found " + started.found().words() + ".";
        }
        if (fact instanceof Fact.BookChanged changed) {
            return "The engine book was changed." + and(changed.why());
        }
        if (fact instanceof Fact.Noted note) {
            return "Note" + on(note.on()) + ": " + Sentence.of(note.text().strip());
        }
        if (fact instanceof Fact.Photographed photo) {
            return "Photo" + on(photo.on()) + "." + and(photo.caption());
        }
        if (fact instanceof Fact.TimeSpent time) {
            return "Time spent" + on(time.on()) + ": " + time.minutes() + " min.";
        }
        if (fact instanceof Fact.ChanceTaken taken) {
            return String.format(
                    Locale.ROOT,
                    "The chance that a part is wrong is taken as %.1f %% for parts that are %s.",
                    100 * taken.chance(),
                    taken.origin().words());
        }
        if (fact instanceof Fact.Corrected correction) {
            return "An entry was wrong and no longer counts." + and(correction.why())
                    + correction
                            .instead()
                            .map(instead -> " Instead: " + sentence(instead))
                            .orElse("");
        }
        throw new IllegalStateException("no sentence for " + fact.getClass().getSimpleName());
    }

    private static String sizes(Map<String, String> sizes) {
        return sizes.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(size -> sizeName(size.getKey()) + " " + size.getValue())
                .collect(Collectors.joining(", "));
    }

    private String on(String id) {
        return id.isEmpty() ? "" : " on " + naming.name(id);
    }

    private static String read(String reading) {
        return reading.isEmpty() ? "" : ", read " + reading;
    }
}
