package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/**
 * Assesses the members of a comparison and sets them side by side.
 *
 * @param members what is compared
 * @param datum which of them ratios are taken against
 * @param known assessments made before, so that an edit of one design computes that one alone
 */
record ComparisonWork(List<Member> members, ThingId datum, Map<Member.Input, AssessmentResult> known)
        implements Work<Compared> {
    ComparisonWork {
        members = List.copyOf(members);
        known = Map.copyOf(known);
    }

    /** The work for new inputs that reuses what an earlier result holds. */
    static ComparisonWork after(Optional<Compared> earlier, List<Member> members, ThingId datum) {
        Map<Member.Input, AssessmentResult> known = new HashMap<>();
        earlier.ifPresent(compared -> {
            for (int i = 0; i < compared.members().size(); i++) {
                Optional<AssessmentResult> result = compared.results().get(i);
                compared.members().get(i).input().ifPresent(input -> result.ifPresent(r -> known.put(input, r)));
            }
        });
        return new ComparisonWork(members, datum, known);
    }

    @Override
    public Compared run(Progress progress) {
        List<Optional<AssessmentResult>> results = new ArrayList<>();
        for (Member member : members) {
            progress.check();
            progress.at((double) results.size() / members.size(), member.name());
            results.add(member.input().map(input -> assess(input, member.alloys(), progress)));
        }
        List<Optional<BenchBands>> bands = results.stream()
                .map(result -> result.flatMap(Compared::assessment).map(BenchBands::of))
                .toList();
        Compared withoutTable = new Compared(members, datum, results, bands, Optional.empty());
        return new Compared(members, datum, results, bands, table(withoutTable));
    }

    private AssessmentResult assess(Member.Input input, KnownAlloys alloys, Progress progress) {
        AssessmentResult before = known.get(input);
        return before != null ? before : Assessments.of(input.design(), alloys, progress);
    }

    private static Optional<Comparison> table(Compared compared) {
        List<Assessment> columns = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            compared.assessment(i).ifPresent(columns::add);
        }
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        int datumColumn = compared.datumMember().flatMap(compared::column).orElse(0);
        return Optional.of(Comparisons.of(columns, datumColumn));
    }
}
