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
 * over the whole space of the families. An outline of more than forty corners, or one that asks for too many elements, is
 * made plain first: a jagged line loses nothing by that, dozens of fins do (up to a fifth). The last few results are kept.
 */
public final class HelicalAnalysis {
    private static final int KEPT = 128;
    /** Corners of the polygons that are tried in turn, each with less of the outline than the one before. */
    private static final int[] CORNERS = {42, 30, 21, 15, 10, 6};

    private static final double[] FINER = {1, 0.7, 0.5};
    /** What keeps an analysis within about a twentieth of a second. */
    private static final int MOST_ELEMENTS = 90;

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
        Contour contour = PlainOutline.of(given, CORNERS[0]);
        Optional<HelicalFactors> found = on(contour, key.poisson);
        for (int k = 0; found.isEmpty() && k < CORNERS.length; k++) {
            Contour plainer = PlainOutline.polygon(given, CORNERS[k]);
            if (plainer.size() != contour.size()) {
                contour = plainer;
                found = on(contour, key.poisson);
            }
        }
        return found.orElseThrow(() -> new NoFactors(
                "what the turning of its flutes makes of a section, also of one between two stations, was not found"));
    }

    /** By the coarsest mesh that fits; a finer one where its elements would overlap, straight sides where that does not help. */
    private static Optional<HelicalFactors> on(Contour contour, double poisson) {
        for (double factor : FINER) {
            Optional<SectionMesh> mesh = SectionMesh.of(contour, MeshFineness.HELIX.times(factor), true, MOST_ELEMENTS);
            if (mesh.isPresent() && mesh.get().elements() > MOST_ELEMENTS) {
                return Optional.empty();
            }
            Optional<HelicalFactors> found = mesh.flatMap(each -> on(each, poisson));
            if (found.isPresent()) {
                return found;
            }
        }
        return SectionMesh.of(contour, MeshFineness.HELIX, false, MOST_ELEMENTS)
                .filter(mesh -> mesh.elements() <= MOST_ELEMENTS)
                .flatMap(mesh -> on(mesh, poisson));
    }

    private static Optional<HelicalFactors> on(SectionMesh mesh, double poisson) {
        return TwistedBar.on(mesh, poisson).flatMap(HelicalFactors::of);
    }
}
