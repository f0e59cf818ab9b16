package org.taperwright.mechanics.properties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Outlines;

/** What must hold for any section, by symmetry, scaling and the inequalities of torsion and plasticity. */
class SectionInvariantsTest {
    /** Two meshes of one section: each is good to 1e-4, of the thinnest sections to 3e-4. */
    private static final Percentage FIELD = withPercentage(0.06);
    /** Two meshes of one section: each peak is good to 1 %. */
    private static final Percentage PEAK = withPercentage(2);

    private static final Percentage HEAP = withPercentage(0.002);
    private static final Percentage EXACT = withPercentage(1e-7);

    @Provide
    Arbitrary<Outline> sections() {
        return SomeSections.ofFamilies();
    }

    @Provide
    Arbitrary<double[]> stars() {
        return Arbitraries.doubles().between(0.2, 0.5).array(double[].class).ofSize(9);
    }

    @Property(tries = 80)
    void turningASectionChangesNoNumber(@ForAll("sections") Outline outline, @ForAll @DoubleRange(max = 6) double by) {
        same(SectionAnalysis.of(outline), SectionAnalysis.of(Outlines.turned(outline, by)));
    }

    @Property(tries = 80)
    void mirroringASectionChangesNoNumber(@ForAll("sections") Outline outline) {
        same(SectionAnalysis.of(outline), SectionAnalysis.of(Outlines.mirrored(outline)));
    }

    private static void same(SectionProperties a, SectionProperties b) {
        assertThat(b.area()).isCloseTo(a.area(), EXACT);
        assertThat(b.iMax()).isCloseTo(a.iMax(), EXACT);
        assertThat(b.iMin()).isCloseTo(a.iMin(), EXACT);
        assertThat(b.core()).isCloseTo(a.core(), EXACT);
        assertThat(b.inscribed()).isCloseTo(a.inscribed(), EXACT);
        assertThat(b.torsionConstant()).isCloseTo(a.torsionConstant(), FIELD);
        assertThat(b.peakShear()).isCloseTo(a.peakShear(), PEAK);
        assertThat(b.peakShearSingular()).isEqualTo(a.peakShearSingular());
        assertThat(b.plasticTorque()).isCloseTo(a.plasticTorque(), HEAP);
        assertThat(b.plasticMomentLeast()).isCloseTo(a.plasticMomentLeast(), HEAP);
        assertThat(b.plasticMomentMost()).isCloseTo(a.plasticMomentMost(), HEAP);
    }

    @Property(tries = 80)
    void numbersScaleByTheirPowersOfTheDiameter(
            @ForAll("sections") Outline outline, @ForAll @DoubleRange(min = 0.6, max = 0.95) double d) {
        SectionProperties whole = SectionAnalysis.of(outline);
        SectionProperties small = SectionAnalysis.of(new Outline(
                outline.segments().stream().map(segment -> segment.scaled(d)).toList()));
        assertThat(small.area()).isCloseTo(whole.area() * Math.pow(d, 2), EXACT);
        assertThat(small.iMin()).isCloseTo(whole.iMin() * Math.pow(d, 4), EXACT);
        assertThat(small.torsionConstant()).isCloseTo(whole.torsionConstant() * Math.pow(d, 4), FIELD);
        assertThat(small.plasticTorque()).isCloseTo(whole.plasticTorque() * Math.pow(d, 3), HEAP);
        assertThat(small.plasticMomentMost()).isCloseTo(whole.plasticMomentMost() * Math.pow(d, 3), HEAP);
    }

    /**
     * {@code J <= Ip}, with equality for the circle alone; Saint-Venant's {@code J <= A^2 / 2 pi} (Polya 1948); the plastic
     * torque exceeds the torque at first yield, {@code 1 / c}.
     */
    @Property(tries = 150)
    void inequalitiesOfTorsionHold(@ForAll("sections") Outline outline) {
        SectionProperties p = SectionAnalysis.of(outline);
        assertThat(p.torsionConstant()).isLessThanOrEqualTo(p.polar() * (1 + 1e-5));
        assertThat(p.torsionConstant()).isLessThanOrEqualTo(p.area() * p.area() / (2 * Math.PI) * (1 + 1e-5));
        assertThat(p.plasticTorque() * p.peakShear()).isGreaterThan(1);
        assertThat(p.core()).isLessThanOrEqualTo(p.inscribed() * (1 + 1e-9));
        assertThat(p.inscribed()).isLessThanOrEqualTo(1 + 1e-9);
        assertThat(p.plasticMomentLeast()).isLessThanOrEqualTo(p.plasticMomentMost());
        assertThat(p.iMin()).isLessThanOrEqualTo(p.iMax());
    }

    @Property(tries = 60)
    void aSectionThatHoldsAnotherIsStifferInTorsion(@ForAll("stars") double[] radii, @ForAll("stars") double[] others) {
        double[] larger = new double[radii.length];
        for (int i = 0; i < radii.length; i++) {
            larger[i] = Math.max(radii[i], others[i]);
        }
        SectionProperties inner = SectionAnalysis.of(new Outline(SomeSections.sides(radii)));
        SectionProperties outer = SectionAnalysis.of(new Outline(SomeSections.sides(larger)));
        assertThat(outer.torsionConstant()).isGreaterThanOrEqualTo(inner.torsionConstant() * (1 - 1e-5));
        assertThat(outer.plasticTorque()).isGreaterThanOrEqualTo(inner.plasticTorque() * (1 - 1e-6));
    }
}
