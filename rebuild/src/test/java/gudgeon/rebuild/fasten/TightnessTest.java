package gudgeon.rebuild.fasten;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Loosened;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.WitnessMarked;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TightnessTest {
    @Test
    void saysWhatIsLeftAtWhichPassAfterAnInterruption() {
        List<String> order =
                Order.of(TarnJoints.joint(TarnJoints.COVER, List.of())).holes();
        List<Fact> facts = new ArrayList<>();
        order.forEach(hole -> facts.add(tightened(hole, 1, "4.5 N.m")));
        order.subList(0, 3).forEach(hole -> facts.add(tightened(hole, 2, "9 N.m")));
        Tightness tightness = Tightness.of(TarnJoints.joint(TarnJoints.COVER, facts));
        assertThat(tightness.isHalfDone()).isTrue();
        assertThat(tightness.isTight()).isFalse();
        assertThat(tightness.sentence())
                .isEqualTo("3 of 11 holes have had pass 2, to full torque. Next is " + order.get(3) + ".");
    }

    @Test
    void looseningBeginsAnew() {
        List<Fact> facts = List.of(
                tightened("cover-right-top", 1, "4.5 N.m"),
                new WitnessMarked(TarnJoints.COVER, List.of("cover-right-top")),
                new Loosened(TarnJoints.COVER, "a washer was left out"));
        JointNow joint = TarnJoints.joint(TarnJoints.COVER, facts);
        assertThat(joint.hole("cover-right-top").orElseThrow().pass()).isZero();
        assertThat(Tightness.of(joint).isHalfDone()).isFalse();
    }

    @Test
    void theMakersOrderWins() {
        JointNow joint = TarnJoints.joint("head-joint", List.of());
        assertThat(Order.of(joint).source()).isEqualTo(Order.Source.COMPUTED);
        assertThat(Order.of(joint).loosening().get(0))
                .isEqualTo(Order.of(joint).holes().get(3));
        List<String> makers =
                List.of("head-nut-bottom-left", "head-nut-top-right", "head-nut-top-left", "head-nut-bottom-right");
        JointNow ordered = withSequence(joint, makers);
        assertThat(Order.of(ordered).holes()).containsExactlyElementsOf(makers);
        assertThat(Order.of(ordered).source()).isEqualTo(Order.Source.MAKER);
    }

    @Test
    void whatWasMeasuredOverlaysTheBook() {
        JointNow joint = TarnJoints.joint(
                TarnJoints.COVER,
                List.of(
                        new HoleMeasured(TarnJoints.COVER, "cover-right-top", "", "22.5 mm ± 0.2", "", ""),
                        new JointMapped(
                                TarnJoints.COVER,
                                List.of(),
                                Map.of("cover-right-top", new Point(80, 107)),
                                "by numbers"),
                        new Lubricated(TarnJoints.COVER, Lubrication.OILED)));
        HoleNow top = joint.hole("cover-right-top").orElseThrow();
        assertThat(top.stack().orElseThrow().value()).isEqualTo(22.5);
        assertThat(top.depth().orElseThrow().value()).isEqualTo(18);
        assertThat(top.thread()).isEqualTo("M6");
        assertThat(top.at()).contains(new Point(80, 107));
        assertThat(joint.lubricated()).contains(Lubrication.OILED);
    }

    private static Tightened tightened(String hole, int pass, String torque) {
        return new Tightened(TarnJoints.COVER, hole, pass, torque, "", "");
    }

    private static JointNow withSequence(JointNow joint, List<String> sequence) {
        Joint book = joint.book();
        return new JointNow(
                new Joint(
                        book.id(),
                        book.name(),
                        book.order(),
                        sequence,
                        book.shape(),
                        book.outline(),
                        book.torque(),
                        book.lubricated(),
                        book.passes(),
                        book.gasket(),
                        book.warps(),
                        book.again(),
                        book.note(),
                        book.holes(),
                        book.where()),
                joint.outline(),
                joint.holes(),
                joint.mapped(),
                joint.lubricated(),
                joint.wrench(),
                joint.tightenedAgain(),
                joint.loose());
    }
}
