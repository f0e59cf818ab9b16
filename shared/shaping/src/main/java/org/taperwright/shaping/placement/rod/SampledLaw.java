package org.taperwright.shaping.placement.rod;

/**
 * A law known at even strains by {@code f} and {@code f'}: cubic between them, its energy the exact integral of those cubics, so
 * that moment and energy agree; straight beyond the last.
 */
public final class SampledLaw implements MomentLaw {
    private final double step;
    private final double[] moment;
    private final double[] slope;
    private final double[] energy;

    private SampledLaw(double step, double[] moment, double[] slope) {
        this.step = step;
        this.moment = moment;
        this.slope = slope;
        energy = new double[moment.length];
        for (int i = 1; i < moment.length; i++) {
            energy[i] = energy[i - 1]
                    + step * (moment[i - 1] + moment[i]) / 2
                    + step * step * (slope[i - 1] - slope[i]) / 12;
        }
    }

    /** A law sampled from another, up to a strain. */
    public static SampledLaw of(MomentLaw law, double greatest, int samples) {
        double step = greatest / (samples - 1);
        double[] moment = new double[samples];
        double[] slope = new double[samples];
        double[] answer = new double[3];
        for (int i = 0; i < samples; i++) {
            law.at(i * step, answer);
            moment[i] = answer[0];
            slope[i] = answer[1];
        }
        return new SampledLaw(step, moment, slope);
    }

    @Override
    public void at(double strain, double[] answer) {
        int below = (int) (strain / step);
        int last = moment.length - 1;
        if (below >= last) {
            double beyond = strain - last * step;
            answer[0] = moment[last] + slope[last] * beyond;
            answer[1] = slope[last];
            answer[2] = energy[last] + beyond * (moment[last] + slope[last] * beyond / 2);
            return;
        }
        double t = strain / step - below;
        double rise = moment[below + 1] - moment[below];
        double s0 = slope[below] * step;
        double s1 = slope[below + 1] * step;
        double c2 = 3 * rise - 2 * s0 - s1;
        double c3 = s0 + s1 - 2 * rise;
        answer[0] = moment[below] + t * (s0 + t * (c2 + t * c3));
        answer[1] = (s0 + t * (2 * c2 + 3 * t * c3)) / step;
        answer[2] = energy[below] + step * t * (moment[below] + t * (s0 / 2 + t * (c2 / 3 + t * c3 / 4)));
    }
}
