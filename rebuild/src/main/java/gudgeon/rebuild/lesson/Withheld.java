package gudgeon.rebuild.lesson;

import java.util.List;

/** Something that a build taught and that is not offered to the engine book, since it is not known to be true of the type. */
public record Withheld(String what, String why, List<Long> entries) implements Taught {
    public Withheld {
        entries = List.copyOf(entries);
    }
}
