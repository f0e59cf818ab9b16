package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.SampledLaw;

/** The moment law of a round bar with a plateau, in closed form and as it is sampled. */
class MomentLawTest {
    private static final JsonNode ROW = ReferenceCanals.only("M1-moment-law");
    private static final String DIGITS = "1e-8, or the seven digits that the reference writes";
    private static final String SAMPLED = "cubics between 401 samples";

    @Test
    void theClosedFormHasTheReferencesMomentsSlopesAndEnergies() {
        hold(ReferenceCanals.plateau(ROW.get("input"), ROW.at("/input/E").asDouble()), 1e-6, DIGITS);
    }

    @Test
    void theSampledLawFollowsTheClosedForm() {
        MomentLaw exact =
                ReferenceCanals.plateau(ROW.get("input"), ROW.at("/input/E").asDouble());
        hold(SampledLaw.of(exact, 0.2, 401), 1e-5, SAMPLED);
    }

    private static void hold(MomentLaw law, double tolerance, String reason) {
        double[] answer = new double[3];
        for (int i = 0; i < 4; i++) {
            law.at(ROW.at("/input/eps/" + i).asDouble(), answer);
            ReferenceCanals.hold(ROW, "/f/" + i, answer[0], tolerance, 1e-8, reason);
            ReferenceCanals.hold(ROW, "/df/" + i, answer[1], tolerance, 1e-8, reason);
            ReferenceCanals.hold(ROW, "/F/" + i, answer[2], tolerance, 1e-8, reason);
        }
    }
}
