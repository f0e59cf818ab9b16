package org.taperwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;

class DemoDesignsTest {
    private final DemoThings things = DemoThings.read();

    @Test
    void everyDesignCanBeAssessed() {
        assertThat(things.all(Design.class))
                .allSatisfy(design -> assertThat(Assessments.of(design, Progress.NONE))
                        .as(design.name())
                        .isInstanceOf(AssessmentResult.Assessed.class));
    }

    @Test
    void noInstrumentsDesignIsImpossible() {
        assertThat(things.all(Instrument.class))
                .allSatisfy(instrument -> assertThat(DesignChecks.check(instrument.design()))
                        .as(instrument.name())
                        .extracting(Fault::weight)
                        .doesNotContain(Fault.Weight.IMPOSSIBLE));
    }

    @Test
    void nothingInTheStandardsSeriesIsUnusual() {
        assertThat(things.all(Instrument.class))
                .filteredOn(instrument -> instrument.line().equals("Standard series"))
                .hasSize(84)
                .allSatisfy(instrument -> assertThat(DesignChecks.check(instrument.design()))
                        .as(instrument.name())
                        .isEmpty());
    }

    @Test
    void anInstrumentsOwnDesignIsThatOfTheLibraryButForItsLength() {
        List<Instrument> linked = things.all(Instrument.class).stream()
                .filter(instrument -> instrument.designId().isPresent())
                .toList();
        assertThat(linked).hasSize(35).allSatisfy(instrument -> {
            Design design = things.thing(instrument.designId().orElseThrow(), Design.class);
            assertThat(instrument.design().name()).isEqualTo(design.name());
            assertThat(instrument.design().taper()).isEqualTo(design.taper());
            assertThat(instrument.design().sections()).isEqualTo(design.sections());
            assertThat(instrument.design().alloy()).isEqualTo(design.alloy());
        });
    }

    @Test
    void theFirstComparisonTradesFlexibilityForCutting() {
        Comparison comparison = comparison("six-ways-25");
        assertThat(comparison.columns()).hasSize(6);
        assertThat(comparison.tradeOff().places().stream().filter(place -> place.undominated()))
                .hasSizeBetween(2, 5);
    }

    @Test
    void theStandardsFourTypesCompare() {
        assertThat(comparison("standard-four-25").columns()).hasSize(4);
    }

    private Comparison comparison(String id) {
        SavedComparison saved = things.thing(id, SavedComparison.class);
        List<Assessment> columns = saved.designs().stream()
                .map(design -> Assessments.of(things.thing(design, Design.class), Progress.NONE))
                .map(result -> ((AssessmentResult.Assessed) result).assessment())
                .toList();
        return Comparisons.of(columns, saved.designs().indexOf(saved.datum()));
    }
}
