package org.taperwright.mechanics.properties.helix;

import java.util.Optional;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.contour.PlainOutline;
import org.taperwright.mechanics.properties.mesh.MeshFineness;
import org.taperwright.mechanics.properties.mesh.SectionMesh;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.work.BoundedCache;

/**
 * The helical factors of any outline by finite elements on its section: within 0.2 % for t up to 2 and 0.6 % for t up to 4
 * over the whole space of the families. An outline of more than sixty corners, or one that asks for too many elements, is
 * made plain first: a jagged line loses nothing by that, dozens of fins do (up to a fifth). The last few results are kept.
 */
public final class HelicalAnalysis {
    private static final int KEPT = 128;
    /** Corners of the polygons that are tried in turn, each with less of the outline than the one before. */
    private static final int[] CORNERS = {60, 42, 30, 21, 15, 10, 6};

    private static final double[] FINER = {1, 0.7, 0.5};
    /** What keeps an analysis within about a tenth of a second. */
    private static final int MOST_ELEMENTS = 120;

    private static final BoundedCache<Key, HelicalFactors> CACHE = new BoundedCache<>(KEPT);

    private record Key(Outline outline, double poisson) {}

    private HelicalAnalysis() {}

    /**
     * The factors.
     *
     * @param outline an outline that a section's analysis finds nothing impossible in
     * @throws NoFactors for an outline that crosses itself, or has more fins than the bounds of work allow
     * @throws IllegalArgumentException for a Poisson's ratio outside 0 to 0.495
     */
    public static HelicalFactors of(Outline outline, double poisson) {
        if (!(poisson >= 0 && poisson <= 0.495)) {
            throw new IllegalArgumentException("Poisson's ratio must lie between 0 and 0.495, not " + poisson);
        }
        return CACHE.get(new Key(outline, poisson), HelicalAnalysis::compute);
    }

    private static HelicalFactors compute(Key key) {
        Contour given = Contour.of(key.outline);
        Optional<HelicalFactors> found = Optional.empty();
        for (int corners : CORNERS) {
            Contour contour = PlainOutline.of(given, corners);
            for (double factor : FINER) {
                found = found.or(() -> on(contour, factor, true, key.poisson));
            }
            found = found.or(() -> on(contour, 1, false, key.poisson));
        }
        return found.orElseThrow(() -> new NoFactors(
                "what the turning of its flutes makes of a section, also of one between two stations, was not found"));
    }

    private static Optional<HelicalFactors> on(Contour contour, double factor, boolean bent, double poisson) {
        return SectionMesh.of(contour, MeshFineness.HELIX.times(factor), bent)
                .filter(mesh -> mesh.elements() <= MOST_ELEMENTS)
                .flatMap(mesh -> TwistedBar.on(mesh, poisson))
                .flatMap(HelicalFactors::of);
    }
}
