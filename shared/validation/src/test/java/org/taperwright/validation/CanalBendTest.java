package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.BendMeasure;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Centreline;
import org.taperwright.shaping.canal.Vector;
import org.taperwright.shaping.canal.fit.FittedCentreline;
import org.taperwright.shaping.canal.fit.PositionFit;

/** A single bend, its place in space, its measures, and the measures found back from points 0.1 mm apart. */
class CanalBendTest {
    private static final JsonNode ROW = ReferenceCanals.only("G1-single-bend");
    private static final List<CanalPiece> PIECES = ReferenceCanals.pieces(ROW.at("/input/segments"));
    private static final String DIGITS = "geometry in closed form, as many digits as the reference writes";
    private static final String REFIT = "angle 0.05°, radius 0.1 % as the reference asks";

    @Test
    void aBendMeasuresAndEndsAsInClosedForm() {
        BendMeasure measure = BendMeasure.of(PIECES).orElseThrow();
        ReferenceCanals.hold(ROW, "/bend_start", measure.startMm(), 1e-7, 0, DIGITS);
        ReferenceCanals.hold(ROW, "/schneider_deg", measure.schneiderDeg(), 2e-7, 0, DIGITS);
        ReferenceCanals.hold(ROW, "/pruett_deg", measure.pruettDeg(), 1e-9, 0, DIGITS);
        ReferenceCanals.hold(ROW, "/radius", measure.radiusMm(), 1e-9, 0, DIGITS);
        Centreline line = Centreline.of(PIECES);
        Vector apex = line.at(line.lengthMm()).place();
        Vector tangent = line.at(line.lengthMm()).tangent();
        ReferenceCanals.hold(ROW, "/apex_xyz/0", apex.x(), 0, 1e-6, DIGITS);
        ReferenceCanals.hold(ROW, "/apex_xyz/2", apex.z(), 0, 1e-5, DIGITS);
        ReferenceCanals.hold(ROW, "/apex_tangent/0", tangent.x(), 0, 1e-7, DIGITS);
        ReferenceCanals.hold(ROW, "/apex_tangent/2", tangent.z(), 0, 1e-7, DIGITS);
    }

    @Test
    void aBendIsFoundBackFromItsPoints() {
        Centreline line = Centreline.of(PIECES);
        List<Vector> points = new ArrayList<>();
        for (int i = 0; i <= 120; i++) {
            points.add(line.at(0.1 * i).place());
        }
        FittedCentreline fitted = PositionFit.of(points).orElseThrow();
        BendMeasure measure = BendMeasure.of(fitted.pieces()).orElseThrow();
        ReferenceCanals.hold(ROW, "/refit/pruett_deg", measure.pruettDeg(), 0, 0.05, REFIT);
        ReferenceCanals.hold(ROW, "/refit/radius", measure.radiusMm(), 1e-3, 0, REFIT);
        ReferenceCanals.hold(ROW, "/refit/s1", measure.startMm(), 1e-3, 0, REFIT);
        ReferenceCanals.hold(ROW, "/refit/schneider_deg", measure.schneiderDeg(), 0, 0.05, REFIT);
    }
}
