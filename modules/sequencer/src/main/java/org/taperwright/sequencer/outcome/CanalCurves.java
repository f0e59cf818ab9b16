package org.taperwright.sequencer.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.WallAfter;
import org.taperwright.shaping.placement.ContactZone;
import org.taperwright.shaping.placement.ContactZones;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;

/**
 * Curves along the canal for one step, all over the depth from the coronal reference point: where the instrument leans on the wall in
 * its last stroke, the room left beside it, its strain, how deep it wore the wall, and the canal's outline before and after.
 */
public final class CanalCurves {
    private static final double NAMED_SHARE = 0.2;
    private static final SeriesLook INNER = new SeriesLook(0);
    private static final SeriesLook OUTER = new SeriesLook(1);
    private static final SeriesLook OTHER = new SeriesLook(2);

    private final Canal canal;
    private final StepOutcome step;
    private final Optional<WallAfter> earlier;
    private final Lumen before;
    private final Lumen after;
    private final double reference;

    /**
     * The curves of a step.
     *
     * @param canal the canal as it was before any step
     * @param earlier the wall as the step before left it; empty when none was made
     */
    public CanalCurves(Canal canal, StepOutcome step, Optional<WallAfter> earlier) {
        this.canal = canal;
        this.step = step;
        this.earlier = earlier;
        before = Lumen.of(canal, Mesh.FINE.spacingMm(), Mesh.FINE.directions());
        after = step.wall().open();
        reference = canal.coronalReferenceMm();
    }

    /** The net force of each stretch of contact: up on the wall inside the bend, down on the wall outside. */
    public Plot contact() {
        List<Plot.Curve> curves = new ArrayList<>();
        curves.add(level("", OTHER, 0));
        List<ContactZone> zones = zones();
        double greatest = zones.stream().mapToDouble(ContactZone::forceN).max().orElse(0);
        for (ContactZone zone : zones) {
            double sign = zone.side() == ContactZone.Side.OUTER ? -1 : 1;
            Plot.Spot tip = new Plot.Spot(reference + zone.depthMm(), sign * zone.forceN());
            SeriesLook look = look(zone.side());
            // small forces lie too near the line to be named: colour and marker tell their side
            String name = zone.forceN() >= NAMED_SHARE * greatest ? zone.side().word() : "";
            curves.add(new Plot.Curve("", look, Plot.Style.LINE, List.of(new Plot.Spot(tip.x(), 0), tip)));
            curves.add(new Plot.Curve(name, look, Plot.Style.SPOTS, List.of(tip)));
        }
        return Plot.of(along(), Plot.Axis.of("Force on the wall, inner up, outer down", "N"), curves);
    }

    /** The stretches of contact. */
    public List<ContactZone> zones() {
        return ContactZones.of(step.last(), Centreline.of(canal.pieces())).stream()
                .filter(zone -> zone.depthMm() >= 0)
                .toList();
    }

    /** Room between instrument and wall on either side of the bend. */
    public Plot gap() {
        Placement last = step.last();
        List<Plot.Spot> inner = new ArrayList<>();
        List<Plot.Spot> outer = new ArrayList<>();
        int half = after.directions().count() / 2;
        for (int i = 0; i < last.nodes(); i++) {
            double depth = last.depthMm(i);
            if (depth >= 0 && depth <= canal.lengthMm()) {
                int inside = step.wall().insideAt(depth);
                inner.add(new Plot.Spot(reference + depth, room(i, inside)));
                outer.add(new Plot.Spot(
                        reference + depth,
                        room(i, (inside + half) % after.directions().count())));
            }
        }
        return Plot.of(
                along(),
                Plot.Axis.of("Room beside the instrument", "mm"),
                List.of(
                        new Plot.Curve("inner", INNER, Plot.Style.LINE, inner),
                        new Plot.Curve("outer", OUTER, Plot.Style.LINE, outer)));
    }

    /** The strain of the outermost fibre along the blade within the canal. */
    public Plot strain() {
        Placement last = step.last();
        List<Plot.Spot> spots = new ArrayList<>();
        for (int i = 0; i < last.nodes(); i++) {
            if (last.depthMm(i) >= 0) {
                spots.add(new Plot.Spot(reference + last.depthMm(i), 100 * last.strain(i)));
            }
        }
        return Plot.of(
                along(),
                Plot.Axis.of("Strain of the blade", "%"),
                List.of(new Plot.Curve("", INNER, Plot.Style.LINE, spots)));
    }

