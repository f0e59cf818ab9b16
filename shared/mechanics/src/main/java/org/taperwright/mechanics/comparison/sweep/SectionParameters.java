package org.taperwright.mechanics.comparison.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.section.FamilyParameter;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;

/** The parameters of a section station: what its family declares, within the declared range, and the options of any family. */
final class SectionParameters {
    private SectionParameters() {}

    static List<DesignParameter> of(Design design, int station) {
        SectionStation at = design.sections().get(station);
        String where = design.sections().size() == 1 ? "" : " at " + Shown.mm(at.levelMm());
        String path = "sections[" + station + "].shape.";
        List<DesignParameter> all = new ArrayList<>();
        Optional<SectionFamily> family = Sections.family(at.shape().family());
        family.ifPresent(known ->
                known.parameters().forEach(parameter -> all.add(declared(path, where, station, known, parameter))));
        all.add(new Amount(
                path + "landWidth",
                "Width of the lands" + where,
                "d",
                0,
                0.3,
                0.005,
                false,
                changed -> changed.sections().get(station).shape().landWidth(),
                (changed, value) -> with(
                        changed,
                        station,
                        old -> new SectionShape(
                                old.family(), old.parameters(), old.edgeRounding(), value, old.points()))));
        all.add(new Amount(
                path + "edgeRounding",
                "Rounding of the edges" + where,
                "d",
                0,
                0.05,
                0.001,
                false,
                changed -> changed.sections().get(station).shape().edgeRounding(),
                (changed, value) -> with(
                        changed,
                        station,
                        old -> new SectionShape(
                                old.family(), old.parameters(), value, old.landWidth(), old.points()))));
        return all;
    }

    private static Amount declared(
            String path, String where, int station, SectionFamily family, FamilyParameter parameter) {
        return new Amount(
                path + "parameters." + parameter.name(),
                parameter.label() + where,
                parameter.unit(),
                parameter.least(),
                parameter.most(),
                parameter.step(),
                parameter.whole(),
                changed -> family.value(changed.sections().get(station).shape(), parameter.name()),
                (changed, value) -> with(changed, station, old -> {
                    Map<String, Double> values = new TreeMap<>(old.parameters());
                    values.put(parameter.name(), value);
                    return new SectionShape(old.family(), values, old.edgeRounding(), old.landWidth(), old.points());
                }));
    }

    private static Design with(Design design, int station, UnaryOperator<SectionShape> change) {
        return Designs.with(design)
                .sections(DesignParameters.replaced(
                        design.sections(),
                        station,
                        old -> new SectionStation(old.levelMm(), change.apply(old.shape()))))
                .design();
    }
}
