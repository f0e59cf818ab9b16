package org.taperwright.shaping.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.RoundPlateau;

/** The slopes written out by hand against differences of the energy. */
class BendingSlopesTest {
    private static final int NODES = 12;
    private static final double STEP = 1e-6;

    @Test
    void slopesOfALinearRodAreThoseOfItsEnergy() {
        assertSlopes(MomentLaw.LINEAR);
    }

    @Test
    void slopesOfASuperelasticRodAreThoseOfItsEnergy() {
        assertSlopes(new RoundPlateau(50_000, 1_500, 25_000, 0.01, 0.06));
    }

    private static void assertSlopes(MomentLaw law) {
        Random random = new Random(7);
        Workspace w = new Workspace(NODES, 8);
        w.spacing = 0.5;
        w.tilt1 = 0.05;
        w.tilt2 = -0.03;
        for (int i = 0; i < NODES; i++) {
            w.kappa1[i] = 0.2 + 0.05 * random.nextGaussian();
            w.kappa2[i] = 0.1 * random.nextGaussian();
            w.change1[i] = 0.1 * random.nextGaussian();
            w.change2[i] = 0.1 * random.nextGaussian();
            w.stiffness[i] = 10 + i;
            w.half[i] = 0.2;
            w.push[i] = 0.3 * random.nextDouble();
            w.cell[i] = i == 0 ? w.spacing / 2 : i == NODES - 1 ? 0 : w.spacing;
            if (i > 0) {
                w.u[2 * i] = 0.1 * random.nextGaussian();
                w.u[2 * i + 1] = 0.1 * random.nextGaussian();
            }
        }
        Bending bending = new Bending(w, law);
        w.clearEquations();
        double energy = bending.assemble(w.u);
        assertThat(energy).isEqualTo(bending.energy(w.u), within(1e-12 * Math.abs(energy)));
        for (int j = 2; j < 2 * NODES; j++) {
            double here = w.u[j];
            w.u[j] = here + STEP;
            double above = bending.energy(w.u);
            w.u[j] = here - STEP;
            double below = bending.energy(w.u);
            w.u[j] = here;
            double expected = (above - below) / (2 * STEP);
            assertThat(w.slope[j - 2 + BandedCholesky.PAD])
                    .isEqualTo(expected, within(1e-5 * (1 + Math.abs(expected))));
        }
    }
}
