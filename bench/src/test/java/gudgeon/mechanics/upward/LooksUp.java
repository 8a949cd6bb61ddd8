package gudgeon.mechanics.upward;

import gudgeon.rebuild.fit.LengthUnit;
import java.nio.file.Path;

/** A class in the wrong storey, to prove that the rule can fail. */
public record LooksUp(LengthUnit unit, Path file) {}
