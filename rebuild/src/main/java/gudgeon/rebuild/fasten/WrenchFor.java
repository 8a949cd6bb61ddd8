package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Adapter;
import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The wrench that was taken for a joint, held against the torques that the joint is to have.
 *
 * @param joint the joint
 * @param chosen the entry that says which was taken, and its setting
 * @param wanted each of the joint's holes that has a torque of the maker's
 * @param wrenches the person's wrenches
 */
public record WrenchFor(JointNow joint, Told<WrenchChosen> chosen, List<HoleTorque> wanted, OwnWrenches wrenches) {
    /** Two torques that differ by less are the same: a wrench's step and a rounded conversion (common practice, no source). */
    private static final double SAME = 0.03;
    /** A number set is the one read if it differs by less: a person rounds it to the wrench's scale (common practice, no source). */
    private static final double ROUNDED = 0.04;

    public WrenchFor {
        wanted = List.copyOf(wanted);
    }

    /** That of a joint; empty where none was taken. */
    public static Optional<WrenchFor> of(Build build, JointNow joint) {
        return joint.wrench()
                .map(chosen -> new WrenchFor(
                        joint,
                        chosen,
                        HoleTorque.all(joint).stream()
                                .filter(torque -> torque.maker().isPresent()
                                        && torque.wantedNm().orElse(0) > 0)
                                .toList(),
                        OwnWrenches.of(build)));
    }

    /** The wrench, if the person has told of it. */
    public Optional<OwnWrench> wrench() {
        return wrenches.named(chosen.fact().wrench());
    }

    /** The adapter on it, if its arm is known. */
    public Optional<Adapter> adapter() {
        return WrenchSetting.adapter(chosen.fact());
    }

    /** What it was set to, if it was; a bare number is in the unit of its scale. */
    public Optional<WrittenTorque> setting() {
        return WrittenTorque.of(
                chosen.fact().setting(), wrench().map(OwnWrench::unit).orElse(TorqueUnit.NEWTON_METRE));
    }

    /** Why it can't be trusted for any of the torques, or for what it was set to; a sentence. */
    public Optional<String> distrust() {
        return wrench().flatMap(own -> {
            List<WrenchSetting> settings = wanted.isEmpty()
                    ? setting().filter(set -> set.nm() > 0).stream()
                            .map(set -> new WrenchSetting(own, set.nm(), Optional.empty()))
                            .toList()
                    : wanted.stream().map(torque -> setting(own, torque)).toList();
            return settings.isEmpty() || settings.stream().anyMatch(WrenchSetting::isTrusted)
                    ? Optional.empty()
                    : Optional.of(settings.get(0).distrust());
        });
    }

    /** The person's wrenches that can be trusted for all of the torques. */
    public List<OwnWrench> better() {
        return wrenches.all().stream()
                .filter(own -> !wanted.isEmpty()
                        && wanted.stream()
                                .allMatch(torque ->
                                        own.range().trusts(torque.wantedNm().orElseThrow())))
                .toList();
    }

    /** That the number set is one of the torques in another unit; a sentence. */
    public Optional<String> mixed() {
        if (wanted.stream().anyMatch(this::isMet) || isForAPass() || isAdapterForgotten()) {
            return Optional.empty();
        }
        return setting()
                .flatMap(set -> wanted.stream()
                        .flatMap(torque -> Arrays.stream(TorqueUnit.values())
                                .filter(unit -> unit != set.unit())
                                .filter(unit -> isRead(neededNm(torque), unit.toNm(set.value()))
                                        || isRead(torque.wantedNm().orElseThrow(), unit.toNm(set.value())))
                                .map(unit -> mixed(set, unit, torque)))
                        .findFirst());
    }

    private static String mixed(WrittenTorque set, TorqueUnit unit, HoleTorque torque) {
        return "Set to " + set.words() + ", which is " + WrittenTorque.newtonMetres(set.nm()) + "; wanted is "
                + WrittenTorque.newtonMetres(torque.wantedNm().orElseThrow()) + ", which is "
                + HoleTorque.in(unit, torque.wantedNm().orElseThrow()) + ".";
    }

    /** Whether there is an adapter that changes the arm, and the setting is as if there were none. */
    public boolean isAdapterForgotten() {
        double length = chosen.fact().adapterMm().orElse(0);
        boolean square =
                Math.abs(Math.cos(Math.toRadians(chosen.fact().adapterDeg().orElse(0)))) < SAME;
        return length > 0
                && !square
                && wanted.stream().noneMatch(this::isMet)
                && setting()
                        .filter(set -> wanted.stream()
                                .anyMatch(torque -> isRead(torque.wantedNm().orElseThrow(), set.nm())))
                        .isPresent();
    }

    /** Whether it is set to just the share of a pass before the last. */
    private boolean isForAPass() {
        double gain = adapter().map(Adapter::gain).orElse(1.0);
        return setting()
                .filter(set -> Tightness.of(joint).passes().stream()
                        .anyMatch(pass -> wanted.stream()
                                .anyMatch(torque ->
                                        isSame(pass.share() * torque.wantedNm().orElseThrow(), set.nm() * gain))))
                .isPresent();
    }

    /** Whether the fastener gets what it is to have, as near as the maker wants it. */
    private boolean isMet(HoleTorque torque) {
        boolean unknownArm =
                chosen.fact().adapterMm().orElse(0) > 0 && adapter().isEmpty();
        double gain = adapter().map(Adapter::gain).orElse(1.0);
        return !unknownArm
                && setting()
                        .filter(set ->
                                Math.abs(set.nm() * gain - torque.wantedNm().orElseThrow()) <= torque.withinNm() + 1e-9)
                        .isPresent();
    }

    /** What the wrench is to be set to for each of the torques, as a person reads it. */
    public String rightSettings() {
        TorqueUnit unit = wrench().map(OwnWrench::unit)
                .or(() -> setting().map(WrittenTorque::unit))
                .orElse(TorqueUnit.NEWTON_METRE);
        return wanted.stream()
                .map(torque -> HoleTorque.in(unit, neededNm(torque)))
                .distinct()
                .collect(Collectors.joining(" or "));
    }

    /** What the fastener gets with an adapter, as a person reads it. */
    public String givesWords(Adapter adapter) {
        return setting()
                .map(set -> HoleTorque.newtonMetres(adapter.givesNm(set.nm())))
                .orElse("what nobody knows");
    }

    private WrenchSetting setting(OwnWrench own, HoleTorque torque) {
        return new WrenchSetting(own, torque.wantedNm().orElseThrow(), adapter());
    }

    private double neededNm(HoleTorque torque) {
        double nm = torque.wantedNm().orElseThrow();
        return adapter().map(one -> one.settingNm(nm)).orElse(nm);
    }

    private static boolean isRead(double read, double set) {
        return Math.abs(read - set) <= ROUNDED * read;
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= SAME * one;
    }
}
