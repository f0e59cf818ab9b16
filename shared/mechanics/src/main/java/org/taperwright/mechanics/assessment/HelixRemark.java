package org.taperwright.mechanics.assessment;

import java.util.Comparator;
import java.util.Optional;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeProfile;
import org.taperwright.mechanics.properties.ProfilePoint;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/**
 * The remark on a blade whose flutes wind more steeply than the helical factors are computed and checked for, {@code
 * t = 2 pi d / pitch = 2 tan psi} above {@link HelicalFactors#LIMIT}: what is shown there goes by the factors at the limit.
 */
final class HelixRemark {
    private static final double LIMIT_DEG = Math.toDegrees(Math.atan(HelicalFactors.LIMIT / 2));

    private HelixRemark() {}

    static Optional<Fault> on(Design design, BladeProfile profile) {
        return profile.points().stream()
                .max(Comparator.comparingDouble(HelixRemark::twist))
                .filter(steepest -> !HelicalFactors.covers(twist(steepest)))
                .map(steepest -> Fault.unusual(
                        "flutes[" + station(design, steepest.levelMm()) + "].flutesPerMm",
                        "at " + Shown.mm(steepest.levelMm()) + " from the tip the flutes wind at "
                                + Shown.degrees(steepest.helixAngleDeg())
                                + " from the axis, outside the range in which stiffness and stress of turning flutes were"
                                + " validated; values there are those at "
                                + Shown.degrees(LIMIT_DEG),
                        "at most " + Shown.degrees(LIMIT_DEG) + ", which is 2 pi times diameter over pitch = "
                                + Shown.number(HelicalFactors.LIMIT)));
    }

    private static double twist(ProfilePoint point) {
        return 2 * Math.tan(Math.toRadians(point.helixAngleDeg()));
    }

    /** The flute station at or below a level. */
    private static int station(Design design, double levelMm) {
        int found = 0;
        for (int i = 1; i < design.flutes().size(); i++) {
            found = design.flutes().get(i).levelMm() <= levelMm ? i : found;
        }
        return found;
    }
}
