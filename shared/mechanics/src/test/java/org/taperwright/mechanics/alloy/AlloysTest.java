package org.taperwright.mechanics.alloy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AlloysTest {
    static java.util.List<Alloy> all() {
        return Alloys.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyAlloySaysWhereItsNumbersComeFromAndHowTheyAreKnown(Alloy alloy) {
        assertThat(alloy.source()).containsAnyOf("read", "memory");
        assertThat(alloy.validity()).isNotBlank();
        assertThat(alloy.youngMpa())
                .isBetween(alloy.youngBand().low(), alloy.youngBand().high());
        assertThat(alloy.yieldMpa())
                .isBetween(alloy.yieldBand().low(), alloy.yieldBand().high());
        assertThat(alloy.ultimateMpa()).isGreaterThan(alloy.yieldMpa());
    }

    @Test
    void everyAlloyIsFoundByItsIdentifierAndNoOther() {
        assertThat(Alloys.all()).extracting(Alloy::id).doesNotHaveDuplicates();
        assertThat(Alloys.all())
                .allSatisfy(alloy -> assertThat(Alloys.find(alloy.id())).contains(alloy));
        assertThat(Alloys.find("unobtainium")).isEmpty();
    }

    /** Handbooks give G = 69 to 77 GPa for spring stainless steel and 79.3 GPa for music wire (from memory, high). */
    @Test
    void theShearModuliOfTheSteelsAreThoseOfTheHandbooks() {
        assertThat(Alloys.find("stainless-steel").orElseThrow().shearModulusMpa())
                .isBetween(69_000.0, 77_000.0);
        assertThat(Alloys.find("carbon-steel").orElseThrow().shearModulusMpa()).isCloseTo(79_300, within(1_000.0));
    }

    /** Zhou and others, J Endod 2012;38:1535 (order read in the abstract): heat-treated wire has the lower plateau. */
    @Test
    void heatTreatmentLowersThePlateau() {
        assertThat(Alloys.find("niti-martensitic").orElseThrow().yieldBand().high())
                .isLessThan(Alloys.find("niti-superelastic")
                        .orElseThrow()
                        .yieldBand()
                        .low());
    }
}
