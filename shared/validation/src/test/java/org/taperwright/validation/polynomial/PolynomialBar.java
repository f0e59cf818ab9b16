package org.taperwright.validation.polynomial;

import java.util.List;
import org.taperwright.mechanics.properties.contour.AreaMoments;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.section.Outline;

/**
 * A uniformly twisted bar by the Ritz method with all polynomials to degree 12 for the three displacements. The rotational
 * symmetry of the outline leaves one part in n of the fields.
 */
public final class PolynomialBar {
    private final EnergyMatrix even;
    private final EnergyMatrix odd;
    private final double mean;
    private final double straight;

    /** A bar of a section. */
    public PolynomialBar(Outline outline, double poisson) {
        Contour contour = Contour.of(outline);
        AreaMoments moments = AreaMoments.of(contour);
        mean = 2 * moments.iMax() * moments.iMin() / (moments.iMax() + moments.iMin());
        HarmonicWeights weights = new HarmonicWeights(contour);
        even = new EnergyMatrix(
                weights,
                Fields.displacements(0, weights.fold()),
                List.of(Fields.extension(), Fields.torsion()),
                poisson);
        odd = new EnergyMatrix(weights, Fields.displacements(1, weights.fold()), List.of(Fields.bending()), poisson);
        straight = twisting(0);
    }

    private double twisting(double t) {
        double[][] axial = even.relaxed(t / 2);
        return axial[1][1] - axial[0][1] * axial[1][0] / axial[0][0];
    }

    /** Factor on the torsional stiffness at no axial force. */
    public double torsion(double t) {
        return twisting(t) / straight;
    }

    /** Factor on the bending stiffness; t above zero. In lengths of the radius second moments are 16 times as great. */
    public double bending(double t) {
        return odd.relaxed(t / 2)[0][0] / 2 / (16 * mean);
    }
}
