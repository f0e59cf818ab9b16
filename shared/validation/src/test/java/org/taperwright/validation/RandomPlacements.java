package org.taperwright.validation;

import java.util.List;
import java.util.Random;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.placement.Placement;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.Springs;
import org.taperwright.shaping.placement.WallSupport;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;
import org.taperwright.shaping.placement.rod.RoundPlateau;
import org.taperwright.shaping.placement.rod.SampledLaw;

/**
 * Canals and instruments drawn at random: bends of 10 to 75 degrees and radius 2.2 to 12 mm in one plane or two, round and oval
 * openings, sizes 08 to 45 and tapers 0 to 0.1, steel and nickel-titanium, linear and superelastic, tilted and straight handles,
 * part and full depth, wedged or loose.
 */
final class RandomPlacements {
    private static final double SPACING = 0.1;
    private static final int ANGLES = 72;
    private static final double LENGTH = 25;
    private static final double WORKING = 16;

    private final Random random;

    RandomPlacements(long seed) {
        random = new Random(seed);
    }

    Placement next() {
        Canal canal = canal();
        PlacementSolver solver = PlacementSolver.of(rod(), SPACING, ANGLES);
        double z = canal.lengthMm() * between(0.3, 1);
        Setting setting = new Setting(z, tilt(), tilt());
        return solver.place(
                Centreline.of(canal.pieces()), WallSupport.of(Lumen.of(canal, SPACING, ANGLES)), Springs.FIRM, setting);
    }

    private Canal canal() {
        double angle = between(10, 75);
        double radius = between(2.2, 12);
        double arc = radius * Math.toRadians(angle);
        double before = between(2, 8);
        double after = between(0.3, 3);
        double azimuth = between(0, 360);
        double turned = random.nextBoolean() ? azimuth : azimuth + between(0, 180);
        double length = before + arc + after;
        double end = between(0.12, 0.45);
        double orifice = end + between(0.2, 1.2);
        double oval = random.nextBoolean() ? 1 : between(1, 2.2);
        return new Canal(
                "random",
                List.of(
                        new CanalPiece(before, 0, 0),
                        new CanalPiece(arc / 2, angle / 2, azimuth),
                        new CanalPiece(arc / 2, angle / 2, turned),
                        new CanalPiece(after, 0, 0)),
                List.of(
                        new Opening(0, orifice * oval, orifice, azimuth + 50),
                        new Opening(length, end * Math.sqrt(oval), end, azimuth)),
                List.of(),
                0,
                length,
                "",
                "");
    }

    private Rod rod() {
        double tip = between(0.08, 0.45);
        double end = Math.min(1.5, tip + WORKING * between(0, 0.1));
        double young = random.nextBoolean() ? 190_000 : between(25_000, 60_000);
        double blade = young * between(0.2, 0.5) * Math.PI / 64;
        double shaft = young * Math.PI / 64;
        boolean plateau = young < 100_000 && random.nextBoolean();
        MomentLaw law = plateau
                ? SampledLaw.of(new RoundPlateau(young, between(200, 3000), 25_000, 0.01, 0.06), 0.2, 401)
                : MomentLaw.LINEAR;
        return Rod.of(
                LENGTH,
                0,
                WORKING,
                List.of(
                        new RodSection(0, tip, blade, tip),
                        new RodSection(WORKING, end, blade, end),
                        new RodSection(WORKING, end, shaft, end),
                        new RodSection(LENGTH + 1, end, shaft, end)),
                law);
    }

    private double tilt() {
        return random.nextInt(3) == 0 ? between(-0.1, 0.1) : 0;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
