package org.taperwright.mechanics.comparison.definition;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** The definitions of designs, part by part. */
public final class Definitions {
    private static final Part ALLOY = new Part("Alloy", Design::alloy);

    private static final List<Part> PARTS = List.of(
            new Part("Diameter at the tip", design -> Shown.diameter(design.tipDiameterMm())),
            new Part("Taper", Definitions::taper),
            new Part("Length", design -> Shown.mm(design.lengthMm())),
            new Part("Section", Definitions::sections),
            new Part("Flutes per mm", Definitions::flutes),
            new Part("Turning sense", design -> design.hand().word()),
            new Part(
                    "Tip",
                    design -> design.tip().kind().word() + ", "
                            + Shown.degrees(design.tip().angleDeg())),
            ALLOY,
            new Part("Making", design -> design.making().word()),
            new Part("Motion", design -> design.motion().word()));

    private Definitions() {}

    private record Part(String label, Function<Design, String> words) {}

    /** A row for each part, in the order a form has them. */
    public static List<DefinitionRow> of(List<Design> designs, KnownAlloys alloys) {
        return PARTS.stream()
                .map(part -> new DefinitionRow(
                        part.label(),
                        designs.stream()
                                .map(design -> part == ALLOY
                                        ? alloys.label(design.alloy())
                                        : part.words().apply(design))
                                .toList()))
                .toList();
    }

    private static String taper(Design design) {
        if (design.taper().size() == 1) {
            return Shown.taper(design.taper().get(0).taper());
        }
        return design.taper().stream()
                .map(segment -> Shown.taper(segment.taper()) + " to " + Shown.mm(segment.toMm()))
                .collect(Collectors.joining(", "));
    }

    private static String flutes(Design design) {
        return design.flutes().size() == 1
                ? Shown.number(design.flutes().get(0).flutesPerMm())
                : design.flutes().stream()
                        .map(station -> Shown.number(station.flutesPerMm()) + " at " + Shown.mm(station.levelMm()))
                        .collect(Collectors.joining(", "));
    }

    private static String sections(Design design) {
        return design.sections().stream()
                .map(station -> section(station.shape()) + at(design, station))
                .collect(Collectors.joining("; "));
    }

    private static String at(Design design, SectionStation station) {
        return design.sections().size() == 1 ? "" : " at " + Shown.mm(station.levelMm());
    }

    private static String section(SectionShape shape) {
        String family =
                Sections.family(shape.family()).map(SectionFamily::label).orElse(shape.family());
        String parameters = shape.parameters().entrySet().stream()
                .map(each -> label(shape, each) + " " + Shown.number(each.getValue()))
                .collect(Collectors.joining(", "));
        String land = shape.landWidth() > 0 ? ", lands " + Shown.number(shape.landWidth()) + " d" : "";
        String rounding =
                shape.edgeRounding() > 0 ? ", edges rounded " + Shown.number(shape.edgeRounding()) + " d" : "";
        return family + (parameters.isEmpty() ? "" : ", " + parameters) + land + rounding;
    }

    private static String label(SectionShape shape, Map.Entry<String, Double> parameter) {
        return Sections.family(shape.family()).stream()
                .flatMap(family -> family.parameters().stream())
                .filter(declared -> declared.name().equals(parameter.getKey()))
                .map(declared -> declared.label().toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse(parameter.getKey());
    }
}
