package org.taperwright.sequencer.scene;

import java.util.List;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.Opening;

/**
 * How lengths turn into pixels: along the canal so that it fills the scene's width, across it so that the widest diameter
 * fills a lane.
 *
 * @param left x where the drawing begins, right of the labels, px
 * @param right x where the drawing ends, px
 * @param fromMm depth at the left end, mm from the coronal reference point
 * @param pixelsPerMm along the canal
 * @param acrossPixelsPerMm across the canal
 */
record SceneScale(double left, double right, double fromMm, double pixelsPerMm, double acrossPixelsPerMm) {
    private static final double ABOVE_ORIFICE_MM = 1;
    private static final double BELOW_END_MM = 1;
    /** Room right of the deepest point for the words at the working length, px. */
    private static final double BELOW_END_PX = 96;
    /** Pixels per mm from which on there is room to spare. */
    private static final double ROOMY = 30;

    private static final double LEAST_WIDEST_MM = 0.6;

    /** The scale for what is shown. */
    static SceneScale of(SceneContent content, SceneLayout layout) {
        double left = layout.left();
        double right = layout.right();
        Canal canal = content.canal();
        double from = canal.coronalReferenceMm() - ABOVE_ORIFICE_MM;
        double to = canal.coronalReferenceMm() + Math.max(canal.lengthMm(), canal.endDepthMm());
        for (LaneContent lane : content.lanes()) {
            to = Math.max(to, lane.depthMm());
        }
        double room = Math.max(1, right - left);
        double along = room / Math.max(1, to + BELOW_END_MM - from);
        double withWords = (room - BELOW_END_PX) / Math.max(1, to - from);
        along = withWords < ROOMY ? along : Math.min(along, withWords);
        return new SceneScale(left, right, from, along, layout.silhouette() / widestMm(content));
    }

    private static double widestMm(SceneContent content) {
        double widest = LEAST_WIDEST_MM;
        List<Opening> openings = content.canal().openings();
        for (Opening opening : openings) {
            widest = Math.max(widest, opening.wideMm());
        }
        CanalGeometry canal = new CanalGeometry(content.canal());
        for (LaneContent lane : content.lanes()) {
            double level = Math.max(0, canal.depthOfMm(lane.depthMm()) + ABOVE_ORIFICE_MM);
            double atLeftEnd = lane.instrument()
                    .map(instrument -> instrument.design().diameterMm(level))
                    .orElse(0.0);
            widest = Math.max(widest, atLeftEnd);
        }
        return widest;
    }

    /** Pixel of a depth from the coronal reference point. */
    double x(double depthMm) {
        return left + (depthMm - fromMm) * pixelsPerMm;
    }

    /** Depth, from the coronal reference point, at a pixel. */
    double depthMm(double x) {
        return fromMm + (x - left) / pixelsPerMm;
    }

    /** Depth at the right end. */
    double toMm() {
        return depthMm(right);
    }

    /** How many times diameters are drawn larger than lengths. */
    double exaggeration() {
        return acrossPixelsPerMm / pixelsPerMm;
    }
}
