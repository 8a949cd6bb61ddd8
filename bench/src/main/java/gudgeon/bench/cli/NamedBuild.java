package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.store.shelf.Shelf;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The one build that a command is about. */
final class NamedBuild {
    @Parameters(paramLabel = "BUILD", arity = "0..1", description = "a build on the shelf")
    private @Nullable String id;

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    /** The build. */
    Build build() {
        return asked.build(id());
    }

    /** The text of the engine book that counts for it. */
    String bookText() {
        return asked.bookText(id());
    }

    /** Its id on the shelf; empty where files tell it. */
    Optional<String> id() {
        return Optional.ofNullable(id);
    }

    /** The shelf that builds stand on, to keep something on it. */
    Shelf shelf() {
        return asked.shelf();
    }
}
