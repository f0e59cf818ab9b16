package org.taperwright.mechanics.comparison.metrics;

import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.SampledMetric;
import org.taperwright.mechanics.comparison.Saying;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Torque at which the most strained fibre of the weakest free level breaks. */
public final class FractureTorque extends SampledMetric {
    /** For the service loader. */
    public FractureTorque() {
        super(new Declaration(
                "fracture-torque",
                "Torque at fracture",
                MetricGroup.TORSION,
                40,
                "N·mm",
                Direction.MORE,
                Standing.ESTIMATE,
                "Torque at which the weakest free level breaks in the twisting test.",
                "Twisting test after ISO 3630-1; torque-twist by the alloy's shear law; band from its constants"));
    }

    @Override
    public Optional<Saying> saying() {
        return Optional.of(Saying.of("snaps at", "the torque"));
    }

    @Override
    public Sampled sampled(Assessment assessment) {
        return assessment.twistingSpread().fractureTorqueNmm();
    }

    @Override
    public double value(Assessment assessment) {
        return assessment.twisting().fractureTorqueNmm();
    }
}
