package org.taperwright.mechanics.cutting;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * A blade pressed against a wall by a side force of 1 N per mm and moved along it. All edges stand on one circle and sink in
 * equally, so with the force per depth s of each and the length {@code 1 / cos psi} of edge per mm of blade
 *
 * <pre>depth   delta = F cos psi / sum s
 * volume  V = delta * travel * sum of the edges' sweep, at most what finds room
 * energy  u(alpha_e) V + mu F (share of backs and lands) travel</pre>
 *
 * Flutes per mm decide which motion a blade suits: a turn sweeps {@code pi d} by each edge whatever the helix, a stroke S
 * sweeps {@code S tan psi}, which is S times the blade's circumference times its turns per mm. Standard motions (common practice,
 * no source): 300 turns a minute in rotation and while reciprocating by 150 degrees and back by 30, one turn a second in
 * reaming, two strokes of 2 mm a second in filing, of which one way cuts. Everything is an index: the order of blades
 * means something, the size does not.
 */
public final class CuttingTest {
    /** Side force, N per mm of engaged length. */
    public static final double SIDE_FORCE = 1;

    private static final double STROKE_MM = 2;
    private static final double FORWARD = 150.0 / 360;
    private static final double BACK = 30.0 / 360;

    private static final LatinHypercube CUBE = LatinHypercube.of(Dentine.NAMES);

    private CuttingTest() {}

    /** A blade at work in dentine of the usual constants. */
    public static CuttingResult run(CuttingGeometry blade, Motion motion) {
        return run(blade, motion, Dentine.usual());
    }

    /** A number of the result with what dentine's constants make of it. */
    public static Sampled sampled(CuttingGeometry blade, Motion motion, ToDoubleFunction<CuttingResult> number) {
        return CUBE.sample(
                number.applyAsDouble(run(blade, motion)),
                shares -> number.applyAsDouble(run(blade, motion, Dentine.at(shares))));
    }

    static CuttingResult run(CuttingGeometry blade, Motion motion, Dentine dentine) {
        double helix = Math.toRadians(blade.helixAngleDeg());
        List<EdgeAtWork> edges = blade.each().stream()
                .map(edge -> EdgeAtWork.of(edge, helix, motion, dentine))
                .toList();
        double stiffness = edges.stream().mapToDouble(EdgeAtWork::stiffnessMpa).sum();
        double room = blade.chipSpaceShare() * Math.PI / 4 * blade.diameterMm() * blade.diameterMm();
        if (edges.isEmpty() || stiffness <= 0 || room <= 0) {
            return new CuttingResult(motion, edges, 0, 0, 0, 0, 0, 0);
        }
        double depth = SIDE_FORCE * Math.cos(helix) / stiffness;
        double travel = travelMm(motion, blade.diameterMm());
        double swept = 0;
        double energy = 0;
        double rubbing = 0;
        double lands = 0;
        for (EdgeAtWork edge : edges) {
            double volume = depth * travel * edge.sweep();
            swept += volume;
            energy += volume * edge.energyMpa();
            rubbing += edge.backMpa() + edge.landMpa();
            lands += edge.landMpa();
        }
        double kept = Math.min(1, room / (dentine.loosening() * Math.max(swept, 1e-300)));
        double volume = kept * swept;
        double millijoules = kept * energy + dentine.friction() * SIDE_FORCE * rubbing / stiffness * travel;
        return new CuttingResult(
                motion,
                edges,
                depth,
                volume,
                millijoules > 0 ? 1000 * volume / millijoules : 0,
                volume * passesPerSecond(motion),
                dentine.loosening() * volume / room,
                lands / stiffness);
    }

    private static double travelMm(Motion motion, double diameterMm) {
        return switch (motion) {
            case ROTATION, REAMING -> Math.PI * diameterMm;
            case RECIPROCATION -> FORWARD * Math.PI * diameterMm;
            case FILING -> STROKE_MM;
        };
    }

    private static double passesPerSecond(Motion motion) {
        return switch (motion) {
            case ROTATION -> 5;
            case RECIPROCATION -> 5 / (FORWARD + BACK);
            case REAMING -> 1;
            case FILING -> 2;
        };
    }
}
