package gudgeon.store.device;

import gudgeon.store.disk.Reason;
import gudgeon.store.shelf.ContentHash;
import gudgeon.store.shelf.ShelfFault;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * The devices that were let in, kept in a file of the data folder so that a restart keeps them in. A device is told apart by a token
 * of 256 random bits, of which only the hash is kept: whoever reads the file can't come in with it. As the token is not to be
 * guessed, a hash without salt is enough, and finding it in a map tells nothing by the time that takes.
 */
public final class Devices {
    /** How long a device stays in without being seen. */
    public static final Duration LONGEST_AWAY = Duration.ofDays(90);
    /** How far the time kept may lag behind, so that not every request writes to the disk. */
    public static final Duration SEEN_WITHIN = Duration.ofMinutes(10);
    /** More devices than this are not let in. */
    public static final int MOST = 200;

    private static final int TOKEN_BYTES = 32;

    private final DevicesFile file;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, LetIn> byHash = new LinkedHashMap<>();
    private final Map<String, Instant> written = new LinkedHashMap<>();

    private Devices(DevicesFile file, List<LetIn> known) {
        this.file = file;
        known.forEach(device -> {
            byHash.put(device.tokenHash(), device);
            written.put(device.id(), device.lastSeen());
        });
    }

    /**
     * Those of a data folder.
     *
     * @throws ShelfFault if the file that lists them can't be read
     */
    public static Devices in(Path dataFolder) {
        DevicesFile file = new DevicesFile(dataFolder.resolve("devices.json"));
        return new Devices(file, file.read());
    }

    /** What speaks against letting a device in under a name, a sentence; empty if nothing does. */
    public synchronized Optional<String> against(String name) {
        String plain = name.strip();
        if (plain.isEmpty()
                || plain.length() > LetIn.LONGEST_NAME
                || plain.codePoints().anyMatch(Character::isISOControl)) {
            return Optional.of("Give the device a name of 1 to " + LetIn.LONGEST_NAME
                    + " letters, such as whose it is and what: Ann's phone.");
        }
        if (byHash.values().stream().anyMatch(device -> device.name().equalsIgnoreCase(plain))) {
            return Optional.of("A device called '" + plain
                    + "' is let in already. Give this one another name, or put the other out on the laptop first.");
        }
        return byHash.size() >= MOST
                ? Optional.of(
                        MOST + " devices are let in already. Put one out on the laptop that is not used any more.")
                : Optional.empty();
    }

    /**
     * Lets a device in.
     *
     * @param name one that nothing speaks {@link #against}
     * @return its token, which is not kept here
     * @throws ShelfFault if it can't be written down; then it is not let in
     */
    public synchronized String letIn(String name, Instant at) {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        LetIn device = new LetIn(UUID.randomUUID().toString(), name.strip(), ContentHash.of(token), at, at);
        List<LetIn> with = new ArrayList<>(byHash.values());
        with.add(device);
        file.write(with);
        byHash.put(device.tokenHash(), device);
        written.put(device.id(), at);
        return token;
    }

    /** The device that shows a token, and is seen now; empty if it is not let in. */
    public synchronized Optional<LetIn> showing(String token, Instant now) {
        String hash = ContentHash.of(token);
        LetIn device = byHash.get(hash);
        if (device == null || device.lastSeen().plus(LONGEST_AWAY).isBefore(now)) {
            return Optional.empty();
        }
        LetIn seen = device.seen(now);
        byHash.put(hash, seen);
        if (written.getOrDefault(device.id(), device.since()).plus(SEEN_WITHIN).isBefore(now)) {
            written.put(device.id(), now);
            noteSeen();
        }
        return Optional.of(seen);
    }

    /** When a device was seen is worth no refusal: a full disk must not shut out who may be in. */
    private void noteSeen() {
        try {
            file.write(all());
        } catch (ShelfFault notNow) {
            // written down with the next device that is let in or put out
        }
    }

    /** All that are let in, the one let in last first. */
    public synchronized List<LetIn> all() {
        List<LetIn> all = new ArrayList<>(byHash.values());
        all.sort((one, other) -> other.since().compareTo(one.since()));
        return all;
    }

    /**
     * Puts a device out; its token is worth nothing from now on.
     *
     * @param id its id
     * @return whether there was one
     * @throws ShelfFault if that can't be written down; then it is still put out until the next start
     */
    public synchronized boolean putOut(String id) {
        boolean found = byHash.values().removeIf(device -> device.id().equals(id));
        written.remove(id);
        if (found) {
            file.write(all());
        }
        return found;
    }

    /** What could not be done with the file, as a fault. */
    static ShelfFault fault(String what, Path file, IOException cause) {
        return new ShelfFault(
                "The list of devices that are let in, " + file + ", could not be " + what + ": " + Reason.of(cause)
                        + ". See that the disk has room and that you may write there.",
                cause);
    }
}
