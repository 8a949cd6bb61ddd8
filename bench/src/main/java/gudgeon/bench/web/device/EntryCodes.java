package gudgeon.bench.web.device;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The code on the laptop's screen. There is one at a time; it is good for a few minutes and for one device. Wrong tries are counted
 * by address and for the code: at most {@value #WRONG_FOR_A_CODE} in a hundred million guesses, then it is void.
 */
public final class EntryCodes {
    /** How long a code is good for. */
    public static final Duration GOOD_FOR = Duration.ofMinutes(5);

    static final int WRONG_FOR_A_CODE = 20;
    static final int WRONG_FROM_AN_ADDRESS = 5;
    static final Duration REMEMBERED = Duration.ofMinutes(10);

    private static final int DIGITS = 8;
    private static final int BEYOND = 100_000_000;
    private static final int MOST_ADDRESSES = 1_000;

    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, List<Instant>> wrongFrom = new HashMap<>();
    private Optional<EntryCode> current = Optional.empty();
    private int wrong;

    public EntryCodes(Clock clock) {
        this.clock = clock;
    }

    /** What came of a try. */
    public sealed interface Tried {
        /** It is the code. It is used up only by {@link #spend}. */
        record Right(EntryCode code) implements Tried {}

        /** Why not, as a sentence. */
        record Refused(String sentence) implements Tried {}
    }

    /** A new code; the one before it is void. */
    public synchronized EntryCode issue() {
        String digits = String.format("%0" + DIGITS + "d", random.nextInt(BEYOND));
        EntryCode code = new EntryCode(digits, clock.instant().plus(GOOD_FOR));
        current = Optional.of(code);
        wrong = 0;
        return code;
    }

    /** The code that is good now, if there is one. */
    public synchronized Optional<EntryCode> current() {
        current = current.filter(code -> clock.instant().isBefore(code.until()) && wrong < WRONG_FOR_A_CODE);
        return current;
    }

    /** How often something else was typed since the code was made. */
    public synchronized int wrongTries() {
        return wrong;
    }

    /**
     * Tries what was typed.
     *
     * @param address where it came from
     */
    public synchronized Tried attempt(String typed, String address) {
        Instant now = clock.instant();
        wrongFrom
                .values()
                .forEach(times -> times.removeIf(time -> time.plus(REMEMBERED).isBefore(now)));
        wrongFrom.values().removeIf(List::isEmpty);
        boolean tooMany = wrongFrom.getOrDefault(address, List.of()).size() >= WRONG_FROM_AN_ADDRESS
                || (wrongFrom.size() >= MOST_ADDRESSES && !wrongFrom.containsKey(address));
        if (tooMany) {
            return new Tried.Refused("That was wrong too often from this device. Wait " + REMEMBERED.toMinutes()
                    + " minutes, then use a new code from the laptop.");
        }
        Optional<EntryCode> code = current();
        if (code.filter(good -> isSame(good.digits(), typed)).isPresent()) {
            return new Tried.Right(code.get());
        }
        wrong++;
        wrongFrom.computeIfAbsent(address, first -> new ArrayList<>()).add(now);
        return new Tried.Refused(
                "That is not the code that is good now. It is on the laptop's page Devices; it is good for "
                        + GOOD_FOR.toMinutes() + " minutes and for one device.");
    }

    /** Uses a code up; false if another device was quicker. */
    public synchronized boolean spend(EntryCode code) {
        boolean unused = current().filter(code::equals).isPresent();
        if (unused) {
            current = Optional.empty();
        }
        return unused;
    }

    /** In a time that does not tell how much of it was right. */
    private static boolean isSame(String digits, String typed) {
        return MessageDigest.isEqual(
                digits.getBytes(StandardCharsets.UTF_8),
                typed.replaceAll("[\\s-]", "").getBytes(StandardCharsets.UTF_8));
    }
}
