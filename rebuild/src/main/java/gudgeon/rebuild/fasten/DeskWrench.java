package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Adapter;
import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a wrench can be trusted for and is to be set to, asked at the desk without a build. */
public final class DeskWrench {
    private DeskWrench() {}

    /**
     * What was asked, as typed.
     *
     * @param range what the wrench's scale spans
     * @param torque the torque wanted at the fastener
     * @param adapter length of an adapter; empty without one
     * @param angle angle of the adapter to the wrench in degrees; empty for in line
     * @param arm length of the wrench from drive to grip; empty where there is no adapter
     */
    public record Asked(String range, String torque, String adapter, String angle, String arm) {}

    /**
     * The setting.
     *
     * @throws Unanswerable with all that can't be used
     */
    public static WrenchSetting of(Asked asked) throws Unanswerable {
        List<String> faults = new ArrayList<>();
        OwnWrenches read =
                OwnWrenches.of(List.of(new WrenchKept("wrench", asked.range(), "", OptionalDouble.empty(), "")));
        faults.addAll(read.faults());
        Optional<WrittenTorque> torque =
                WrittenTorque.of(asked.torque(), TorqueUnit.NEWTON_METRE).filter(one -> one.nm() > 0);
        if (torque.isEmpty()) {
            faults.add("The torque '" + asked.torque() + "' can't be used; write it as '9 N.m' or '80 lbf.in'.");
        }
        Optional<Adapter> adapter = adapter(asked, faults);
        if (torque.isEmpty() || !faults.isEmpty()) {
            throw new Unanswerable(faults);
        }
        return new WrenchSetting(read.all().get(0), torque.get().nm(), adapter);
    }

    private static Optional<Adapter> adapter(Asked asked, List<String> faults) {
        if (asked.adapter().isBlank()) {
            return Optional.empty();
        }
        OptionalDouble length = size(Unit.MM, asked.adapter(), "adapter", faults);
        OptionalDouble angle =
                asked.angle().isBlank() ? OptionalDouble.of(0) : size(Unit.DEGREES, asked.angle(), "angle", faults);
        if (asked.arm().isBlank()) {
            faults.add(
                    "With an adapter the length of the wrench is needed, from the middle of its drive to the middle of its grip.");
            return Optional.empty();
        }
        OptionalDouble arm = size(Unit.MM, asked.arm(), "length of the wrench", faults);
        if (length.isEmpty() || angle.isEmpty() || arm.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Adapter(length.getAsDouble(), angle.getAsDouble(), arm.getAsDouble()));
        } catch (IllegalArgumentException impossible) {
            faults.add(
                    "With an adapter of these sizes the wrench turns nothing; the adapter is shorter than the wrench and both are longer than 0 mm.");
            return Optional.empty();
        }
    }

    private static OptionalDouble size(Unit unit, String text, String what, List<String> faults) {
        TypedSize typed = TypedSize.of(unit, text, 1);
        if (typed instanceof TypedSize.Read read) {
            return OptionalDouble.of(read.value());
        }
        faults.add("The " + what + " '" + text + "' can't be used. " + ((TypedSize.Refused) typed).sentence());
        return OptionalDouble.empty();
    }
}
