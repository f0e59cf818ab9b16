package org.taperwright.shaping.canal;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/** What is impossible or unusual in a canal. */
final class CanalChecks {
    /** Extremes seen in 1163 canals: 75 degrees, radius 2 mm (Schäfer et al., J Endod 2002;28:211-216, abstract). */
    private static final double UNUSUAL_ANGLE_DEG = 75;

    private static final double UNUSUAL_RADIUS_MM = 2;

    private final Canal canal;
    private final List<Fault> faults = new ArrayList<>();

    private CanalChecks(Canal canal) {
        this.canal = canal;
    }

    static List<Fault> check(Canal canal) {
        CanalChecks checks = new CanalChecks(canal);
        checks.pieces();
        checks.openings();
        checks.root();
        checks.lengths();
        if (checks.faults.stream().noneMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)) {
            checks.faults.addAll(CentrelineChecks.check(canal));
        }
        return List.copyOf(checks.faults);
    }

    private void pieces() {
        if (canal.pieces().isEmpty()) {
            impossible("pieces", "the centreline has no piece", "give at least one piece with a length");
        }
        for (int i = 0; i < canal.pieces().size(); i++) {
            CanalPiece piece = canal.pieces().get(i);
            String where = "pieces[" + i + "].";
            if (!(piece.lengthMm() > 0) || Double.isInfinite(piece.lengthMm())) {
                impossible(where + "lengthMm", "the length is " + Shown.mm(piece.lengthMm()), "a length above 0");
            }
            if (!Double.isFinite(piece.angleDeg()) || !Double.isFinite(piece.azimuthDeg())) {
                impossible(where + "angleDeg", "the angle or azimuth is not a number", "angles in degrees");
            } else {
                bend(piece, where + "angleDeg");
            }
        }
    }

    private void bend(CanalPiece piece, String where) {
        double angle = Math.abs(piece.angleDeg());
        double radius = piece.lengthMm() / Math.toRadians(angle);
        if (angle > UNUSUAL_ANGLE_DEG) {
            unusual(where, "the piece turns " + Shown.degrees(angle), "at most 75°, which canals rarely pass");
        }
        if (angle > 0 && radius < UNUSUAL_RADIUS_MM) {
            unusual(where, "the radius is " + Shown.mm(radius), "2 mm or more, which canals rarely fall below");
        }
    }

    private void openings() {
        if (canal.openings().size() < 2) {
            impossible("openings", "there are fewer than two openings", "one at the orifice and one at the end");
            return;
        }
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < canal.openings().size(); i++) {
            Opening opening = canal.openings().get(i);
            String where = "openings[" + i + "].";
            depth(opening.depthMm(), before, where);
            ellipse(opening.wideMm(), opening.narrowMm(), opening.azimuthDeg(), where);
            before = opening.depthMm();
        }
        double first = canal.openings().get(0).depthMm();
        if (first > 0) {
            unusual(
                    "openings[0].depthMm",
                    "the first opening is " + Shown.mm(first) + " deep",
                    "one at the orifice, 0");
        }
        if (before < canal.endDepthMm()) {
            unusual(
                    "openings[" + (canal.openings().size() - 1) + "].depthMm",
                    "the last opening is " + Shown.mm(before) + " deep; below it the canal is taken to keep its width",
                    "one where instrumentation ends, " + Shown.mm(canal.endDepthMm()));
        }
    }

    private void root() {
        double before = Double.NEGATIVE_INFINITY;
        CanalGeometry geometry = new CanalGeometry(canal);
        for (int i = 0; i < canal.root().size(); i++) {
            RootOutline root = canal.root().get(i);
            String where = "root[" + i + "].";
            depth(root.depthMm(), before, where);
            ellipse(root.wideMm(), root.narrowMm(), root.azimuthDeg(), where);
            before = root.depthMm();
            if (canal.openings().isEmpty()) {
                continue;
            }
            Opening opening = geometry.at(root.depthMm());
            if (root.wideMm() <= opening.wideMm() || root.narrowMm() <= opening.narrowMm()) {
                impossible(
                        where + "narrowMm",
                        "the root is no wider than the canal inside it",
                        "wider than " + Shown.mm(opening.wideMm()) + " by " + Shown.mm(opening.narrowMm()));
            }
        }
    }

    private void lengths() {
        double reference = canal.coronalReferenceMm();
        if (!(reference >= 0) || Double.isInfinite(reference)) {
            impossible("coronalReferenceMm", "the distance is " + Shown.mm(reference), "0 or more");
        }
        if (!(canal.endDepthMm() > 0)) {
            impossible(
                    "workingLengthMm",
                    "the working length of " + Shown.mm(canal.workingLengthMm()) + " ends above the orifice",
                    "more than the distance to the orifice, " + Shown.mm(reference));
        } else if (canal.endDepthMm() > canal.lengthMm() + 1e-9) {
            impossible(
                    "workingLengthMm",
                    "the working length of " + Shown.mm(canal.workingLengthMm()) + " goes beyond the canal's end",
                    "at most " + Shown.mm(reference + canal.lengthMm()));
        }
    }

    private void depth(double depthMm, double beforeMm, String where) {
        if (!(depthMm >= 0) || Double.isInfinite(depthMm)) {
            impossible(where + "depthMm", "the depth is " + Shown.mm(depthMm), "0 (the orifice) or more");
        } else if (depthMm <= beforeMm) {
            impossible(
                    where + "depthMm",
                    "the depth of " + Shown.mm(depthMm) + " does not go beyond the one before",
                    "depths that rise, here more than " + Shown.mm(beforeMm));
        }
    }

    private void ellipse(double wideMm, double narrowMm, double azimuthDeg, String where) {
        if (!(narrowMm > 0) || Double.isInfinite(wideMm)) {
            impossible(where + "narrowMm", "the lesser diameter is " + Shown.mm(narrowMm), "a diameter above 0");
        } else if (!(wideMm >= narrowMm)) {
            impossible(
                    where + "wideMm",
                    "the greater diameter of " + Shown.mm(wideMm) + " is less than the lesser",
                    "at least " + Shown.mm(narrowMm));
        }
        if (!Double.isFinite(azimuthDeg)) {
            impossible(where + "azimuthDeg", "the azimuth is not a number", "an angle in degrees");
        }
    }

    private void impossible(String where, String what, String expected) {
        faults.add(Fault.impossible(where, what, "expected " + expected));
    }

    private void unusual(String where, String what, String expected) {
        faults.add(Fault.unusual(where, what, "expected " + expected));
    }
}
