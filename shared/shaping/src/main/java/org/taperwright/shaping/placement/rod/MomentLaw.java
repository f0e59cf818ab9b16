package org.taperwright.shaping.placement.rod;

/**
 * Bending moment by curvature, without dimensions: {@code M = (EI / R) f(k R)} with the radius R, so that {@code f'(0) = 1} and
 * {@code k R} is the strain of the outermost fibre in the elastic range. Bending energy per length is
 * {@code W = (EI / R^2) F(k R)}.
 */
public interface MomentLaw {
    /** Hooke's law: {@code f(e) = e}. */
    MomentLaw LINEAR = (strain, answer) -> {
        answer[0] = strain;
        answer[1] = 1;
        answer[2] = strain * strain / 2;
    };

    /** Writes {@code f}, {@code f'} and {@code F = int f} at a strain of 0 or more. */
    void at(double strain, double[] answer);
}
