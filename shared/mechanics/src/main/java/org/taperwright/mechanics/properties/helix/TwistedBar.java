package org.taperwright.mechanics.properties.helix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.properties.solve.Equations;

/** A bar of one section, solved once so that its stiffness is known at any twist up to about five. */
public final class TwistedBar {
    /** Twist about which displacements are expanded; the middle of what instruments have. */
    private static final double CENTRE = 2.5;

    /** Derivatives by the twist that hold the factors to 1e-4 from no twist up to five. */
    private static final int STEADY_ORDERS = 3;

    private static final int TURNING_ORDERS = 4;

    private static final Field EXTENSION = Field.real(1, 0, 0, 0);
    private static final Field CURVATURE_X = Field.real(0, 1, 0, 0);
    private static final Field CURVATURE_Y = Field.real(0, 0, 1, 0);
    private static final Field TWIST = Field.real(0, 0, 0, 1);
    /** A curvature fixed in space, {@code g = -(X + i Y)}, and what wavers about it twice a turn. */
    private static final Field BENDING = new Field(new double[] {0, -1, 0, 0}, new double[] {0, 0, -1, 0});

    private static final Field WAVER = new Field(new double[] {0, -1, 0, 0}, new double[] {0, 0, 1, 0});
    private static final List<Field> WITH_BENDING = List.of(EXTENSION, WAVER, TWIST);
    private static final List<Field> FREE_LENGTH = List.of(EXTENSION, CURVATURE_X, CURVATURE_Y);
    private static final List<Field> CURVATURES = List.of(CURVATURE_X, CURVATURE_Y);

    private final ReducedScrew steady;
    private final ReducedScrew turning;
    private final SurfaceStress steadyStress;
    private final SurfaceStress turningStress;

    private TwistedBar(SectionMesh mesh, Equations equations, double poisson, Projection still, Projection once) {
        steady = still.reduced(CENTRE);
        turning = once.reduced(CENTRE);
        steadyStress = new SurfaceStress(mesh, equations, still.displacements(), 0, poisson);
        turningStress = new SurfaceStress(mesh, equations, once.displacements(), 1, poisson);
    }

    /** Solves on a mesh; nothing where its elements are too flat for that. */
    public static Optional<TwistedBar> on(SectionMesh mesh, double poisson) {
        ElementIntegrals[] integrals = new ElementIntegrals[mesh.elements()];
        for (int e = 0; e < integrals.length; e++) {
            integrals[e] = new ElementIntegrals(mesh, e);
        }
        int pivot = nearestToAxis(mesh);
        int arm = farthestAlongX(mesh, pivot);
        Equations equations = new Equations(mesh, 3, unknown -> unknown / 3 == pivot || unknown == 3 * arm + 1);
        List<Field> straight = new StraightDisplacements(mesh, equations, pivot, arm).all(integrals, poisson);
        Screw still = new Screw(mesh, integrals, equations, poisson, 0, CENTRE);
        Screw once = new Screw(mesh, integrals, equations, poisson, 1, CENTRE);
        Optional<List<Screw.Image>> steady = Expansion.of(still, List.of(EXTENSION, TWIST), CURVATURES, STEADY_ORDERS);
        Optional<List<Screw.Image>> turning = Expansion.of(once, List.of(BENDING), WITH_BENDING, TURNING_ORDERS);
        if (steady.isEmpty() || turning.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TwistedBar(
                mesh,
                equations,
                poisson,
                new Projection(still, joined(still, straight, steady.get())),
                new Projection(once, joined(once, straight, turning.get()))));
    }

    private static List<Screw.Image> joined(Screw screw, List<Field> straight, List<Screw.Image> expanded) {
        List<Screw.Image> all = new ArrayList<>();
        for (Field displacement : straight) {
            Field own = Field.zero(screw.size(), screw.complex());
            own.add(1, 0, displacement);
            all.add(screw.image(own));
        }
        all.addAll(expanded);
        return all;
    }

    private static int nearestToAxis(SectionMesh mesh) {
        int best = 0;
        for (int node = 1; node < mesh.corners(); node++) {
            if (Math.hypot(mesh.x(node), mesh.y(node)) < Math.hypot(mesh.x(best), mesh.y(best))) {
                best = node;
            }
        }
        return best;
    }

    private static int farthestAlongX(SectionMesh mesh, int pivot) {
        int best = pivot;
        for (int node = 0; node < mesh.corners(); node++) {
            if (Math.abs(mesh.x(node) - mesh.x(pivot)) > Math.abs(mesh.x(best) - mesh.x(pivot))) {
                best = node;
            }
        }
        return best;
    }

    /**
     * Stiffness at a twist, in E and diameters.
     *
     * @param bending moment per mean curvature
     * @param torsion torque per twist at free length
     * @param torsionHeld torque per twist at held length
     * @param extension force per extension with the ends kept from turning
     * @param extensionUnbent the same with the axis kept straight, which at no twist is the area
     * @param coupling torque per extension with the ends kept from turning
     */
    public record Stiffness(
            double bending,
            double torsion,
            double torsionHeld,
            double extension,
            double extensionUnbent,
            double coupling) {}

    /** The stiffness at a twist; nothing where rounding spoils it. */
    public Optional<Stiffness> stiffness(double t) {
        return turning.at(t).flatMap(bent -> steady.at(t).map(still -> stiffness(bent, still)));
    }

    private static Stiffness stiffness(ReducedScrew.Relaxed bent, ReducedScrew.Relaxed still) {
        Field pulled = still.under(EXTENSION, CURVATURES).force();
        double extension = EXTENSION.dotRe(pulled);
        double coupling = TWIST.dotRe(pulled);
        double torsion = TWIST.dotRe(still.under(TWIST, CURVATURES).force());
        return new Stiffness(
                BENDING.dotRe(bent.under(BENDING, WITH_BENDING).force()) / 2,
                torsion - coupling * coupling / extension,
                torsion,
                extension,
                EXTENSION.dotRe(still.under(EXTENSION, List.of()).force()),
                coupling);
    }

    /**
     * Peak stress on the surface at a twist.
     *
     * @param bendingAxial greatest axial stress per bending moment
     * @param bendingVonMises greatest von Mises stress per bending moment
     * @param torsionShear greatest von Mises stress over the root of three, per torque at free length
     */
    public record Stress(double bendingAxial, double bendingVonMises, double torsionShear) {}

    /** The peak stress at a twist; nothing where rounding spoils it. */
    public Optional<Stress> stress(double t) {
        return turning.at(t).flatMap(bent -> steady.at(t).map(still -> stress(t, bent, still)));
    }

    private Stress stress(double t, ReducedScrew.Relaxed turned, ReducedScrew.Relaxed still) {
        ReducedScrew.State bent = turned.under(BENDING, WITH_BENDING);
        ReducedScrew.State twisted = still.under(TWIST, FREE_LENGTH);
        double moment = BENDING.dotRe(bent.force()) / 2;
        double torque = TWIST.dotRe(twisted.force());
        SurfaceStress.Peak bending = turningStress.peak(t, bent);
        SurfaceStress.Peak torsion = steadyStress.peak(t, twisted);
        return new Stress(
                bending.axial() / moment, bending.vonMises() / moment, torsion.vonMises() / (Math.sqrt(3) * torque));
    }
}
