package org.taperwright.shaping.placement.rod;

/**
 * A round bar of a trilinear stress-strain curve, the same in tension and compression: modulus E to the strain e1, E_p on to e2,
 * E_M beyond. With {@code c = e / strain} each change D of the modulus over E adds
 *
 * <pre>f:  D strain g,   g(c) = 16/pi int_c^1 (n - c) n sqrt(1 - n^2) dn
 * f': D 16/pi int_c^1 n^2 sqrt(1 - n^2) dn
 * F:  D strain^2 8/pi int_c^1 (n - c)^2 sqrt(1 - n^2) dn</pre>
 *
 * to {@code strain}, 1 and {@code strain^2 / 2}; all in closed form. Source: fibre integration over the circle.
 */
public final class RoundPlateau implements MomentLaw {
    private final double first;
    private final double second;
    private final double firstChange;
    private final double secondChange;

    /** A curve by its moduli, MPa, and the strains at which they change, {@code 0 < e1 < e2}. */
    public RoundPlateau(double youngMpa, double plateauMpa, double beyondMpa, double e1, double e2) {
        first = e1;
        second = e2;
        firstChange = (plateauMpa - youngMpa) / youngMpa;
        secondChange = (beyondMpa - plateauMpa) / youngMpa;
    }

    @Override
    public void at(double strain, double[] answer) {
        answer[0] = strain;
        answer[1] = 1;
        answer[2] = strain * strain / 2;
        add(strain, first, firstChange, answer);
        add(strain, second, secondChange, answer);
    }

    private static void add(double strain, double from, double change, double[] answer) {
        if (strain <= from) {
            return;
        }
        double c = from / strain;
        double root = Math.sqrt(1 - c * c);
        double beyond = Math.acos(c);
        double none = (beyond - c * root) / 2;
        double once = root * root * root / 3;
        // sin(4 asin c) = 4 c root (1 - 2 c^2)
        double twice = (beyond + c * root * (1 - 2 * c * c)) / 8;
        double scale = 16 / Math.PI * change;
        answer[0] += scale * strain * (twice - c * once);
        answer[1] += scale * twice;
        answer[2] += scale * strain * strain / 2 * (twice - 2 * c * once + c * c * none);
    }
}
