package org.taperwright.shaping.canal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/** What in the course of a canal, with its openings, cannot be: a wall that folds, or a canal that runs back into itself. */
final class CentrelineChecks {
    private static final double STEP_MM = 0.1;
    private static final double TURNED_BACK_DEG = 150;

    private CentrelineChecks() {}

    /** For a canal whose pieces and openings are each possible. */
    static List<Fault> check(Canal canal) {
        List<Fault> faults = new ArrayList<>(tightPieces(canal));
        turnedBack(canal).or(() -> meetsItself(canal)).ifPresent(faults::add);
        faults.addAll(widening(canal));
        return faults;
    }

    /** Where the radius is less than the opening's half width, the wall at the inside of the bend would fold. */
    private static List<Fault> tightPieces(Canal canal) {
        List<Fault> faults = new ArrayList<>();
        CanalGeometry geometry = new CanalGeometry(canal);
        double from = 0;
        for (int i = 0; i < canal.pieces().size(); i++) {
            CanalPiece piece = canal.pieces().get(i);
            double turned = Math.toRadians(Math.abs(piece.angleDeg()));
            double to = from + piece.lengthMm();
            // the widest place of a piece is an end of it or an opening within
            double at = geometry.wideMm(from) >= geometry.wideMm(to) ? from : to;
            for (double knot : geometry.knotsMm()) {
                at = knot > from && knot < to && geometry.wideMm(knot) > geometry.wideMm(at) ? knot : at;
            }
            double half = geometry.wideMm(at) / 2;
            if (turned > 0 && piece.lengthMm() / turned <= half) {
                faults.add(Fault.impossible(
                        "pieces[" + i + "].angleDeg",
                        "the radius is " + Shown.mm(piece.lengthMm() / turned) + ", no more than half the opening of "
                                + Shown.diameter(2 * half) + " at " + Shown.mm(at) + " below the orifice",
                        "expected a radius above " + Shown.mm(half)));
            }
            from = to;
        }
        return faults;
    }

    private static Optional<Fault> turnedBack(Canal canal) {
        Centreline line = Centreline.of(canal.pieces());
        Vector first = line.at(0).tangent();
        for (double s = 0; s <= line.lengthMm(); s += STEP_MM) {
            double turned = Math.toDegrees(first.angleTo(line.at(s).tangent()));
            if (turned > TURNED_BACK_DEG) {
                return Optional.of(Fault.impossible(
                        "pieces",
                        "at " + Shown.mm(s) + " below the orifice the canal has turned by " + Shown.degrees(turned)
                                + " and folds back",
                        "expected at most " + Shown.degrees(TURNED_BACK_DEG) + " from the orifice on"));
            }
        }
        return Optional.empty();
    }

    /** Two places whose openings overlap though the way between them is longer than both are wide. */
    private static Optional<Fault> meetsItself(Canal canal) {
        Centreline line = Centreline.of(canal.pieces());
        CanalGeometry geometry = new CanalGeometry(canal);
        int count = (int) (line.lengthMm() / STEP_MM) + 1;
        Vector[] place = new Vector[count];
        double[] wide = new double[count];
        for (int i = 0; i < count; i++) {
            place[i] = line.at(i * STEP_MM).place();
            wide[i] = geometry.wideMm(i * STEP_MM);
            for (int j = 0; j < i; j++) {
                double width = (wide[i] + wide[j]) / 2;
                // a half circle's way is half pi times its chord
                boolean far = (i - j) * STEP_MM > Math.PI * width;
                if (far && place[i].minus(place[j]).length() < width) {
                    return Optional.of(Fault.impossible(
                            "pieces",
                            "at " + Shown.mm(i * STEP_MM) + " below the orifice the canal runs into itself at "
                                    + Shown.mm(j * STEP_MM),
                            "expected a canal that keeps clear of itself"));
                }
            }
        }
        return Optional.empty();
    }

    private static List<Fault> widening(Canal canal) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 1; i < canal.openings().size(); i++) {
            Opening above = canal.openings().get(i - 1);
            Opening here = canal.openings().get(i);
            if (here.narrowMm() > above.narrowMm()) {
                faults.add(Fault.unusual(
                        "openings[" + i + "].narrowMm",
                        "the canal widens towards its end, from " + Shown.diameter(above.narrowMm()) + " to "
                                + Shown.diameter(here.narrowMm()) + " at " + Shown.mm(here.depthMm()),
                        "expected openings that narrow towards the end"));
            }
        }
        return faults;
    }
}
