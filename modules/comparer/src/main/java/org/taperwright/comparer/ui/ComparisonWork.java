package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.design.Design;
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
record ComparisonWork(List<Member> members, ThingId datum, Map<Design, AssessmentResult> known)
        implements Work<Compared> {
    ComparisonWork {
        members = List.copyOf(members);
        known = Map.copyOf(known);
    }

    /** The work for new inputs that reuses what an earlier result holds. */
    static ComparisonWork after(Optional<Compared> earlier, List<Member> members, ThingId datum) {
        Map<Design, AssessmentResult> known = new HashMap<>();
        earlier.ifPresent(compared -> {
            for (int i = 0; i < compared.members().size(); i++) {
                Optional<AssessmentResult> result = compared.results().get(i);
                compared.members().get(i).design().ifPresent(design -> result.ifPresent(r -> known.put(design, r)));
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
            results.add(member.design().map(design -> assess(design, progress)));
        }
        List<Optional<BenchBands>> bands = results.stream()
                .map(result -> result.flatMap(Compared::assessment).map(BenchBands::of))
                .toList();
        Compared withoutTable = new Compared(members, datum, results, bands, Optional.empty());
        return new Compared(members, datum, results, bands, table(withoutTable));
    }

    private AssessmentResult assess(Design design, Progress progress) {
        AssessmentResult before = known.get(design);
        return before != null ? before : Assessments.of(design, progress);
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
