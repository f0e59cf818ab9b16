package org.taperwright.mechanics.alloy;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Stress against strain under loading without return, of straight stretches: Young's modulus up to the first break, then
 * another tangent modulus, and so on, in tension and in compression each with breaks of its own.
 *
 * <pre>sigma = E eps + sum D_k max(0, eps - a_k)         in tension
 * sigma = E eps - sum D_k max(0, -eps - a_k)        in compression</pre>
 *
 * with the change D_k of the tangent modulus at the break a_k &gt; 0.
 *
 * @param youngMpa tangent modulus at no strain, MPa
 * @param tension breaks and tangent moduli in tension
 * @param compression the same in compression, strains taken positive
 */
public record StressCurve(double youngMpa, Branch tension, Branch compression) {
    /**
     * One side of the curve.
     *
     * @param breaks strains at which the tangent modulus changes, positive and rising
     * @param moduli tangent modulus beyond each break, MPa, none negative
     */
    public record Branch(double[] breaks, double[] moduli) {
        public Branch {
            breaks = breaks.clone();
            moduli = moduli.clone();
            double last = 0;
            for (int i = 0; i < breaks.length; i++) {
                if (!(breaks[i] > last) || !(moduli[i] >= 0)) {
                    throw new IllegalArgumentException("breaks must rise and moduli not be negative");
                }
                last = breaks[i];
            }
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Branch branch
                    && Arrays.equals(breaks, branch.breaks)
                    && Arrays.equals(moduli, branch.moduli);
        }

        @Override
        public int hashCode() {
            return 31 * Arrays.hashCode(breaks) + Arrays.hashCode(moduli);
        }

        @Override
        public String toString() {
            return "breaks " + Arrays.toString(breaks) + ", moduli " + Arrays.toString(moduli);
        }

        /** A side that follows Hooke's law without end. */
        public static Branch elastic() {
            return new Branch(new double[0], new double[0]);
        }

        /** Number of breaks. */
        public int count() {
            return breaks.length;
        }

        /** Strain at a break. */
        public double strain(int k) {
            return breaks[k];
        }

        /** Change of the tangent modulus at a break, MPa. */
        public double change(int k, double youngMpa) {
            return moduli[k] - (k == 0 ? youngMpa : moduli[k - 1]);
        }

        private double stress(double strain, double youngMpa) {
            double stress = youngMpa * strain;
            for (int k = 0; k < breaks.length && strain > breaks[k]; k++) {
                stress += change(k, youngMpa) * (strain - breaks[k]);
            }
            return stress;
        }
    }

    /** The same on both sides. */
    public static StressCurve symmetric(double youngMpa, Branch branch) {
        return new StressCurve(youngMpa, branch, branch);
    }

    /** Stress at a strain, MPa. */
    public double stressMpa(double strain) {
        return strain >= 0 ? tension.stress(strain, youngMpa) : -compression.stress(-strain, youngMpa);
    }
}
