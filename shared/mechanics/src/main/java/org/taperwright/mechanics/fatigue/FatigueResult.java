package org.taperwright.mechanics.fatigue;

import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.uncertainty.Sampled;

/**
 * What turning in a tube does to an instrument.
 *
 * @param tube the tube
 * @param strain strain amplitude of the outer fibre at the level that spends most
 * @param levelMm that level, mm from the tip
 * @param life cycles to fracture with every sample of them
 * @param speedRpm speed that the time is reckoned at
 * @param extrapolated whether the strain or the motion lies outside what the source tested
 * @param source where the law comes from
 */
public record FatigueResult(
        Tube tube, double strain, double levelMm, Sampled life, double speedRpm, boolean extrapolated, String source) {
    /** Cycles to fracture. */
    public double cycles() {
        return life.value();
    }

    /** 5 to 95 % of them. */
    public Band band() {
        return life.band().orElseThrow();
    }

    /** Whether the middle estimate is that nothing breaks within the length of the tests. */
    public boolean unbroken() {
        return cycles() >= StrainLife.RUN_OUT;
    }

    /** Time to fracture at the speed, s: {@code N / speed}. */
    public double seconds() {
        return seconds(cycles());
    }

    /** The time's band, s. */
    public Band secondsBand() {
        return new Band(seconds(band().low()), seconds(band().high()));
    }

    private double seconds(double turns) {
        return turns / speedRpm * 60;
    }
}
