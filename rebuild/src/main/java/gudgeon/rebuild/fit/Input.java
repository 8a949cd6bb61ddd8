package gudgeon.rebuild.fit;

import gudgeon.mechanics.metrology.Quantity;

/**
 * One size that enters the trial fit.
 *
 * @param path its path in the book, such as {@code pistons.pattern.pockets.exhaust.depth}
 * @param label what a fitter calls it, such as "exhaust pocket depth"
 * @param unit "mm", "°" or "cm³"
 * @param quantity value and doubts in that unit
 * @param howMeasured how it was measured and with what, or that no doubt was stated; a sentence
 */
public record Input(String path, String label, String unit, Quantity quantity, String howMeasured) {}
