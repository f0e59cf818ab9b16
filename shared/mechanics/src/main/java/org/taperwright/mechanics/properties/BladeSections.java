package org.taperwright.mechanics.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.Fault;

/**
 * The sections along a design's blade, all of unit diameter: between stations the outlines are blended at equal angle and
 * their numbers run smoothly; before the first and after the last station they stay the same.
 */
public final class BladeSections {
    /** Of all analyses between stations together, in halves of a millisecond. */
    private static final int MOST_EFFORT = 400;

    private final Design design;
    private final double[] levels;
    private final Outline[] outlines;
    private final int[] edges;
    /** Of one analysis between each two stations. */
    private final int effort;

    private final List<SectionProperties> properties = new ArrayList<>();
    /** To the next station; empty where the section stays the same. */
    private final List<Optional<BlendedSection>> blends = new ArrayList<>();

    private BladeSections(Design design) {
        this.design = design;
        int stations = design.sections().size();
        levels = new double[stations];
        outlines = new Outline[stations];
        edges = new int[stations];
        for (int i = 0; i < stations; i++) {
            SectionStation station = design.sections().get(i);
            levels[i] = station.levelMm();
            outlines[i] = drawn(i, station);
            edges[i] = Sections.edges(outlines[i], design.hand()).size();
            properties.add(SectionAnalysis.of(outlines[i]));
        }
        effort = IntStream.range(0, stations)
                .filter(this::changesAfter)
                .map(i -> BlendedSection.effort(outlines[i], outlines[i + 1]))
                .sum();
        int intervals = parts(BlendedSection.MOST_INTERVALS, MOST_EFFORT);
        for (int i = 0; i < stations; i++) {
            blends.add(
                    changesAfter(i)
                            ? Optional.of(BlendedSection.between(outlines[i], outlines[i + 1], intervals))
                            : Optional.empty());
        }
    }

    /**
     * The sections of a design.
     *
     * @throws IllegalArgumentException for a design that {@link #faults} finds something impossible in
     */
    public static BladeSections of(Design design) {
        List<Fault> faults = faults(design);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.get(0).sentence());
        }
        return new BladeSections(design);
    }

    /** What keeps the sections of a design from being drawn or worked on. */
    public static List<Fault> faults(Design design) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < design.sections().size(); i++) {
            String where = "sections[" + i + "].shape";
            OutlineResult result = Sections.outline(design.sections().get(i).shape());
            if (result instanceof OutlineResult.Drawn drawn) {
                SectionAnalysis.fault(drawn.outline()).ifPresent(fault -> faults.add(at(where, fault)));
            } else if (result instanceof OutlineResult.Refused refused) {
                refused.faults().stream()
                        .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                        .forEach(fault -> faults.add(at(where, fault)));
            }
        }
        if (design.sections().isEmpty()) {
            faults.add(Fault.impossible("sections", "there is none", "a blade needs at least one section"));
        }
        return faults;
    }

    private static Fault at(String where, Fault fault) {
        return new Fault(fault.weight(), where + "." + fault.where(), fault.what(), fault.expected());
    }

    private static Outline drawn(int index, SectionStation station) {
        if (Sections.outline(station.shape()) instanceof OutlineResult.Drawn drawn) {
            return drawn.outline();
        }
        throw new IllegalArgumentException("sections[" + index + "] has no outline");
    }

    /** The numbers of the section at a level. */
    public SectionProperties at(double levelMm) {
        int below = below(levelMm);
        return blends.get(below).map(blend -> blend.at(share(below, levelMm))).orElseGet(() -> properties.get(below));
    }

    /** The outline at a level, as at its station: the blade's turning with the level is left out. */
    public Outline outlineAt(double levelMm) {
        int below = below(levelMm);
        return blends.get(below)
                .map(blend -> blend.outline(share(below, levelMm)))
                .orElse(outlines[below]);
    }

    /** Number of cutting edges: of the nearer station. */
    public int edgesAt(double levelMm) {
        int below = below(levelMm);
        boolean nearerAbove = blends.get(below).isPresent() && share(below, levelMm) > 0.5;
        return edges[nearerAbove ? below + 1 : below];
    }

    /** Turns of the section per mm: flutes per mm over edges; 0 for a section without edges. */
    public double turnsPerMm(double levelMm) {
        int count = edgesAt(levelMm);
        return count == 0 ? 0 : design.flutesPerMm(levelMm) / count;
    }

    /** Angle between the flutes and the axis on the circumscribed circle, {@code atan(pi d turns per mm)}, rad. */
    public double helixAngle(double levelMm) {
        return Math.atan(Math.PI * design.diameterMm(levelMm) * turnsPerMm(levelMm));
    }

    /** Stations passed on the way to a level, with the share of the blend that follows; whole where the section stays. */
    double place(double levelMm) {
        int below = below(levelMm);
        return blends.get(below).isEmpty() ? below : below + Math.min(1, share(below, levelMm));
    }

    /**
     * Into how many parts the way from each station to the next may be cut, an analysis at each cut: a power of two, fewer
     * where outlines have many pieces or the section changes often, so that all of them together take bounded time.
     *
     * @param most parts that are enough
     * @param mostEffort in the units of {@link BlendedSection#effort}
     */
    int parts(int most, int mostEffort) {
        int parts = most;
        while (parts > 1 && (parts - 1) * effort > mostEffort) {
            parts /= 2;
        }
        return parts;
    }

    private boolean changesAfter(int station) {
        return station + 1 < outlines.length && !outlines[station].equals(outlines[station + 1]);
    }

    /** The outline at such a place. */
    Outline outlineAtPlace(double place) {
        int below = (int) place;
        return blends.get(below).map(blend -> blend.outline(place - below)).orElse(outlines[below]);
    }

    private int below(double levelMm) {
        int below = 0;
        while (below + 1 < levels.length && levels[below + 1] <= levelMm) {
            below++;
        }
        return below;
    }

    /** How far a level is from a station to the next, 0 to 1. */
    private double share(int below, double levelMm) {
        return Math.max(0, (levelMm - levels[below]) / (levels[below + 1] - levels[below]));
    }
}
