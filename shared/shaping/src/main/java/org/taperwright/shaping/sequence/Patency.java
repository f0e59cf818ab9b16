package org.taperwright.shaping.sequence;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

/**
 * A small instrument passed a little beyond the working length, once, to keep the end of the canal open.
 *
 * @param instrument the catalogue entry used
 * @param beyondMm how far beyond the working length its tip goes, mm
 * @param note free text
 */
public record Patency(ThingId instrument, double beyondMm, String note) implements Step {
    @Override
    public String word() {
        return "patency";
    }

    @Override
    public Optional<ThingId> uses() {
        return Optional.of(instrument);
    }

    @Override
    public double depthMm(double workingLengthMm) {
        return workingLengthMm + beyondMm;
    }

    @Override
    public Patency at(double depthMm) {
        return this;
    }

    @Override
    public Patency deeper(double mm) {
        return this;
    }

    @Override
    public Patency using(UnaryOperator<ThingId> other) {
        return new Patency(other.apply(instrument), beyondMm, note);
    }

    @Override
    public Optional<InstrumentStep> worked(double workingLengthMm, Motion motion) {
        return Optional.of(new InstrumentStep(
                instrument, depthMm(workingLengthMm), motion, Optional.empty(), Optional.empty(), 1, note));
    }
}
