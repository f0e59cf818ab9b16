package org.taperwright.mechanics.cutting;

import java.util.List;
import org.taperwright.mechanics.design.Motion;

/**
 * A blade at work on a wall under the standard side force, per mm of engaged length.
 *
 * @param motion the motion
 * @param edges each edge
 * @param depthMm depth to which the edges sink in, mm
 * @param perPassMm3 volume removed in one turn (reciprocation: one to-and-fro; filing: one stroke), mm³
 * @param perJouleMm3 volume removed per joule, mm³/J
 * @param perSecondMm3 volume removed at the standard speed, mm³/s
 * @param roomFilled share of the flutes' room that the loose chips of one pass fill, at most 1: what has no room stays
 * @param landShare share of the side force that the lands carry
 */
public record CuttingResult(
        Motion motion,
        List<EdgeAtWork> edges,
        double depthMm,
        double perPassMm3,
        double perJouleMm3,
        double perSecondMm3,
        double roomFilled,
        double landShare) {
    public CuttingResult {
        edges = List.copyOf(edges);
    }
}
