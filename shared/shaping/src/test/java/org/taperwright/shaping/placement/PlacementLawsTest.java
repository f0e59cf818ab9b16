package org.taperwright.shaping.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;

/** What must hold of any placement by statics, symmetry and handbook beams. */
class PlacementLawsTest {
    private static final Canal BENT =
            Tubes.canal(1.0, 0.4, new CanalPiece(6, 0, 0), new CanalPiece(4, 45, 0), new CanalPiece(2, 0, 0));

    @Test
    void inAStraightCanalNothingBends() {
        Placement placement = place(Tubes.canal(1.0, 0.4, new CanalPiece(12, 0, 0)), Setting.straight(12));
        assertThat(placement.bendingEnergyMj()).isZero();
        assertThat(placement.totalForceN()).isZero();
    }

    /**
     * A handle tilted a little and a tip held on the axis: a beam clamped at one end under a slope, simply supported at the other,
     * has {@code F = 3 EI slope / L^2} there and the energy {@code 3 EI slope^2 / (2 L)} (handbooks of beams).
     */
    @Test
    void aTiltedHandleLoadsTheTipAsABeamTableSays() {
        double d = 0.3;
        Canal tube = Tubes.canal(3, d + 2e-6, new CanalPiece(12, 0, 0));
        double tilt = 1e-3;
        Placement placement = PlacementSolver.of(Tubes.rod(d, 0, 50_000, MomentLaw.LINEAR), 0.1, 72)
                .place(
                        Centreline.of(tube.pieces()),
                        WallSupport.of(Lumen.of(tube, 0.1, 72)),
                        Springs.firm(1e7),
                        new Setting(12, tilt, 0));
        double stiffness = 50_000 * Math.PI / 64 * Math.pow(d, 4);
        assertThat(placement.settled()).isTrue();
        assertThat(placement.totalForceN()).isEqualTo(3 * stiffness * tilt / 625, within(1e-3 * 0.0001));
        assertThat(placement.bendingEnergyMj())
                .isEqualTo(1.5 * stiffness * tilt * tilt / 25, within(1e-2 * 1.5 * stiffness * tilt * tilt / 25));
    }

    /** Virtual work: narrowing the canal everywhere by dg costs the sum of the wall's pressures times dg. */
    @Test
    void energyFallsWithTheGapByTheForcesOnTheWall() {
        double step = 1e-4;
        Placement here = place(BENT, Setting.straight(11.5));
        double wider = energy(place(widened(step), Setting.straight(11.5)));
        double narrower = energy(place(widened(-step), Setting.straight(11.5)));
        double pressures = 0;
        for (int i = 0; i < here.nodes(); i++) {
            pressures += here.load(i) * here.reachMm(i);
        }
        // pressures of a zone that spans few directions add up to a little more than their net force
        assertThat((narrower - wider) / (2 * step)).isBetween(pressures * 0.999, pressures * 1.06);
    }

    @Test
    void turningTheBendTurnsThePlacement() {
        double azimuth = 40;
        Canal turned =
                Tubes.canal(1.0, 0.4, new CanalPiece(6, 0, 0), new CanalPiece(4, 45, azimuth), new CanalPiece(2, 0, 0));
        Placement first = place(BENT, Setting.straight(11.5));
        Placement second = place(turned, Setting.straight(11.5));
        assertThat(second.bendingEnergyMj()).isEqualTo(first.bendingEnergyMj(), within(1e-6));
        int tip = first.nodes() - 1;
        double cos = Math.cos(Math.toRadians(azimuth));
        assertThat(second.firstMm(tip)).isEqualTo(first.firstMm(tip) * cos, within(1e-6));
    }

    @Test
    void zonesOfASingleBendLieOuterInnerOuter() {
        Placement placement = place(BENT, Setting.straight(11.5));
        assertThat(ContactZones.of(placement, Centreline.of(BENT.pieces())).stream()
                        .map(zone -> zone.side())
                        .toList())
                .endsWith(ContactZone.Side.INNER, ContactZone.Side.OUTER);
    }

    @Test
    void goingOnFromAPlacementFindsTheSameOne() {
        Rod rod = Tubes.rod(0.25, 0.04, 50_000, MomentLaw.LINEAR);
        PlacementSolver solver = PlacementSolver.of(rod, 0.1, 72);
        Centreline line = Centreline.of(BENT.pieces());
        WallSupport support = WallSupport.of(Lumen.of(BENT, 0.1, 72));
        Placement cold = solver.place(line, support, Springs.FIRM, Setting.straight(11.5));
        Placement warm = solver.place(line, support, Springs.FIRM, Setting.straight(11.5), 1e-9, true);
        assertThat(warm.iterations()).isLessThan(cold.iterations());
        assertThat(warm.bendingEnergyMj()).isEqualTo(cold.bendingEnergyMj(), within(1e-5));
    }

    private static double energy(Placement placement) {
        return placement.bendingEnergyMj() + placement.wallEnergyMj();
    }

    private static Canal widened(double gap) {
        return Tubes.canal(1.0 + 2 * gap, 0.4 + 2 * gap, BENT.pieces().toArray(new CanalPiece[0]));
    }

    private static Placement place(Canal canal, Setting setting) {
        Rod rod = Tubes.rod(0.25, 0.04, 50_000, MomentLaw.LINEAR);
        return PlacementSolver.of(rod, 0.1, 72)
                .place(Centreline.of(canal.pieces()), WallSupport.of(Lumen.of(canal, 0.1, 72)), Springs.FIRM, setting);
    }
}
