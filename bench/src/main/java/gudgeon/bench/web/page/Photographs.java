package gudgeon.bench.web.page;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact.Photographed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The photos of a build by what they were taken of. */
public final class Photographs {
    private final Build build;
    private final Frame frame;

    public Photographs(Build build, Frame frame) {
        this.build = build;
        this.frame = frame;
    }

    /** The photos of a position, step or check that still count, the newest first. */
    public List<Photographed> of(String id) {
        List<Long> numbers = new ArrayList<>(build.about(id));
        Collections.reverse(numbers);
        return numbers.stream()
                .filter(number -> !build.isCorrected(number))
                .map(number -> build.entry(number).fact())
                .filter(Photographed.class::isInstance)
                .map(Photographed.class::cast)
                .toList();
    }

    /** Where a photo is shown in full. */
    public String address(Photographed photo) {
        return frame.address() + "/photos/" + photo.photo();
    }

    /** Where its small copy is. */
    public String small(Photographed photo) {
        return address(photo) + "?small=1";
    }

    /** What a photo shows, for those who can't see it. */
    public String shows(Photographed photo) {
        String name = build.structure().name(photo.on());
        return "Photo of " + (name.isEmpty() ? "the engine" : name)
                + (photo.caption().isEmpty() ? "" : ": " + photo.caption());
    }
}
