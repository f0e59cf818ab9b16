package org.taperwright.mechanics.comparison;

import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.uncertainty.Sampled;

/** Plug-in point: a row of the comparison. Register an implementation by a service line. */
public interface Metric {
    /** Identifier in JSON and on the command line. */
    String id();

    /** Name for people, sentence case. */
    String label();

    /** Group it stands in. */
    MetricGroup group();

    /** Place within the group, rising. */
    int order();

    /** Unit shown in the header; empty for a plain number. */
    String unit();

    /** Whether more is better, worse, or neither. */
    Direction direction();

    /** Standing of its values. */
    Standing standing();

    /** One sentence on what it is and the formula it comes from. */
    String explanation();

    /** Where the formula or its constants come from. */
    String source();

    /** How its ratio is said in a sentence; absent for what another metric says as well, or nobody would say. */
    default Optional<Saying> saying() {
        return Optional.empty();
    }

    /** The value for one design, with its band where the standing asks for one. */
    Reading read(Assessment assessment);

    /**
     * The value with what each sample of the uncertain constants makes of it, from which ratios get their bands; one that
     * hangs on none is known.
     */
    default Sampled sampled(Assessment assessment) {
        return Sampled.known(value(assessment));
    }

    /** The value alone, for where its band is not shown: nothing is sampled. */
    default double value(Assessment assessment) {
        return read(assessment).value();
    }

    /** The value alone of a design of which little else is wanted: as {@link #value} of its assessment, for less. */
    default OptionalDouble glance(Glance at) {
        return at.assessment().map(known -> OptionalDouble.of(value(known))).orElseGet(OptionalDouble::empty);
    }

    /** Which way a metric is wanted. */
    enum Direction {
        MORE,
        LESS,
        NEITHER
    }
}
