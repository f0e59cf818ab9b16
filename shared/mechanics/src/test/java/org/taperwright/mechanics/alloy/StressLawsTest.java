package org.taperwright.mechanics.alloy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StressLawsTest {
    static List<Alloy> all() {
        return Alloys.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyAlloyGivesWhatItsLawNeeds(Alloy alloy) {
        assertThat(alloy.constants())
                .containsKeys(StressLaws.find(alloy.law()).orElseThrow().constants().stream()
                        .map(LawConstant::name)
                        .toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("all")
    void hookesLawHoldsUpToYieldAndTheStressNeverFalls(Alloy alloy) {
        StressCurve curve = alloy.tension();
        double yield = alloy.yieldMpa() / alloy.youngMpa();
        assertThat(curve.stressMpa(yield)).isCloseTo(alloy.yieldMpa(), within(1e-9 * alloy.yieldMpa()));
        assertThat(curve.stressMpa(0)).isZero();
        double last = 0;
        for (int i = 1; i <= 400; i++) {
            assertThat(curve.stressMpa(i * 1e-3)).isGreaterThanOrEqualTo(last);
            last = curve.stressMpa(i * 1e-3);
        }
    }

    /** By von Mises a tension of sqrt 3 tau at the strain gamma / sqrt 3 is what the shear at fracture stands for. */
    @Test
    void steelHardensOnToWhatTwistingShows() {
        Alloy steel = Alloys.find("stainless-steel").orElseThrow();
        double strain = steel.constant(Fracture.SHEAR_STRAIN.name()) / Math.sqrt(3);
        double stress = steel.constant(Fracture.SHEAR_STRENGTH.name()) * Math.sqrt(3);
        assertThat(steel.tension().stressMpa(strain)).isCloseTo(stress, within(1e-9 * stress));
        assertThat(steel.tension().stressMpa(-strain)).isCloseTo(-stress, within(1e-9 * stress));
        double gamma = steel.constant(Fracture.SHEAR_STRAIN.name());
        assertThat(steel.shear().stressMpa(gamma)).isCloseTo(stress / Math.sqrt(3), within(1e-9 * stress));
    }

    @Test
    void superelasticCompressionReachesItsPlateauLaterThanTension() {
        Alloy niti = Alloys.find("niti-superelastic").orElseThrow();
        double asymmetry = niti.constant(Plateau.ASYMMETRY);
        double strain = 0.03;
        assertThat(-niti.tension().stressMpa(-strain))
                .isGreaterThan(niti.tension().stressMpa(strain));
        double first = asymmetry * niti.yieldMpa() / niti.youngMpa();
        assertThat(-niti.tension().stressMpa(-first))
                .isCloseTo(asymmetry * niti.yieldMpa(), within(1e-9 * niti.yieldMpa()));
    }

    @Test
    void aConstantThatAnAlloyDoesNotGiveIsRefusedByName() {
        assertThatThrownBy(() -> Alloys.find("stainless-steel").orElseThrow().constant("noSuchConstant"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("noSuchConstant");
    }
}
