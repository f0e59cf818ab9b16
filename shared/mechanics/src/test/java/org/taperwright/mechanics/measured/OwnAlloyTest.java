package org.taperwright.mechanics.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

class OwnAlloyTest {
    private static final ThingId ID = new ThingId("tern-wire");

    @Test
    void aDesignIsComputedInALibrarysOwnAlloyAsInOneOfTheProgram() {
        Design design = Designs.with(Designs.standard(25, 0.04))
                .alloy("niti-superelastic")
                .design();
        Design own = Designs.with(design).alloy(ID.value()).design();
        AssessmentResult shipped = Assessments.of(design, Progress.NONE);
        AssessmentResult computed =
                Assessments.of(own, new KnownAlloys(List.of(made(all -> {}).alloy(ID))), Progress.NONE);
        assertThat(((AssessmentResult.Assessed) computed).assessment().bending().momentNmm())
                .isEqualTo(((AssessmentResult.Assessed) shipped)
                        .assessment()
                        .bending()
                        .momentNmm());
        assertThat(((AssessmentResult.Assessed) computed).assessment().alloy().label())
                .isEqualTo("Tern wire");
    }

    @Test
    void anAlloyThatNobodyKnowsIsAFaultThatSaysWhichThereAre() {
        Design design =
                Designs.with(Designs.standard(25, 0.04)).alloy("unobtainium").design();
        AssessmentResult result =
                Assessments.of(design, new KnownAlloys(List.of(made(all -> {}).alloy(ID))), Progress.NONE);
        assertThat(((AssessmentResult.Refused) result)
                        .faults().stream().map(Fault::sentence).toList())
                .anySatisfy(sentence -> assertThat(sentence)
                        .contains("alloy: no alloy is called \"unobtainium\"", "niti-superelastic", "tern-wire"));
    }

    @Test
    void anOwnAlloyNeverTakesThePlaceOfOneOfTheProgram() {
        Alloy disguised = made(all -> all.put("youngMpa", Reading.of(60_000))).alloy(new ThingId("niti-superelastic"));
        KnownAlloys known = new KnownAlloys(List.of(disguised));
        assertThat(known.find("niti-superelastic")).isEqualTo(Alloys.find("niti-superelastic"));
        assertThat(known.all()).doesNotContain(disguised);
    }

    @Test
    void whatItsLawNeedsAndKnowsIsSaid() {
        assertThatThrownBy(() -> made(all -> all.remove("asymmetry"))).hasMessage("gives no asymmetry");
        assertThatThrownBy(() -> made(all -> all.put("hardness", Reading.of(3))))
                .hasMessageStartingWith("gives hardness, which the law of its kind does not know; it knows youngMpa");
        assertThatThrownBy(() -> made(all -> all.put("yieldMpa", Reading.of(-1))))
                .hasMessage("gives yieldMpa at or below zero");
        assertThatThrownBy(() -> made(all -> all.put("yieldMpa", new Reading(500, Optional.of(new Band(510, 520))))))
                .hasMessageStartingWith("gives yieldMpa outside its own band");
        assertThatThrownBy(() -> new OwnAlloy("Name", "tin", 0.3, 500, Map.of(), Optional.empty(), "", "", ""))
                .hasMessageStartingWith("is of the kind of no alloy of the program: kin \"tin\" is none of stainless");
    }

    private static OwnAlloy made(Consumer<Map<String, Reading>> change) {
        Alloy like = Alloys.find("niti-superelastic").orElseThrow();
        Map<String, Reading> constants = new TreeMap<>(like.constants());
        constants.put("youngMpa", new Reading(like.youngMpa(), Optional.of(like.youngBand())));
        constants.put("yieldMpa", new Reading(like.yieldMpa(), Optional.of(like.yieldBand())));
        change.accept(constants);
        return new OwnAlloy(
                "Tern wire",
                like.id(),
                like.poisson(),
                like.ultimateMpa(),
                constants,
                Optional.empty(),
                "invented",
                "",
                "");
    }
}
