package org.taperwright.shaping.sequence;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

/** One step of a sequence. Depths are measured as working lengths are: from the coronal reference point, mm. */
public sealed interface Step permits InstrumentStep, Irrigation, Patency, Recapitulation {
    /** The word for its kind. */
    String word();

    /** The catalogue entry it uses; empty where it uses none. */
    Optional<ThingId> uses();

    /** How far its instrument or needle goes, mm, where the working length is so many millimetres. */
    double depthMm(double workingLengthMm);

    /** Free text. */
    String note();

    /** The same step to a depth; one whose depth follows from the working length stays as it is. */
    Step at(double depthMm);

    /** The same step so much deeper, mm; one whose depth follows from the working length stays as it is. */
    Step deeper(double mm);

    /** The same step with another catalogue entry in the place of the one it uses. */
    Step using(UnaryOperator<ThingId> other);

    /**
     * The step as an instrument's work in the canal; empty where no instrument works.
     *
     * @param motion that which the instrument is meant for, where the step names none
     */
    Optional<InstrumentStep> worked(double workingLengthMm, Motion motion);
}