    /** How deep this step wore the wall, on either side of the bend and where it wore deepest. */
    public Plot removed() {
        Lumen first = earlier.map(WallAfter::open).orElse(before);
        List<Plot.Spot> deepest = new ArrayList<>();
        List<Plot.Spot> inner = new ArrayList<>();
        List<Plot.Spot> outer = new ArrayList<>();
        for (int j = 0; j < after.stations(); j++) {
            double depth = after.depthMm(j);
            double innerBefore = earlier.map(wall -> wall.innerMm(depth)).orElse(0.0);
            double outerBefore = earlier.map(wall -> wall.outerMm(depth)).orElse(0.0);
            inner.add(new Plot.Spot(reference + depth, step.wall().innerMm(depth) - innerBefore));
            outer.add(new Plot.Spot(reference + depth, step.wall().outerMm(depth) - outerBefore));
            deepest.add(new Plot.Spot(reference + depth, deepestMm(first, j)));
        }
        return Plot.of(
                along(),
                Plot.Axis.of("Depth worn in this step", "mm"),
                List.of(
                        new Plot.Curve("deepest", OTHER, Plot.Style.THIN_LINE, deepest),
                        new Plot.Curve("inner", INNER, Plot.Style.LINE, inner),
                        new Plot.Curve("outer", OUTER, Plot.Style.LINE, outer)));
    }

    private double deepestMm(Lumen first, int station) {
        double deepest = 0;
        for (int k = 0; k < after.directions().count(); k++) {
            deepest = Math.max(deepest, after.radiusMm(station, k) - first.radiusMm(station, k));
        }
        return deepest;
    }

    /** The canal's outline in the plane of its sharpest bend, inside of the bend up. */
    public Plot inPlane() {
        return outline(0, "In the bend's plane, inside up");
    }

    /** The canal's outline seen from inside the bend, azimuth 90 degrees further up. */
    public Plot acrossPlane() {
        return outline(1, "Across the bend's plane");
    }

    private Plot outline(int quarters, String title) {
        int count = after.directions().count();
        int up = (bend() + quarters * count / 4) % count;
        int down = (up + count / 2) % count;
        Plot.Band above = new Plot.Band("worn", OUTER, edge(before, up, 1), edge(after, up, 1));
        Plot.Band below = new Plot.Band("worn, lower wall", OUTER, edge(after, down, -1), edge(before, down, -1));
        return new Plot(
                along(),
                Plot.Axis.of(title, "mm"),
                List.of(
                        new Plot.Curve("", OTHER, Plot.Style.THIN_LINE, edge(before, up, 1)),
                        new Plot.Curve("before", OTHER, Plot.Style.THIN_LINE, edge(before, down, -1)),
                        new Plot.Curve("after", INNER, Plot.Style.LINE, edge(after, up, 1)),
                        new Plot.Curve("", INNER, Plot.Style.LINE, edge(after, down, -1))),
                List.of(above, below),
                List.of());
    }

    private List<Plot.Spot> edge(Lumen lumen, int direction, int sign) {
        List<Plot.Spot> spots = new ArrayList<>();
        for (int j = 0; j < lumen.stations(); j++) {
            spots.add(new Plot.Spot(reference + lumen.depthMm(j), sign * lumen.radiusMm(j, direction)));
        }
        return spots;
    }

    /** The direction towards the inside of the sharpest bend; azimuth 0 in a straight canal. */
    private int bend() {
        double sharpest = 0;
        double at = 0;
        Centreline line = Centreline.of(canal.pieces());
        for (int j = 0; j < before.stations(); j++) {
            double curvature = Math.hypot(line.firstAt(before.depthMm(j)), line.secondAt(before.depthMm(j)));
            if (curvature > sharpest + 1e-12) {
                sharpest = curvature;
                at = before.depthMm(j);
            }
        }
        return sharpest > 0 ? step.wall().insideAt(at) : 0;
    }

    /** From where the instrument's circle meets a ray from the axis to where the wall does. */
    private double room(int node, int direction) {
        Placement last = step.last();
        double along = last.firstMm(node) * after.directions().cos(direction)
                + last.secondMm(node) * after.directions().sin(direction);
        double off = last.firstMm(node) * last.firstMm(node) + last.secondMm(node) * last.secondMm(node);
        double radius = last.radiusMm(node);
        double square = radius * radius - off + along * along;
        double reach = square >= 0 ? along + Math.sqrt(square) : along;
        int station = (int) Math.round(last.depthMm(node) / after.spacingMm());
        return after.radiusMm(Math.max(0, Math.min(after.stations() - 1, station)), direction) - reach;
    }

    private Plot.Axis along() {
        return Plot.Axis.of("Depth from reference", "mm", reference, reference + canal.lengthMm());
    }

    private Plot.Curve level(String name, SeriesLook look, double at) {
        return new Plot.Curve(
                name,
                look,
                Plot.Style.THIN_LINE,
                List.of(new Plot.Spot(reference, at), new Plot.Spot(reference + canal.lengthMm(), at)));
    }

    private static SeriesLook look(ContactZone.Side side) {
        return switch (side) {
            case INNER -> INNER;
            case OUTER -> OUTER;
            case ASIDE, STRAIGHT -> OTHER;
        };
    }
}
