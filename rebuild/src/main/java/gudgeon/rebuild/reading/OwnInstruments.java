package gudgeon.rebuild.reading;

import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The person's instruments.
 *
 * @param all those that can be used, in the order in which they came
 * @param faults what can't be read of the others, each a sentence
 */
public record OwnInstruments(List<OwnInstrument> all, List<String> faults) {
    public OwnInstruments {
        all = List.copyOf(all);
        faults = List.copyOf(faults);
    }

    /** Those that were taken down. */
    public static OwnInstruments of(List<InstrumentKept> kept) {
        List<String> faults = new ArrayList<>();
        List<OwnInstrument> all = new ArrayList<>();
        kept.forEach(one -> new InstrumentText(one, faults).instrument().ifPresent(all::add));
        return new OwnInstruments(all, faults);
    }

    /** The one of that name. */
    public Optional<OwnInstrument> named(String name) {
        return all.stream().filter(one -> one.name().equals(name)).findFirst();
    }

    /** The micrometer with which a bore gauge would be set to a size in mm: the one with the least error that spans it. */
    public Optional<OwnInstrument> setting(double mm) {
        return all.stream()
                .filter(one -> one.kind() == InstrumentKind.MICROMETER && one.spans(mm))
                .min(Comparator.comparingDouble(one -> one.scale().error()));
    }
}
