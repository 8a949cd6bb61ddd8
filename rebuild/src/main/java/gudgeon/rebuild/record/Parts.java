package gudgeon.rebuild.record;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import gudgeon.rebuild.source.PartsList;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is in the engine, where it came from and what it cost. */
record Parts(Build build, Wish wish) {
    private static final String NOTHING = "–";

    List<Chapter> chapters() {
        List<Block.Row> rows = build.structure().positions().stream()
                .flatMap(position -> row(position).stream())
                .toList();
        List<Block> blocks = new ArrayList<>();
        if (!rows.isEmpty()) {
            List<String> heads = new ArrayList<>(List.of("Position", "Part", "Where it is from", "Count"));
            if (wish.prices()) {
                heads.add("Price of one");
            }
            blocks.add(new Block.Table("", heads, rows));
        }
        blocks.addAll(Extract.of(
                build, fact -> fact instanceof WorkSent || fact instanceof WorkBack || fact instanceof Returned));
        if (wish.prices() && build.size() > 0) {
            LocalDate last =
                    build.entry(build.size()).at().atZone(ZoneOffset.UTC).toLocalDate();
            blocks.add(new Block.Said(PartsList.of(build, last).account().sentence(), List.of()));
        }
        return List.of(new Chapter("parts", "Parts fitted", blocks));
    }

    private Optional<Block.Row> row(Position position) {
        Place place = build.place(position.id());
        if (place.fitted() == 0 || place.isOut()) {
            return Optional.empty();
        }
        Optional<Part> part = build.part(position.id(), place.part());
        List<String> cells = new ArrayList<>(List.of(
                position.name(),
                place.part().isEmpty() ? "the one that came off" : place.part(),
                place.part().isEmpty()
                        ? "this engine"
                        : part.flatMap(Part::origin).map(Origin::words).orElse("not said"),
                String.valueOf(place.count())));
        if (wish.prices()) {
            cells.add(price(position.id(), place.part()));
        }
        List<Long> entries = Stream.concat(
                        part.map(Part::entered).filter(entry -> entry > 0).stream(), Stream.of(place.fitted()))
                .toList();
        return Optional.of(new Block.Row(cells, entries));
    }

    /** As it was written when the part was entered, else when it was ordered. */
    private String price(String position, String part) {
        return Stream.concat(
                        build.told(PartEntered.class, position).stream()
                                .filter(told -> told.fact().part().equals(part))
                                .map(told -> told.fact().price()),
                        build.told(Ordered.class, position).stream()
                                .filter(told -> !part.isEmpty())
                                .map(told -> told.fact().price()))
                .filter(price -> !price.isEmpty())
                .reduce((earlier, later) -> later)
                .orElse(NOTHING);
    }
}
