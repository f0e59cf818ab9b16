package org.taperwright.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Point;

/** Closed forms of oblique cutting, and directions that the trade holds (common practice, no source). */
class CuttingTestTest {
    private static final double DIAMETER = 0.5;

    private static CuttingGeometry blade(
            int edges, double rakeDeg, double clearanceDeg, double land, double flutesPerMm, double room) {
        Edge edge = new Edge(new Point(0.5, 0), 0, 90 - rakeDeg - clearanceDeg, rakeDeg, clearanceDeg, land);
        double helix = Math.atan(Math.PI * DIAMETER * flutesPerMm / edges);
        double normal = Math.atan(Math.tan(Math.toRadians(rakeDeg)) * Math.cos(helix));
        return new CuttingGeometry(
                8,
                DIAMETER,
                edges,
                rakeDeg,
                edge.wedgeDeg(),
                land * DIAMETER,
                Math.toDegrees(helix),
                Math.toDegrees(normal),
                flutesPerMm,
                room,
                Collections.nCopies(edges, edge));
    }

    private static CuttingGeometry square(double flutesPerMm) {
        return blade(4, -45, 45, 0, flutesPerMm, 0.36);
    }

    private static double removed(CuttingGeometry blade, Motion motion) {
        return CuttingTest.run(blade, motion).perPassMm3();
    }

    @Property
    void aMorePositiveRakeRemovesMoreAndForLessWork(
            @ForAll @DoubleRange(min = -60, max = -1) double rake,
            @ForAll @DoubleRange(min = 0.2, max = 10) double more) {
        for (Motion motion : Motion.values()) {
            CuttingResult one = CuttingTest.run(blade(3, rake, 40, 0, 0.6, 0.5), motion);
            CuttingResult other = CuttingTest.run(blade(3, rake + more, 40, 0, 0.6, 0.5), motion);
            assertThat(other.perPassMm3()).isGreaterThanOrEqualTo(one.perPassMm3());
            assertThat(other.perJouleMm3()).isGreaterThan(one.perJouleMm3());
        }
    }

    @Property
    void aWiderLandRemovesLessAndForMoreWork(
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double land,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double more) {
        for (Motion motion : Motion.values()) {
            CuttingResult narrow = CuttingTest.run(blade(3, -20, 0, land, 0.6, 0.5), motion);
            CuttingResult wide = CuttingTest.run(blade(3, -20, 0, land + more, 0.6, 0.5), motion);
            assertThat(wide.perPassMm3()).isLessThan(narrow.perPassMm3());
            assertThat(wide.perJouleMm3()).isLessThan(narrow.perJouleMm3());
            assertThat(wide.landShare()).isGreaterThan(narrow.landShare());
        }
    }

    @Property
    void aSharperWedgeSinksDeeper(
            @ForAll @DoubleRange(min = 20, max = 60) double clearance,
            @ForAll @DoubleRange(min = 0.5, max = 9) double more) {
        assertThat(CuttingTest.run(blade(3, -30, clearance + more, 0, 0.6, 0.5), Motion.ROTATION)
                        .depthMm())
                .isGreaterThan(CuttingTest.run(blade(3, -30, clearance, 0, 0.6, 0.5), Motion.ROTATION)
                        .depthMm());
    }

    /** What a stroke removes over what a turn does is S tan(psi) / (pi d): S times turns per mm. */
    @Property
    void manyFlutesPerMmSuitFilingAndFewSuitReaming(@ForAll @DoubleRange(min = 0.1, max = 2.5) double flutes) {
        double ratio = removed(square(flutes), Motion.FILING) / removed(square(flutes), Motion.REAMING);
        assertThat(ratio).isCloseTo(2 * flutes / 4, within(1e-9));
        double more = removed(square(flutes * 1.2), Motion.FILING);
        assertThat(more).isGreaterThan(removed(square(flutes), Motion.FILING));
    }

    /** An axial edge in rotation: orthogonal cutting, volume and energy written out by hand. */
    @Test
    void anAxialEdgeCutsByMerchantsFormulas() {
        Dentine dentine = new Dentine(70, 560, 0, 17_000, 2);
        CuttingResult result = CuttingTest.run(blade(4, -45, 45, 0, 0, 0.36), Motion.ROTATION, dentine);
        double energy = 2 * 70 / Math.tan(Math.toRadians(45 - 22.5));
        double perDepth = energy * Math.tan(Math.toRadians(45)) + 560;
        assertThat(result.depthMm()).isCloseTo(1 / (4 * perDepth), within(1e-12));
        assertThat(result.perPassMm3()).isCloseTo(Math.PI * DIAMETER / perDepth, within(1e-12));
        assertThat(result.perJouleMm3()).isCloseTo(1000 / energy, within(1e-9));
    }

    /** Stabler: with the inclination at 0 the effective rake is the normal one, at 90 degrees it is 90. */
    @Property
    void theEffectiveRakeLiesBetweenTheNormalOneAndTheInclination(
            @ForAll @DoubleRange(min = 1, max = 80) double helixDeg,
            @ForAll @DoubleRange(min = -60, max = 20) double rake) {
        Edge edge = new Edge(new Point(0.5, 0), 0, 60, rake, 30 - rake, 0);
        EdgeAtWork work = EdgeAtWork.of(edge, Math.toRadians(helixDeg), Motion.ROTATION, Dentine.usual());
        assertThat(work.effectiveRakeDeg()).isGreaterThanOrEqualTo(work.normalRakeDeg());
        assertThat(work.inclinationDeg()).isCloseTo(helixDeg, within(1e-9));
        assertThat(EdgeAtWork.of(edge, Math.toRadians(helixDeg), Motion.FILING, Dentine.usual())
                        .inclinationDeg())
                .isCloseTo(90 - helixDeg, within(1e-9));
    }

    @Test
    void chipsThatFindNoRoomStayOnTheWall() {
        CuttingGeometry crammed = blade(3, 10, 60, 0, 0.6, 1e-4);
        CuttingResult result = CuttingTest.run(crammed, Motion.ROTATION);
        assertThat(result.roomFilled()).isCloseTo(1, within(1e-12));
        assertThat(result.perPassMm3())
                .isCloseTo(
                        1e-4
                                * Math.PI
                                / 4
                                * DIAMETER
                                * DIAMETER
                                / Dentine.usual().loosening(),
                        within(1e-15));
    }

    @Test
    void aBladeWithoutEdgesRemovesNothing() {
        CuttingGeometry round = new CuttingGeometry(8, DIAMETER, 0, -90, 180, 0, 0, -90, 0, 0, List.of());
        assertThat(CuttingTest.run(round, Motion.FILING).perSecondMm3()).isZero();
    }

    @Property
    void everyNumberIsFiniteAndHasABandAroundIt(
            @ForAll @IntRange(min = 1, max = 6) int edges,
            @ForAll @DoubleRange(min = -89, max = 60) double rake,
            @ForAll @DoubleRange(min = 0, max = 80) double clearance,
            @ForAll @DoubleRange(min = 0, max = 0.5) double land,
            @ForAll @DoubleRange(min = 0, max = 5) double flutes) {
        CuttingGeometry blade = blade(edges, rake, clearance, land, flutes, 0.3);
        for (Motion motion : Motion.values()) {
            Reading reading = CuttingTest.sampled(blade, motion, CuttingResult::perSecondMm3)
                    .reading();
            assertThat(reading.value())
                    .isBetween(
                            reading.band().orElseThrow().low(),
                            reading.band().orElseThrow().high());
            assertThat(reading.value()).isGreaterThanOrEqualTo(0);
        }
    }
}
