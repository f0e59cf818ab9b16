package org.taperwright.mechanics.design;

import java.util.List;
import java.util.OptionalInt;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.Edge;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.Outlines;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.Fault;

/** Section stations: each outline, and what its edges and core promise. */
final class SectionChecks {
    /** A sharper edge chips or rolls over, degrees. */
    private static final double THIN_WEDGE_DEG = 30;
    /** A thinner core breaks early, in diameters. */
    private static final double THIN_CORE = 0.3;

    /** What keeps the work on one design, and so every edit of it, within a second. */
    private static final int MOST = 5;

    private SectionChecks() {}

    static void check(Design design, Findings findings) {
        if (design.sections().isEmpty()) {
            findings.impossible("sections", "there is no section", "at least one section station");
        }
        if (findings.tooMany("sections", "section stations", design.sections().size(), MOST)) {
            return;
        }
        double before = Double.NEGATIVE_INFINITY;
        OptionalInt edgesBefore = OptionalInt.empty();
        for (int i = 0; i < design.sections().size(); i++) {
            SectionStation station = design.sections().get(i);
            String where = "sections[" + i + "].";
            if (Stations.level(where + "levelMm", station.levelMm(), before, design, findings)) {
                before = station.levelMm();
            }
            OptionalInt edges = shape(where + "shape", station, design, findings);
            if (edgesBefore.isPresent() && edges.isPresent() && edgesBefore.getAsInt() != edges.getAsInt()) {
                findings.unusual(
                        where + "shape",
                        edges.getAsInt() + " edges follow on " + edgesBefore.getAsInt(),
                        "the same number along the blade; between them edges fade out and the pitch jumps (common practice,"
                                + " no source)");
            }
            edgesBefore = edges;
        }
    }

    /** The number of edges, if there is an outline. */
    private static OptionalInt shape(String where, SectionStation station, Design design, Findings findings) {
        OutlineResult result = Sections.outline(station.shape());
        if (result instanceof OutlineResult.Refused refused) {
            refused.faults().forEach(fault -> findings.add(within(where, fault)));
            return OptionalInt.empty();
        }
        OutlineResult.Drawn drawn = (OutlineResult.Drawn) result;
        drawn.remarks().forEach(fault -> findings.add(within(where, fault)));
        List<Edge> edges = Sections.edges(drawn.outline(), design.hand());
        edges(where, edges, findings);
        core(where, drawn.outline(), findings);
        return OptionalInt.of(edges.size());
    }

    private static Fault within(String where, Fault fault) {
        return new Fault(fault.weight(), where + "." + fault.where(), fault.what(), fault.expected());
    }

    private static void edges(String where, List<Edge> edges, Findings findings) {
        if (edges.isEmpty()) {
            findings.unusual(
                    where, "the section has no cutting edge", "at least one; a round blade only spreads and burnishes");
            return;
        }
        double thinnest = edges.stream().mapToDouble(Edge::wedgeDeg).min().orElseThrow();
        if (thinnest < THIN_WEDGE_DEG) {
            findings.unusual(
                    where,
                    "an edge has a wedge of only " + Shown.degrees(thinnest),
                    "at least " + Shown.degrees(THIN_WEDGE_DEG)
                            + "; a thinner wedge chips or rolls over (common practice, no source)");
        }
    }

    private static void core(String where, Outline outline, Findings findings) {
        double core = 2 * Outlines.coreRadius(outline);
        if (core < THIN_CORE) {
            findings.unusual(
                    where,
                    "the core is " + Shown.percent(core) + " of the diameter",
                    "at least " + Shown.percent(THIN_CORE)
                            + "; a thinner core twists and breaks early (common practice, no source)");
        }
    }
}
