package org.taperwright.shaping.canal;

import java.util.List;

/**
 * A root canal from the orifice (depth 0) to its end.
 *
 * @param name what people call it
 * @param pieces the centreline
 * @param openings at least two, by rising depth; linear between
 * @param root the root's outline, by rising depth; may be empty
 * @param coronalReferenceMm distance from the coronal reference point, where lengths are measured, to the orifice, mm
 * @param workingLengthMm distance from the reference point to where instrumentation ends, mm
 * @param source where the numbers come from and how they are known
 * @param note free text
 */
public record Canal(
        String name,
        List<CanalPiece> pieces,
        List<Opening> openings,
        List<RootOutline> root,
        double coronalReferenceMm,
        double workingLengthMm,
        String source,
        String note) {
    public Canal {
        pieces = List.copyOf(pieces);
        openings = List.copyOf(openings);
        root = List.copyOf(root);
    }

    /** Length of the centreline, mm. */
    public double lengthMm() {
        return pieces.stream().mapToDouble(CanalPiece::lengthMm).sum();
    }

    /** Depth, from the orifice, at which instrumentation ends, mm. */
    public double endDepthMm() {
        return workingLengthMm - coronalReferenceMm;
    }
}
