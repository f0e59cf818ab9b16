package org.taperwright.mechanics.properties;

import java.util.Optional;
import org.taperwright.mechanics.properties.contour.AreaMoments;
import org.taperwright.mechanics.properties.contour.Contour;
import org.taperwright.mechanics.properties.contour.PlainOutline;
import org.taperwright.mechanics.properties.contour.PlasticMoments;
import org.taperwright.mechanics.properties.contour.SandHeap;
import org.taperwright.mechanics.properties.torsion.TorsionAnalysis;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.work.BoundedCache;
import org.taperwright.mechanics.work.Fault;

/**
 * The numbers of a section from its outline: contour integrals exact to rounding, J and plastic torque to better than
 * 1e-4, peak shear to better than 1 %; of outlines of hundreds of pieces, J, plastic torque and peak shear are those of
 * a plainer outline, off by up to some per cent where they are jagged. An outline that cannot be worked on yields a fault, never a number that is not
 * one. The last few hundred results are kept.
 */
public final class SectionAnalysis {
    private static final int KEPT = 512;
    /** Radius, in diameters, of the fillet under which the peak shear at a sharp re-entrant corner is given. */
    private static final double FILLET = 0.02;

    private static final double THINNEST = 0.004;
    /** Pieces up to which an outline is worked on as it is; of more, the heap and the torsion are those of a plainer one. */
    private static final int MOST_PIECES = 400;
    /** Pieces of the outline whose re-entrant corners are filleted: of dozens of notches the deepest tell the peak. */
    private static final int MOST_FILLETED = 30;

    private static final BoundedCache<Outline, Analysed> CACHE = new BoundedCache<>(KEPT);

    private SectionAnalysis() {}

    /**
     * The section's numbers.
     *
     * @throws IllegalArgumentException for an outline that {@link #fault} finds something impossible in
     */
    public static SectionProperties of(Outline outline) {
        Analysed analysed = CACHE.get(outline, SectionAnalysis::analyse);
        if (analysed instanceof Known known) {
            return known.properties;
        }
        throw new IllegalArgumentException(((Refused) analysed).fault.sentence());
    }

    /** What keeps the section's numbers from being computed, if anything does. */
    public static Optional<Fault> fault(Outline outline) {
        Analysed analysed = CACHE.get(outline, SectionAnalysis::analyse);
        return analysed instanceof Refused refused ? Optional.of(refused.fault) : Optional.empty();
    }

    private static Analysed analyse(Outline outline) {
        Contour contour = Contour.of(outline);
        if (contour.size() < 2) {
            return refused("has no extent", "a closed outline of at least two pieces is needed");
        }
        AreaMoments moments = AreaMoments.of(contour);
        if (!(moments.area() > 0)) {
            return refused("encloses no area or runs clockwise", "the material must lie on the left of its outline");
        }
        Outline plain = PlainOutline.ofPieces(outline, MOST_PIECES);
        SandHeap heap = heap(contour, plain, moments.area());
        if (!(heap.inscribed() >= THINNEST)) {
            return refused(
                    "is nowhere thicker than " + THINNEST + " of its diameter",
                    "so thin a section buckles and this theory does not hold");
        }
        Optional<TorsionAnalysis> torsion =
                TorsionAnalysis.of(plain.equals(outline) ? contour : Contour.of(plain), moments.area());
        boolean sharp = contour.reentrant();
        if (torsion.isEmpty()) {
            return refused("crosses or touches itself", "a simple outline is needed");
        }
        PlasticMoments plastic = PlasticMoments.of(contour, moments);
        return new Known(new SectionProperties(
                moments.area(),
                moments.centroidX(),
                moments.centroidY(),
                moments.iMax(),
                moments.iMin(),
                moments.angleOfIMin(),
                moments.iMax() + moments.iMin(),
                torsion.get().constant(),
                sharp
                        ? filletedPeak(plain).orElse(torsion.get().peakShear())
                        : torsion.get().peakShear(),
                sharp,
                heap.plasticTorque(),
                plastic.least(),
                plastic.most(),
                2 * Outlines.coreRadius(outline),
                heap.inscribed(),
                Math.PI / 4 - moments.area()));
    }

    /** Of a plainer outline the share of its own {@code A^1.5} is taken. */
    private static SandHeap heap(Contour contour, Outline plain, double area) {
        if (contour.size() <= MOST_PIECES) {
            return SandHeap.of(contour);
        }
        Contour plainer = Contour.of(plain);
        SandHeap heap = SandHeap.of(plainer);
        double share = Math.pow(area / AreaMoments.of(plainer).area(), 1.5);
        return new SandHeap(heap.plasticTorque() * share, heap.inscribed());
    }

    /** Nothing where notches stand too close for fillets; the peak is then the mesh's own, of the finest notch it sees. */
    private static Optional<Double> filletedPeak(Outline outline) {
        Contour filleted = Contour.of(Outlines.filletReentrant(PlainOutline.ofPieces(outline, MOST_FILLETED), FILLET));
        return TorsionAnalysis.of(filleted, AreaMoments.of(filleted).area()).map(TorsionAnalysis::peakShear);
    }

    private static Analysed refused(String what, String expected) {
        return new Refused(Fault.impossible("section", "the outline " + what, expected));
    }

    private sealed interface Analysed {}

    private record Known(SectionProperties properties) implements Analysed {}

    private record Refused(Fault fault) implements Analysed {}
}
