package org.taperwright.comparer.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/**
 * A comparison computed, with the inputs it came from.
 *
 * @param members what was asked for
 * @param datum which of them ratios are taken against
 * @param results one for each member, absent where the design is no longer in the library
 * @param bands of each member that could be computed
 * @param comparison over the members that could be computed, in their order; absent when none could
 */
record Compared(
        List<Member> members,
        ThingId datum,
        List<Optional<AssessmentResult>> results,
        List<Optional<BenchBands>> bands,
        Optional<Comparison> comparison) {
    Compared {
        members = List.copyOf(members);
        results = List.copyOf(results);
        bands = List.copyOf(bands);
    }

    /** Whether these are the inputs it came from. */
    boolean cameFrom(List<Member> otherMembers, ThingId otherDatum) {
        return members.equals(otherMembers) && datum.equals(otherDatum);
    }

    /** Some of the members for an overlay: without the table, whose columns are all of them. */
    Compared only(Predicate<Member> wanted) {
        List<Integer> kept = IntStream.range(0, members.size())
                .filter(i -> wanted.test(members.get(i)))
                .boxed()
                .toList();
        return new Compared(
                kept.stream().map(members::get).toList(),
                datum,
                kept.stream().map(results::get).toList(),
                kept.stream().map(bands::get).toList(),
                Optional.empty());
    }

    /** The assessment of a member, if it could be computed. */
    Optional<Assessment> assessment(int member) {
        return results.get(member).flatMap(Compared::assessment);
    }

    /** The assessment in a result, if there is one. */
    static Optional<Assessment> assessment(AssessmentResult result) {
        return result instanceof AssessmentResult.Assessed assessed
                ? Optional.of(assessed.assessment())
                : Optional.empty();
    }

    /** What prevents a member from being computed; empty when nothing does or the design is gone. */
    List<Fault> faults(int member) {
        return results.get(member)
                .filter(AssessmentResult.Refused.class::isInstance)
                .map(result -> ((AssessmentResult.Refused) result).faults())
                .orElse(List.of());
    }

    /** The member's column in {@link #comparison}, which holds only those that could be computed. */
    Optional<Integer> column(int member) {
        if (assessment(member).isEmpty()) {
            return Optional.empty();
        }
        int column = 0;
        for (int i = 0; i < member; i++) {
            column += assessment(i).isPresent() ? 1 : 0;
        }
        return Optional.of(column);
    }

    /** The datum's place among the members, if it could be computed; without it there are no ratios. */
    Optional<Integer> datumMember() {
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).id().equals(datum) && assessment(i).isPresent()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
