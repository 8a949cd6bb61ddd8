package gudgeon.bench.web.shelf;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelfFault;
import gudgeon.store.shelf.ShelvedBuild;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** How a build is begun: the person's instruments go on to it from the one begun last. */
public record Beginning(Shelf shelf, Clock clock) {
    /** Letters of the longest name. */
    private static final int LONGEST_NAME = 80;

    /** What is wrong with the name of a build, a sentence; empty if nothing is. */
    public static Optional<String> refusalOf(String name) {
        return name.isEmpty() || name.length() > LONGEST_NAME
                ? Optional.of("Give the build a name of 1 to " + LONGEST_NAME
                        + " letters, such as the engine and its number.")
                : Optional.empty();
    }

    /**
     * Begins a build.
     *
     * @param name one against which there is no {@link #refusalOf}
     * @return its id
     * @throws gudgeon.store.shelf.ShelfFault if the book can't be used
     */
    public String of(String name, String book, Found found, String device) {
        List<InstrumentKept> instruments = newestInstruments();
        String id = shelf.start(name, book, found, device);
        if (!instruments.isEmpty()) {
            shelf.append(
                    id,
                    instruments.stream()
                            .map(kept -> new Entry(UUID.randomUUID().toString(), clock.instant(), device, 1, kept))
                            .toList());
        }
        return id;
    }

    private List<InstrumentKept> newestInstruments() {
        return shelf.builds().stream()
                .sorted(Comparator.comparing(ShelvedBuild::begun).reversed())
                .flatMap(newest -> sound(newest).stream())
                .findFirst()
                .map(Build::instruments)
                .orElse(List.of());
    }

    /** A build that is damaged keeps nobody from beginning another. */
    private Optional<Build> sound(ShelvedBuild shelved) {
        try {
            return shelf.build(shelved.id());
        } catch (ShelfFault damaged) {
            return Optional.empty();
        }
    }
}
