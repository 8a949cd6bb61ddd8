package gudgeon.rebuild.build;

import java.time.Instant;

/**
 * A fact that counts, with the entry that tells it.
 *
 * @param number number of the entry, from 1
 * @param at when the entry was made
 * @param fact what it comes to
 */
public record Told<F>(long number, Instant at, F fact) {}
