package org.taperwright.shaping.passage.stroke;

import java.util.Map;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.placement.Placement;

/**
 * One stroke.
 *
 * @param placement where the instrument lay in it
 * @param removedMm3 volume removed, by third
 * @param torque what turned it
 * @param engagedMm length of the working part, within the canal, that sank into the wall
 * @param roomFilled loose chips over the room in the flutes of the engaged length; above 1 they have no room (estimate)
 */
public record Stroke(
        Placement placement, Map<Third, Double> removedMm3, StrokeTorque torque, double engagedMm, double roomFilled) {
    public Stroke {
        removedMm3 = Third.ordered(removedMm3);
    }
}
