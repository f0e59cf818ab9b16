package org.taperwright.mechanics.comparison.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.quantity.Shown;

/**
 * The parameters that a design has: size, taper of each segment, flutes at each station, what each section's family declares, its
 * lands and edge rounding, alloy, motion. Ranges of size, taper and flutes are wider than what is made (common practice, no
 * source); a setting that cannot be is refused by the design's checks.
 */
public final class DesignParameters {
    /** Sizes 06 and 140, the ends of the standard's series. */
    private static final double SMALLEST_MM = 0.06;

    private static final double LARGEST_MM = 1.4;

    private DesignParameters() {}

    /** The parameters of a design. */
    public static List<DesignParameter> of(Design design) {
        return of(design, KnownAlloys.SHIPPED);
    }

    /** The same where it may be of other alloys than those that come with the program. */
    public static List<DesignParameter> of(Design design, KnownAlloys alloys) {
        List<DesignParameter> all = new ArrayList<>();
        all.add(new Amount(
                "tipDiameterMm",
                "Diameter at the tip",
                "mm",
                SMALLEST_MM,
                Math.min(LARGEST_MM, Math.max(0.6, 2 * design.tipDiameterMm())),
                0.01,
                false,
                Design::tipDiameterMm,
                (changed, value) -> Designs.with(changed).tipDiameterMm(value).design()));
        for (int i = 0; i < design.taper().size(); i++) {
            all.add(taper(design, i));
        }
        for (int i = 0; i < design.flutes().size(); i++) {
            all.add(flutes(design, i));
        }
        for (int i = 0; i < design.sections().size(); i++) {
            all.addAll(SectionParameters.of(design, i));
        }
        all.add(new Choice(
                "alloy",
                "Alloy",
                alloys.all().stream()
                        .map(alloy -> new Choice.Option(alloy.id(), alloy.label()))
                        .toList(),
                Design::alloy,
                (changed, id) -> Designs.with(changed).alloy(id).design()));
        all.add(new Choice(
                "motion",
                "Motion",
                Arrays.stream(Motion.values())
                        .map(motion -> new Choice.Option(motion.word(), motion.word()))
                        .toList(),
                changed -> changed.motion().word(),
                DesignParameters::withMotion));
        return all;
    }

    private static Design withMotion(Design design, String word) {
        Motion motion = Arrays.stream(Motion.values())
                .filter(each -> each.word().equals(word))
                .findFirst()
                .orElseThrow();
        return Designs.with(design).motion(motion).design();
    }

    private static Amount taper(Design design, int i) {
        TaperSegment segment = design.taper().get(i);
        String where = design.taper().size() == 1
                ? ""
                : ", " + Shown.number(segment.fromMm()) + " to " + Shown.mm(segment.toMm());
        return new Amount(
                "taper[" + i + "].taper",
                "Taper" + where,
                "",
                -0.02,
                0.12,
                0.005,
                false,
                changed -> changed.taper().get(i).taper(),
                (changed, value) -> Designs.with(changed)
                        .taper(replaced(changed.taper(), i, old -> new TaperSegment(old.fromMm(), old.toMm(), value)))
                        .design());
    }

    private static Amount flutes(Design design, int i) {
        String where = design.flutes().size() == 1
                ? ""
                : " at " + Shown.mm(design.flutes().get(i).levelMm());
        return new Amount(
                "flutes[" + i + "].flutesPerMm",
                "Flutes per mm" + where,
                "",
                0.1,
                3,
                0.05,
                false,
                changed -> changed.flutes().get(i).flutesPerMm(),
                (changed, value) -> Designs.with(changed)
                        .flutes(replaced(changed.flutes(), i, old -> new FluteStation(old.levelMm(), value)))
                        .design());
    }

    /** A list with one item changed. */
    static <T> List<T> replaced(List<T> list, int index, UnaryOperator<T> change) {
        List<T> copy = new ArrayList<>(list);
        copy.set(index, change.apply(copy.get(index)));
        return copy;
    }
}
