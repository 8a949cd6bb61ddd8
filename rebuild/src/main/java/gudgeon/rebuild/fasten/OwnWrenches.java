package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.mechanics.bolt.WrenchRange;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The person's torque wrenches.
 *
 * @param all those that can be used, in the order in which they came
 * @param faults what can't be read of the others, each a sentence
 */
public record OwnWrenches(List<OwnWrench> all, List<String> faults) {
    private static final String BETWEEN = "\\s+to\\s+|\\s*\u2013\\s*|(?<=[\\d\\s])-(?=[\\s\\d])";

    public OwnWrenches {
        all = List.copyOf(all);
        faults = List.copyOf(faults);
    }

    /** Those that a build's journal tells of; of one name, as it was said last. */
    public static OwnWrenches of(Build build) {
        Map<String, WrenchKept> kept = new LinkedHashMap<>();
        build.told(WrenchKept.class, Fastening.WRENCHES)
                .forEach(told -> kept.put(told.fact().wrench(), told.fact()));
        return of(List.copyOf(kept.values()));
    }

    /** Those that were taken down. */
    public static OwnWrenches of(List<WrenchKept> kept) {
        List<OwnWrench> all = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (WrenchKept one : kept) {
            read(one)
                    .ifPresentOrElse(
                            all::add,
                            () -> faults.add(
                                    "The range of the torque wrench '" + one.wrench()
                                            + "' can't be used: '" + one.range()
                                            + "'. Write the least and the most of its scale with their unit, such as '5 to 25 N.m'."));
        }
        return new OwnWrenches(all, faults);
    }

    /** The one of that name. */
    public Optional<OwnWrench> named(String name) {
        return all.stream().filter(one -> one.name().equals(name)).findFirst();
    }

    /** Those that can be trusted for a torque in N·m, the one in whose scale it lies highest first. */
    public List<OwnWrench> trustedFor(double nm) {
        return all.stream()
                .filter(one -> one.range().trusts(nm))
                .sorted((one, other) ->
                        Double.compare(one.range().mostNm(), other.range().mostNm()))
                .toList();
    }

    private static Optional<OwnWrench> read(WrenchKept kept) {
        String[] ends = kept.range().strip().split(BETWEEN, -1);
        if (ends.length > 2) {
            return Optional.empty();
        }
        Optional<WrittenTorque> most = WrittenTorque.of(ends[ends.length - 1], TorqueUnit.NEWTON_METRE);
        Optional<WrittenTorque> least = most.flatMap(top -> ends.length == 1
                ? Optional.of(new WrittenTorque(0, top.unit()))
                : WrittenTorque.of(ends[0], top.unit()));
        return most.flatMap(top -> least.filter(low -> low.nm() < top.nm())
                .map(low -> new OwnWrench(
                        kept.wrench(),
                        new WrenchRange(low.nm(), top.nm()),
                        top.unit(),
                        Stream.of(kept.step())
                                .flatMap(step -> WrittenTorque.of(step, top.unit()).stream())
                                .mapToDouble(WrittenTorque::nm)
                                .findFirst(),
                        usable(kept.errorPercent()))));
    }

    private static OptionalDouble usable(OptionalDouble percent) {
        return percent.isPresent() && percent.getAsDouble() > 0 ? percent : OptionalDouble.empty();
    }
}
