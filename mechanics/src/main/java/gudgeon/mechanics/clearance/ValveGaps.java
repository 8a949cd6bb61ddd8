package gudgeon.mechanics.clearance;

import java.util.Optional;

/**
 * The gaps of one valve.
 *
 * @param bore how far the piston could rise along the bore before it touches the valve
 * @param valve how far the valve could be opened further along its stem before it touches the crown
 * @param nearest the least distance between the two bodies
 * @param side the least distance between the valve's edge and the wall of its pocket; empty when the edge never comes down
 *     into a pocket
 * @param wall the least distance between the valve's edge and the bore's wall
 */
public record ValveGaps(Gap bore, Gap valve, Gap nearest, Optional<Gap> side, Gap wall) {}
