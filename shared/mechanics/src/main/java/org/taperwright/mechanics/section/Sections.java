package org.taperwright.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import org.taperwright.mechanics.work.Fault;

/** Outlines and edges of the sections that the registered families offer. */
public final class Sections {
    private static final List<SectionFamily> FAMILIES =
            ServiceLoader.load(SectionFamily.class, Sections.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .sorted(Comparator.comparing(SectionFamily::label))
                    .toList();

    private Sections() {}

    /** All families, by label. */
    public static List<SectionFamily> families() {
        return FAMILIES;
    }

    /** The family of an identifier. */
    public static Optional<SectionFamily> family(String id) {
        return FAMILIES.stream().filter(family -> family.id().equals(id)).findFirst();
    }

    /**
     * The outline of a shape: the family's, then a land ground on each cutting edge, then the edges rounded, scaled to
     * circumscribed diameter 1. Faults name fields of the shape, such as {@code parameters.sagitta}.
     */
    public static OutlineResult outline(SectionShape shape) {
        Optional<SectionFamily> family = family(shape.family());
        if (family.isEmpty()) {
            String known = String.join(
                    ", ", FAMILIES.stream().map(SectionFamily::id).sorted().toList());
            return new OutlineResult.Refused(List.of(Fault.impossible(
                    "family", "no family of sections is called \"" + shape.family() + "\"", "one of " + known)));
        }
        List<Fault> faults = ShapeCheck.faults(family.orElseThrow(), shape);
        if (faults.stream().anyMatch(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)) {
            return new OutlineResult.Refused(faults);
        }
        Drawing drawing = new Drawing(family.orElseThrow().outline(shape), faults);
        if (shape.landWidth() > 0) {
            drawing = drawing.then(outline -> Margin.ground(outline, shape.landWidth()));
        }
        if (shape.edgeRounding() > 0) {
            drawing = drawing.then(outline -> CornerArcs.round(outline, shape.edgeRounding()));
        }
        String where = family.orElseThrow().takesPoints() ? "points" : "parameters";
        return drawing.then(outline -> OutlineCheck.checked(outline, where)).result();
    }

    /** One step after another, gathering remarks; a refusal ends it. */
    private record Drawing(OutlineResult result) {
        Drawing(OutlineResult first, List<Fault> remarks) {
            this(with(remarks, first));
        }

        Drawing then(java.util.function.Function<Outline, OutlineResult> step) {
            return result instanceof OutlineResult.Drawn drawn
                    ? new Drawing(with(drawn.remarks(), step.apply(drawn.outline())))
                    : this;
        }

        private static OutlineResult with(List<Fault> before, OutlineResult result) {
            List<Fault> all = new ArrayList<>(before);
            if (result instanceof OutlineResult.Drawn drawn) {
                all.addAll(drawn.remarks());
                return new OutlineResult.Drawn(drawn.outline(), all);
            }
            all.addAll(((OutlineResult.Refused) result).faults());
            return new OutlineResult.Refused(all);
        }
    }

    /** The cutting edges of an outline drawn as seen from the handle, anticlockwise from +x; none on a round bar. */
    public static List<Edge> edges(Outline outline, Hand hand) {
        return Edges.of(outline, hand);
    }

    /**
     * The outline between two others, mixed at equal angle about the axis where both allow it, else at equal arc length.
     *
     * @param share 0 gives {@code a}, 1 gives {@code b}
     */
    public static Outline blend(Outline a, Outline b, double share) {
        return Blend.of(a, b, share);
    }

    /** A shape of a family with every parameter at its initial value. */
    public static SectionShape initialShape(SectionFamily family) {
        Map<String, Double> parameters = new java.util.TreeMap<>();
        family.parameters().forEach(parameter -> parameters.put(parameter.name(), parameter.initial()));
        return SectionShape.of(family.id(), parameters);
    }
}
