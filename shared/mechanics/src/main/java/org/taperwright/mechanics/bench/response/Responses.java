package org.taperwright.mechanics.bench.response;

import org.taperwright.mechanics.alloy.StressCurve;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.work.BoundedCache;

/** The answers of sections to bending, kept by outline and stress-strain curve so that they are computed once. */
public final class Responses {
    private static final BoundedCache<Outline, SectionSlabs> SLABS = new BoundedCache<>(64);
    private static final BoundedCache<Bent, MomentCurvature> BENDING = new BoundedCache<>(256);

    private Responses() {}

    private record Bent(Outline outline, StressCurve curve) {}

    /** Moment against curvature of a section, averaged over a turn of the flutes. */
    public static MomentCurvature bending(Outline outline, StressCurve curve) {
        return BENDING.get(new Bent(outline, curve), bent -> MomentCurvature.of(slabs(bent.outline()), bent.curve()));
    }

    /** Moment against curvature of a section bent about one axis, at an angle from x in rad. */
    public static MomentCurvature bendingAbout(Outline outline, double axis, StressCurve curve) {
        return MomentCurvature.of(SectionSlabs.alone(outline, axis), curve);
    }

    /** The slabs of a section in all directions. */
    public static SectionSlabs slabs(Outline outline) {
        return SLABS.get(outline, SectionSlabs::of);
    }
}
