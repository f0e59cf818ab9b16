package org.taperwright.mechanics.properties.torsion;

import java.util.Optional;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.contour.PlainOutline;
import org.taperwright.mechanics.properties.mesh.MeshFineness;
import org.taperwright.mechanics.properties.mesh.SectionMesh;

/**
 * Torsion constant and peak shear of a contour, on the first mesh that fits it.
 *
 * @param constant J, in d^4
 * @param peakShear c in {@code tau_max = c T / d^3}
 */
public record TorsionAnalysis(double constant, double peakShear) {
    private static final int MOST_CORNERS = 60;
    /** Corners and tight arcs up to which each gets the finest elements; with more the elements there grow in proportion. */
    private static final int CROWD = 20;
    /** In diameters. */
    private static final double TIGHT = 0.03;

    private static final double[] FINER = {1, 0.6, 0.35};

    /**
     * The analysis, or nothing for a contour that crosses itself. A jagged contour is first made plain enough for a mesh
     * of about a thousand elements, and its notches share what fineness there is. What the mesh tells is J / A^2, taken with the section's exact area: where the mesh is
     * plainer than the outline, Saint-Venant's {@code J <= A^2 / 2 pi} then still holds.
     *
     * @param area the section's area, in d^2
     */
    public static Optional<TorsionAnalysis> of(Contour given, double area) {
        Contour contour = PlainOutline.of(given, MOST_CORNERS);
        int crowd = crowd(contour);
        MeshFineness fineness = MeshFineness.TORSION.crowded(Math.max(1.0, (double) crowd / CROWD));
        // finer elements do not help where dozens of notches crowd, and take long
        double[] factors = crowd > CROWD ? new double[] {1} : FINER;
        for (double factor : factors) {
            Optional<TorsionAnalysis> curved = on(contour, area, fineness.times(factor), true);
            if (curved.isPresent()) {
                return curved;
            }
        }
        Optional<TorsionAnalysis> straight = crowd > CROWD ? on(contour, area, fineness, false) : Optional.empty();
        return straight.or(() -> on(contour, area, fineness.times(FINER[1]), false));
    }

    private static int crowd(Contour contour) {
        int count = PlainOutline.corners(contour);
        for (int i = 0; i < contour.size(); i++) {
            if (contour.circular(i) && contour.radius(i) < TIGHT) {
                count++;
            }
        }
        return count;
    }

    private static Optional<TorsionAnalysis> on(Contour contour, double area, MeshFineness fineness, boolean bent) {
        return SectionMesh.of(contour, fineness, bent)
                .flatMap(TorsionSolution::on)
                .map(solution -> new TorsionAnalysis(
                        solution.constant() * Math.pow(area / solution.area(), 2), solution.peakShear()))
                .filter(analysis -> analysis.constant > 0 && Double.isFinite(analysis.peakShear));
    }
}
