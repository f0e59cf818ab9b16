package org.taperwright.library.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.KeptResults.KeptRow;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.comparison.ModelVersion;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.work.Progress;

class KeepingTest {
    private static final Design FINE = Designs.standard(20, 0.02);
    private static final Design WIDE = Designs.standard(25, 0.02);
    private static final List<ThingId> IDS = List.of(new ThingId("fine"), new ThingId("wide"));
    private static final Comparison COMPARISON = compared(FINE, WIDE);

    @Test
    void resultsKeptNowAreWhatTheyWere() {
        KeptResults kept = Keeping.of(COMPARISON, IDS);
        assertThat(kept.model()).isEqualTo(ModelVersion.CURRENT);
        KeptCheck check = Keeping.check(kept, COMPARISON, IDS);
        assertThat(check.changes()).isEmpty();
        assertThat(check.words())
                .isEqualTo("Kept with model " + ModelVersion.CURRENT + ", the present one. All "
                        + 2 * COMPARISON.rows().size() + " numbers are what they were.");
    }

    @Test
    void anEditOfADesignIsToldFromAChangeOfTheModel() {
        KeptResults kept = Keeping.of(COMPARISON, IDS);
        Design edited = Designs.with(WIDE).tipDiameterMm(0.3).design();
        KeptCheck check = Keeping.check(kept, compared(FINE, edited), IDS);
        assertThat(check.changes()).isNotEmpty().allMatch(ResultChange::designChanged);
        assertThat(check.words()).contains("numbers differ now", WIDE.name(), "Their designs were edited since.");
    }

    @Test
    void withTheSameDesignsADifferenceIsTheModels() {
        KeptResults now = Keeping.of(COMPARISON, IDS);
        List<KeptRow> rows = new ArrayList<>(now.rows());
        KeptRow first = rows.get(0);
        rows.set(
                0,
                new KeptRow(
                        first.metric(),
                        List.of(2 * first.values().get(0), first.values().get(1))));
        KeptCheck check = Keeping.check(new KeptResults("1", now.designs(), rows), COMPARISON, IDS);
        assertThat(check.changes()).singleElement().satisfies(change -> {
            assertThat(change.then()).isEqualTo(2 * change.now());
            assertThat(change.designChanged()).isFalse();
        });
        assertThat(check.words())
                .startsWith("Kept with model 1; the present one is")
                .contains("the model was changed");
    }

    @Test
    void aNameEntersNoNumberAndDesignsOutOfTheComparisonAreLeftOut() {
        KeptResults kept = Keeping.of(COMPARISON, IDS);
        Design renamed = Designs.with(FINE).name("Another name").design();
        KeptCheck check = Keeping.check(kept, compared(renamed), List.of(IDS.get(0)));
        assertThat(check.changes()).isEmpty();
        assertThat(check.compared()).isEqualTo(COMPARISON.rows().size());
        assertThat(Keeping.fingerprint(assessed(renamed))).isEqualTo(Keeping.fingerprint(assessed(FINE)));
        assertThat(Keeping.fingerprint(assessed(WIDE))).isNotEqualTo(Keeping.fingerprint(assessed(FINE)));
    }

    @Test
    void anotherNumberOfALibrarysOwnAlloyTellsTheDesignFromWhatItWas() {
        Design own = Designs.with(FINE).alloy(Examples.ALLOY_ID.value()).design();
        OwnAlloy alloy = Examples.alloy();
        Map<String, Reading> constants = new TreeMap<>(alloy.constants());
        constants.put("youngMpa", Reading.of(60_000));
        OwnAlloy stiffer = new OwnAlloy(
                alloy.name(),
                alloy.kin(),
                alloy.poisson(),
                alloy.ultimateMpa(),
                constants,
                alloy.fit(),
                alloy.source(),
                alloy.validity(),
                alloy.note());
        assertThat(Keeping.fingerprint(assessed(own, stiffer))).isNotEqualTo(Keeping.fingerprint(assessed(own, alloy)));
        assertThat(Keeping.fingerprint(assessed(own, alloy.named("Another name"))))
                .isEqualTo(Keeping.fingerprint(assessed(own, alloy)));
    }

    private static Assessment assessed(Design design) {
        return ((AssessmentResult.Assessed) Assessments.of(design, Progress.NONE)).assessment();
    }

    private static Assessment assessed(Design design, OwnAlloy alloy) {
        KnownAlloys alloys = new KnownAlloys(List.of(alloy.alloy(Examples.ALLOY_ID)));
        return ((AssessmentResult.Assessed) Assessments.of(design, alloys, Progress.NONE)).assessment();
    }

    private static Comparison compared(Design... designs) {
        return Comparisons.of(Stream.of(designs).map(KeepingTest::assessed).toList(), 0);
    }
}
