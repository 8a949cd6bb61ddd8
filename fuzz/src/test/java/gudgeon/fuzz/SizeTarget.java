package gudgeon.fuzz;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.book.TypedAngle;
import gudgeon.rebuild.book.TypedDwell;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.TypedSpark;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.fasten.SheetOfPaper;
import gudgeon.rebuild.fasten.WrittenTorque;
import gudgeon.rebuild.measure.Spoken;
import gudgeon.rebuild.source.Money;
import gudgeon.rebuild.source.Money.NotMoney;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** One text held to every reader of sizes, angles, torques and money. What is read is finite, and the same when it was written. */
public final class SizeTarget {
    private static final int DECIMALS = 12;
    private static final double LARGEST_WRITTEN = 999_999_999;
    private static final double OF_THREE_FIGURES = 0.005;

    private SizeTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        for (Unit unit : Unit.values()) {
            size(unit, text, 1);
            TypedSize.quantity(unit, text)
                    .ifPresent(read -> Promise.kept(
                            Double.isFinite(read.value()) && read.standardUncertainty() >= 0, "no size: " + read));
            Promise.kept(!Spoken.of(text, unit).isEmpty() || text.isEmpty(), "said as nothing");
        }
        size(Unit.MM, text, 25.4);
        angle(text);
        spark(text);
        TypedDwell.deg(text).ifPresent(deg -> Promise.kept(deg > 0 && deg < 360, "a dwell of " + deg));
        Promise.sentence(TypedDwell.refusal(text));
        money(text);
        for (TorqueUnit unit : TorqueUnit.values()) {
            WrittenTorque.of(text, unit).ifPresent(SizeTarget::torque);
        }
        SheetOfPaper.of(text)
                .ifPresent(sheet -> Promise.same(
                        Optional.of(sheet.widthMm()),
                        SheetOfPaper.of(sheet.widthMm() + " x " + sheet.heightMm())
                                .map(SheetOfPaper::widthMm),
                        "the sheet"));
    }

    private static void size(Unit unit, String text, double bareMm) {
        if (TypedSize.of(unit, text, bareMm) instanceof TypedSize.Read read) {
            double value = read.value();
            Promise.kept(Double.isFinite(value), "a size without end: " + value);
            BigDecimal written = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
            if (Math.abs(value) <= LARGEST_WRITTEN) {
                again(unit, written.toPlainString() + " " + unit.symbol(), written);
                again(unit, written.toPlainString().replace('.', ',') + " " + unit.symbol(), written);
            }
        } else if (TypedSize.of(unit, text, bareMm) instanceof TypedSize.Refused refused) {
            Promise.sentence(refused.sentence());
        }
    }

    private static void again(Unit unit, String written, BigDecimal value) {
        Promise.same(new TypedSize.Read(value.doubleValue()), TypedSize.of(unit, written, 1), written);
    }

    private static void angle(String text) {
        TypedAngle angle = TypedAngle.of(text);
        if (angle instanceof TypedAngle.Refused refused) {
            Promise.sentence(refused.sentence());
        } else if (angle instanceof TypedAngle.Bare bare) {
            Promise.kept(bare.deg() >= 0 && bare.deg() < 720, "an angle of " + bare.deg());
        } else if (angle instanceof TypedAngle.From from) {
            Promise.kept(Math.abs(from.deg()) <= TypedAngle.FARTHEST_DEG, "an angle of " + from.deg());
        }
    }

    private static void spark(String text) {
        TypedSpark spark = TypedSpark.of(text);
        if (spark instanceof TypedSpark.Refused refused) {
            Promise.sentence(refused.sentence());
        } else if (spark instanceof TypedSpark.Degrees degrees) {
            Promise.kept(Math.abs(degrees.beforeDeg()) <= 90, "a spark at " + degrees);
        } else if (spark instanceof TypedSpark.Piston piston) {
            Promise.kept(Double.isFinite(piston.gaugeMm()) && piston.gaugeMm() >= 0, "a spark at " + piston);
        }
    }

    private static void money(String text) {
        try {
            Money money = Money.of(text);
            Promise.same(money, Money.of(money.words()), "the price");
        } catch (NotMoney refused) {
            Promise.sentence(refused.sentence());
        }
    }

    private static void torque(WrittenTorque torque) {
        Promise.kept(Double.isFinite(torque.nm()) && torque.nm() >= 0, "no torque: " + torque);
        double again = WrittenTorque.of(torque.words(), TorqueUnit.NEWTON_METRE)
                .map(WrittenTorque::nm)
                .orElse(Double.NaN);
        boolean near = Math.abs(again - torque.nm()) <= torque.nm() * OF_THREE_FIGURES + 1e-9;
        Promise.kept(near || torque.value() > LARGEST_WRITTEN, torque.words() + " reads back as " + again + " N.m");
    }
}
