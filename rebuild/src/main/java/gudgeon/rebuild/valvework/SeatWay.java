package gudgeon.rebuild.valvework;

import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import java.util.List;

/**
 * A way to go on that a person may draw as an option: the entries that would draw it.
 *
 * @param drawn the option
 * @param lines what it does, position by position
 */
public record SeatWay(OptionDrawn drawn, List<OptionLine> lines) {
    public SeatWay {
        lines = List.copyOf(lines);
    }
}
