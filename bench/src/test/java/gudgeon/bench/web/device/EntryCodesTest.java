package gudgeon.bench.web.device;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.web.device.EntryCodes.Tried;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class EntryCodesTest {
    /** A clock that goes on only when told. */
    private static final class Told extends Clock {
        private Instant now = Instant.parse("2026-05-02T09:00:00Z");

        void goOn(Duration by) {
            now = now.plus(by);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    private final Told clock = new Told();
    private final EntryCodes codes = new EntryCodes(clock);

    private static String other(EntryCode code) {
        return code.digits().startsWith("1")
                ? "2" + code.digits().substring(1)
                : "1" + code.digits().substring(1);
    }

    @Test
    void aCodeIsGoodForMinutesAndForOneDevice() {
        EntryCode code = codes.issue();
        assertThat(code.digits()).matches("\\d{8}");
        assertThat(codes.attempt(" " + code.shown() + " ", "a")).isEqualTo(new Tried.Right(code));
        assertThat(codes.spend(code)).isTrue();
        assertThat(codes.spend(code)).as("twice").isFalse();
        assertThat(codes.attempt(code.digits(), "b")).isInstanceOf(Tried.Refused.class);
        EntryCode next = codes.issue();
        clock.goOn(EntryCodes.GOOD_FOR);
        assertThat(codes.attempt(next.digits(), "c")).isInstanceOf(Tried.Refused.class);
        assertThat(codes.spend(next)).isFalse();
    }

    @Test
    void aNewCodeMakesTheOneBeforeItVoid() {
        EntryCode first = codes.issue();
        codes.issue();
        assertThat(codes.attempt(first.digits(), "a")).isInstanceOf(Tried.Refused.class);
        assertThat(codes.spend(first)).isFalse();
    }

    @Test
    void anAddressThatGuessesWaits() {
        EntryCode code = codes.issue();
        for (int n = 0; n < EntryCodes.WRONG_FROM_AN_ADDRESS; n++) {
            codes.attempt(other(code), "a");
        }
        assertThat(codes.attempt(code.digits(), "a")).isInstanceOf(Tried.Refused.class);
        assertThat(codes.attempt(code.digits(), "b")).as("another").isInstanceOf(Tried.Right.class);
        clock.goOn(EntryCodes.REMEMBERED.plusSeconds(1));
        assertThat(codes.attempt(codes.issue().digits(), "a")).isInstanceOf(Tried.Right.class);
    }

    @Test
    void guessesFromManyAddressesMakeTheCodeVoid() {
        EntryCode code = codes.issue();
        for (int n = 0; n < EntryCodes.WRONG_FOR_A_CODE; n++) {
            codes.attempt(other(code), "address " + n);
        }
        assertThat(codes.wrongTries()).isEqualTo(EntryCodes.WRONG_FOR_A_CODE);
        assertThat(codes.current()).isEmpty();
        assertThat(codes.attempt(code.digits(), "b")).isInstanceOf(Tried.Refused.class);
    }
}
