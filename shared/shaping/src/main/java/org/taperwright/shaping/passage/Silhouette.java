package org.taperwright.shaping.passage;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.TaperSegment;

/**
 * The working part of an instrument whose tip stands at a depth: its circle's diameter at every depth, linear between
 * {@link #knotsMm}. At level x from the tip it is {@code min(d(x), 2 x tan(angle / 2))}: the taper, which ISO 3630-1
 * projects to the tip, cut off by the conical tip. The shaft beyond the working part does not belong to it.
 *
 * @param design the instrument's design
 * @param tipDepthMm depth of the tip from the orifice, mm
 */
public record Silhouette(Design design, double tipDepthMm) {

    /** Depth at which the working part begins, towards the handle; may be above the orifice, mm. */
    public double fromMm() {
        return tipDepthMm - design.workingPartMm();
    }

    /** Diameter at a depth, mm; 0 where the working part does not reach. */
    public double diameterMm(double depthMm) {
        double level = tipDepthMm - depthMm;
        if (level < 0 || level > design.workingPartMm()) {
            return 0;
        }
        return Math.max(0, Math.min(design.diameterMm(level), tipConeMm(level)));
    }

    /** Depths at which the taper changes, and the working part's and the tip cone's ends, mm, in no order. */
    public List<Double> knotsMm() {
        List<Double> knots = new ArrayList<>();
        knots.add(tipDepthMm);
        for (TaperSegment segment : design.taper()) {
            knots.add(tipDepthMm - segment.toMm());
            double gapAtStart = design.diameterMm(segment.fromMm()) - tipConeMm(segment.fromMm());
            double gapAtEnd = design.diameterMm(segment.toMm()) - tipConeMm(segment.toMm());
            if (gapAtStart > 0 && gapAtEnd < 0) {
                double share = gapAtStart / (gapAtStart - gapAtEnd);
                double level = segment.fromMm() + share * (segment.toMm() - segment.fromMm());
                knots.add(tipDepthMm - level);
            }
        }
        return knots;
    }

    private double tipConeMm(double levelMm) {
        if (design.tip().angleDeg() >= 180) {
            return Double.MAX_VALUE;
        }
        return 2 * levelMm * Math.tan(Math.toRadians(design.tip().angleDeg()) / 2);
    }
}
