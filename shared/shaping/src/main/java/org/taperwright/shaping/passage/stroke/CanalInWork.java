package org.taperwright.shaping.passage.stroke;

import java.util.Map;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.WallSupport;

/**
 * A canal while it is being shaped: its open space, widened stroke by stroke. In a stroke the instrument is placed against the
 * wall as the last stroke left it, the wall giving way by wear where the instrument cuts; then the section at each station is
 * united with the instrument's circle there. Not safe for threads.
 */
public final class CanalInWork {
    /** Greatest move of an offset at which a placement has settled, mm: shaping needs no more. */
    private static final double SETTLED_MM = 1e-7;

    private final Canal canal;
    private final CanalGeometry geometry;
    private final Centreline line;
    private final Lumen before;
    private final Lumen now;
    private final WallSupport support;
    private final double[] perLength;
    private final double[] gained;

    private CanalInWork(Canal canal, double spacingMm, int angles) {
        this.canal = canal;
        geometry = new CanalGeometry(canal);
        line = Centreline.of(canal.pieces());
        before = Lumen.of(canal, spacingMm, angles);
        now = before.copy();
        support = WallSupport.of(now);
        perLength = new double[now.stations()];
        gained = new double[now.stations()];
        for (int j = 0; j < now.stations(); j++) {
            perLength[j] = now.volumePerLengthMm2(j, line);
        }
    }

    /** A canal that has no impossible fault, not yet shaped, with a wanted distance of stations and a number of directions. */
    public static CanalInWork of(Canal canal, double spacingMm, int angles) {
        return new CanalInWork(canal, spacingMm, angles);
    }

    /** The canal as it was given. */
    public Canal canal() {
        return canal;
    }

    /** Its measures by level before shaping. */
    public CanalGeometry geometry() {
        return geometry;
    }

    /** Its centreline, which stays. */
    public Centreline line() {
        return line;
    }

    /** Its open space before shaping. */
    public Lumen before() {
        return before;
    }

    /** Its open space as it now is. */
    public Lumen now() {
        return now;
    }

    /** Its wall as it now is. */
    public WallSupport support() {
        return support;
    }

    /** Volume as it now is, mm³. */
    public double volumeMm3() {
        return StationVolumes.whole(perLength, now.spacingMm());
    }

    /** Volume as it now is down to a depth, mm³. */
    public double volumeToMm3(double depthMm) {
        return StationVolumes.to(perLength, now.spacingMm(), depthMm);
    }

    /** Volume before shaping down to a depth, mm³. */
    public double volumeBeforeToMm3(double depthMm) {
        return StationVolumes.to(perLengthBefore(), before.spacingMm(), depthMm);
    }

    /** Volume before shaping by third, mm³. */
    public Map<Third, Double> volumeBeforeByThirdMm3() {
        return StationVolumes.byThird(perLengthBefore(), before.spacingMm(), geometry);
    }

    private double[] perLengthBefore() {
        double[] first = new double[before.stations()];
        for (int j = 0; j < first.length; j++) {
            first[j] = before.volumePerLengthMm2(j, line);
        }
        return first;
    }

    /** Volume as it now is by third, mm³. */
    public Map<Third, Double> volumeByThirdMm3() {
        return StationVolumes.byThird(perLength, now.spacingMm(), geometry);
    }

    /**
     * One stroke.
     *
     * @param solver the instrument's own
     * @param onwards whether the solver's last placement was in this canal and to this depth
     */
    public Stroke stroke(
            PlacementSolver solver,
            WorkingInstrument instrument,
            Setting setting,
            Movement movement,
            ShapingConstants constants,
            boolean onwards) {
        double wear = constants.wearPerMpa() * instrument.wearShare();
        Springs springs = new Springs(
                constants.springsMpaPerMm(), 2 * Math.PI * wear * movement.cuttingTurns(), wear * movement.slideMm());
        Placement placement = solver.place(line, support, springs, setting, SETTLED_MM, onwards);
        unite(placement, instrument);
        Map<Third, Double> removed = StationVolumes.byThird(gained, now.spacingMm(), geometry);
        StrokeTorque torque = TorqueSum.of(placement, now, gained, instrument, movement, constants);
        boolean[] engaged = engaged(placement, instrument);
        double length = 0;
        double room = 0;
        for (int i = 0; i < engaged.length; i++) {
            if (engaged[i]) {
                double spacing = placement.depthMm(1) - placement.depthMm(0);
                length += spacing;
                room += spacing * instrument.roomMm2At().applyAsDouble(placement.levelMm(i));
            }
        }
        double chips = WorkingInstruments.loosening()
                * removed.values().stream().mapToDouble(Double::doubleValue).sum();
        return new Stroke(placement, removed, torque, length, room > 0 ? chips / room : 0);
    }

    private void unite(Placement placement, WorkingInstrument instrument) {
        int node = 1;
        double tip = placement.depthMm(placement.nodes() - 1);
        for (int j = 0; j < now.stations(); j++) {
            double depth = now.depthMm(j);
            gained[j] = 0;
            if (depth > tip + 1e-9) {
                continue;
            }
            while (node < placement.nodes() - 1 && placement.depthMm(node) < depth - 1e-9) {
                node++;
            }
            double from = placement.depthMm(node - 1);
            double share = Math.min(1, (depth - from) / (placement.depthMm(node) - from));
            double level = between(placement.levelMm(node - 1), placement.levelMm(node), share);
            if (!instrument.rod().cuts(Math.max(0, level))) {
                continue;
            }
            boolean widened = now.unite(
                    j,
                    between(placement.firstMm(node - 1), placement.firstMm(node), share),
                    between(placement.secondMm(node - 1), placement.secondMm(node), share),
                    between(placement.radiusMm(node - 1), placement.radiusMm(node), share));
            if (widened) {
                renew(j);
            }
        }
    }

    private void renew(int station) {
        support.renew(now, station);
        double wider = now.volumePerLengthMm2(station, line);
        gained[station] = wider - perLength[station];
        perLength[station] = wider;
    }

    private static double between(double first, double second, double share) {
        return first + share * (second - first);
    }

    private static boolean[] engaged(Placement placement, WorkingInstrument instrument) {
        boolean[] engaged = new boolean[placement.nodes()];
        for (int i = 0; i < engaged.length; i++) {
            boolean within = placement.depthMm(i) >= -1e-9 && instrument.rod().cuts(placement.levelMm(i));
            engaged[i] = within && placement.engaged(i) > 0;
        }
        return engaged;
    }
}
