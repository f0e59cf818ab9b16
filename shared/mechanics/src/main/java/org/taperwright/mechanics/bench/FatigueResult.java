package org.taperwright.mechanics.bench;

import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Reading;

/**
 * Turning in a curved tube up to fracture.
 *
 * @param tube the tube
 * @param motion rotation or reciprocation
 * @param speedRpm turns (or to-and-fro cycles) per minute
 * @param strainAmplitude strain amplitude of the outer fibre at the level that spends most
 * @param levelMm that level, mm from the tip
 * @param cycles cycles to fracture; {@link org.taperwright.mechanics.alloy.StrainLife#ENDURED} or more where the strain is endured
 * @param seconds cycles over speed
 * @param endures whether the strain lies below the endurance strain
 * @param extrapolated whether the strain lies outside what the alloy's source tested
 */
public record FatigueResult(
        Tube tube,
        Motion motion,
        double speedRpm,
        double strainAmplitude,
        double levelMm,
        Reading cycles,
        Reading seconds,
        boolean endures,
        boolean extrapolated) {}
