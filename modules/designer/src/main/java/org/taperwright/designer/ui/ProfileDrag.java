package org.taperwright.designer.ui;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.workbench.ui.QuantityKind;

/**
 * A handle of the profile on its way.
 *
 * @param before the design when the drag began
 * @param handle 0 at the tip, i at the end of segment i
 * @param top top of the diameter axis, held still meanwhile, mm
 * @param design the design as dragged so far
 */
record ProfileDrag(Design before, int handle, double top, Design design) {
    private static final double FARTHEST = 40;
    private static final double TAPER_STEP = 0.005;
    private static final double FINE_TAPER_STEP = 0.001;
    private static final double LEVEL_STEP = 0.5;
    private static final double FINE_LEVEL_STEP = 0.1;
    private static final double DIAMETER_STEP = 0.01;
    private static final QuantityKind DIAMETER = QuantityKind.diameter(0.06, 1.4, DIAMETER_STEP);
    private static final QuantityKind TAPER = QuantityKind.taper();

    ProfileDrag(Design before, int handle, double top) {
        this(before, handle, top, before);
    }

    /** Corners of the profile: tip, then the end of each segment, as level and diameter. */
    static List<Point2D> corners(Design design) {
        List<Point2D> corners = new ArrayList<>();
        double diameter = design.tipDiameterMm();
        corners.add(new Point2D.Double(0, diameter));
        for (TaperSegment segment : design.taper()) {
            diameter += segment.taper() * (segment.toMm() - segment.fromMm());
            corners.add(new Point2D.Double(segment.toMm(), diameter));
        }
        return corners;
    }

    /** Dragged to a level and diameter; values snap to round steps, or finer ones. */
    ProfileDrag to(double level, double diameter, boolean fine) {
        if (handle == 0) {
            double tip = within(DIAMETER, snapped(diameter, DIAMETER_STEP));
            return with(Designs.with(before).tipDiameterMm(tip).design());
        }
        double end = snapped(level, fine ? FINE_LEVEL_STEP : LEVEL_STEP);
        List<TaperSegment> moved = Tapers.withEnd(before.taper(), handle - 1, end, FARTHEST);
        TaperSegment segment = moved.get(handle - 1);
        double start = corners(before).get(handle - 1).getY();
        double raw = (diameter - start) / (segment.toMm() - segment.fromMm());
        double taper = within(TAPER, snapped(raw, fine ? FINE_TAPER_STEP : TAPER_STEP));
        return with(Designs.with(before)
                .taper(Tapers.withTaper(moved, handle - 1, taper))
                .design());
    }

    /** Moved by steps along the blade and upwards. */
    ProfileDrag stepped(int across, int up, boolean fine) {
        if (handle == 0) {
            double tip = within(DIAMETER, snapped(design.tipDiameterMm() + up * DIAMETER_STEP, DIAMETER_STEP));
            return with(Designs.with(design).tipDiameterMm(tip).design());
        }
        TaperSegment now = design.taper().get(handle - 1);
        double end = now.toMm() + across * (fine ? FINE_LEVEL_STEP : LEVEL_STEP);
        double step = fine ? FINE_TAPER_STEP : TAPER_STEP;
        double taper = within(TAPER, snapped(now.taper() + up * step, step));
        List<TaperSegment> moved = Tapers.withEnd(design.taper(), handle - 1, end, FARTHEST);
        return with(Designs.with(design)
                .taper(Tapers.withTaper(moved, handle - 1, up == 0 ? now.taper() : taper))
                .design());
    }

    /** Whether anything has changed. */
    boolean moved() {
        return !design.equals(before);
    }

    /** What the edit is called. */
    String name() {
        if (handle == 0) {
            return "Tip diameter to " + DIAMETER.write(design.tipDiameterMm());
        }
        TaperSegment now = design.taper().get(handle - 1);
        TaperSegment then = before.taper().get(handle - 1);
        if (now.toMm() == then.toMm()) {
            return TaperPart.taperName(handle - 1, now.taper());
        }
        String end = TaperPart.endName(handle - 1, now.toMm());
        return now.taper() == then.taper() ? end : end + ", taper " + TAPER.number(now.taper());
    }

    private ProfileDrag with(Design changed) {
        return new ProfileDrag(before, handle, top, changed);
    }

    private static double snapped(double value, double step) {
        return Math.round(Math.round(value / step) * step * 1e6) / 1e6;
    }

    private static double within(QuantityKind kind, double value) {
        return Math.max(kind.least(), Math.min(kind.most(), value));
    }
}
