package org.taperwright.shaping.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.taperwright.mechanics.design.IsoSize;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.passage.stroke.CanalInWork;

/**
 * What a shaped canal lets in: needles by gauge, and for each taper the cone that fits it.
 *
 * @param endMm depth to which the canal is to be filled, mm from the orifice
 * @param beforeMm3 volume before shaping to that depth, mm³
 * @param afterMm3 likewise after
 * @param needles the reach of each gauge, the widest first
 * @param cones for each taper the widest that as named stops no more than {@value #THERE_MM} mm short; absent where none does
 */
public record Finish(double endMm, double beforeMm3, double afterMm3, List<NeedleReach> needles, List<ConeFit> cones) {
    private static final List<Double> TAPERS = List.of(0.02, 0.04, 0.06, 0.08);
    private static final int LEAST_SIZE = 15;
    /** A cone that stops short by no more than this is there, mm: the shaped end is pointed (common practice, no source). */
    public static final double THERE_MM = 0.5;

    public Finish {
        needles = List.copyOf(needles);
        cones = List.copyOf(cones);
    }

    /**
     * What a canal lets in as it now is.
     *
     * @param endMm depth to which it is to be filled, mm from the orifice, such as that of the last step
     */
    public static Finish of(CanalInWork canal, double endMm, Progress progress) {
        double end = Math.min(endMm, canal.geometry().lengthMm());
        InscribedCircles circles = InscribedCircles.of(canal.now());
        double after = canal.volumeToMm3(end);
        List<NeedleReach> needles = Arrays.stream(NeedleGauge.values())
                .map(gauge -> {
                    progress.check();
                    return StiffNeedle.of(gauge, canal, circles);
                })
                .toList();
        List<ConeFit> cones = new ArrayList<>();
        List<Integer> sizes = IsoSizes.all().stream()
                .map(IsoSize::number)
                .filter(size -> size >= LEAST_SIZE)
                .toList();
        for (double taper : TAPERS) {
            progress.check();
            sizes.stream()
                    .takeWhile(size -> reaches(new Cone(size, taper), circles, end))
                    .reduce((thinner, wider) -> wider)
                    .ifPresent(size -> cones.add(ConeFit.of(new Cone(size, taper), circles, end, after)));
        }
        return new Finish(end, canal.volumeBeforeToMm3(end), after, needles, cones);
    }

    private static boolean reaches(Cone cone, InscribedCircles circles, double end) {
        return Fit.of(circles, cone.tipMm(), cone.taper(), end).depthMm() >= end - THERE_MM - 1e-9;
    }
}
