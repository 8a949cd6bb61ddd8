package gudgeon.rebuild.start;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StartRound;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.start.StartItem.Kind;
import gudgeon.rebuild.start.StartItem.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What this build's own journal leaves open before the first start. It hangs on the build and on the alarms that stand in it.
 *
 * @param items all of it, by kind; nothing stands in it twice
 * @param round what was said since something last came off
 */
public record StartList(List<StartItem> items, StartRound round) {
    public StartList {
        items = List.copyOf(items);
    }

    /**
     * That of a build.
     *
     * @param alarms the alarms that stand in it
     */
    public static StartList of(Build build, List<Alarm> alarms) {
        StartRound round = StartRound.of(build);
        BeforeStart before = BeforeStart.of(build);
        List<StartItem> items = new ArrayList<>(new ChecksToSee(build, before).items());
        items.addAll(new WorkToSee(build, before).items());
        items.addAll(JointsToSee.items(build, before));
        items.addAll(new PointsToSee(build, round).items());
        Set<String> told = new HashSet<>(items.stream().map(StartItem::id).toList());
        alarms.stream()
                .filter(alarm ->
                        alarm.severity() == Alarm.Severity.STOP && !alarm.kind().isOfTheStart())
                .filter(alarm -> alarm.at().isEmpty() || !told.contains(alarm.at()))
                .map(StartList::item)
                .forEach(items::add);
        items.sort(Comparator.comparing(StartItem::kind));
        return new StartList(items, round);
    }

    private static StartItem item(Alarm alarm) {
        return new StartItem(
                Kind.ALARM,
                alarm.at().isEmpty() ? alarm.kind().key() : alarm.at(),
                alarm.what(),
                alarm.todo(),
                Standing.OPEN,
                true,
                alarm.evidence(),
                List.of());
    }

    /** Those of a kind, in the book's order. */
    public List<StartItem> of(Kind kind) {
        return items.stream().filter(item -> item.kind() == kind).toList();
    }

    /** Those over which the start is not to be signed without a reason. */
    public List<StartItem> holding() {
        return items.stream().filter(StartItem::holds).toList();
    }

    /** Those that are open and only to be looked at. */
    public List<StartItem> toLookAt() {
        return items.stream()
                .filter(item -> item.standing().isOpen() && !item.stops())
                .toList();
    }

    /** The signature that a person gives now; it keeps what is open. */
    public StartSigned signature(String by, String reason) {
        return new StartSigned(by, holding().stream().map(StartItem::name).toList(), reason);
    }

    /** Where it stands, a sentence. */
    public String sentence() {
        if (round.signed().isPresent()) {
            StartSigned signed = round.signed().get().fact();
            return "Signed by " + signed.by()
                    + (signed.open().isEmpty()
                            ? ", with nothing open."
                            : ", with " + Amount.of(signed.open().size(), "point")
                                    + " open, and the reason written down.");
        }
        int holding = holding().size();
        return holding == 0
                ? "Nothing is open. Sign before you start it."
                : Amount.of(holding, "point") + (holding == 1 ? " is" : " are")
                        + " open. It can't be signed before, except with a reason that the record keeps.";
    }
}
