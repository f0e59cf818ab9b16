package org.taperwright.mechanics.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.cutting.CuttingGeometries;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.Profiles;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Fault.Weight;
import org.taperwright.mechanics.work.Progress;

/**
 * Computes all that is known of one design. Sections are the costly part and are kept by outline, so editing anything else
 * does not compute them again.
 */
public final class Assessments {
    private Assessments() {}

    /** Assesses a design, or says which of its faults prevent that. */
    public static AssessmentResult of(Design design, Progress progress) {
        List<Fault> faults = new ArrayList<>(DesignChecks.check(design));
        Optional<Alloy> alloy = Alloys.find(design.alloy());
        boolean impossible = faults.stream().anyMatch(fault -> fault.weight() == Weight.IMPOSSIBLE);
        if (alloy.isEmpty()) {
            faults.add(unknownAlloy(design));
        }
        if (impossible || alloy.isEmpty()) {
            return new AssessmentResult.Refused(faults);
        }
        try {
            return new AssessmentResult.Assessed(assess(design, alloy.get(), faults, progress));
        } catch (Unsolved unsolved) {
            faults.add(Fault.impossible(
                    "taper",
                    unsolved.getMessage(),
                    "a blade without a place that is all but broken by its own thinness"));
            return new AssessmentResult.Refused(faults);
        }
    }

    private static Fault unknownAlloy(Design design) {
        String known = String.join(", ", Alloys.all().stream().map(Alloy::id).toList());
        return Fault.impossible("alloy", "no alloy is called \"" + design.alloy() + "\"", "one of " + known);
    }

    private static Assessment assess(Design design, Alloy alloy, List<Fault> remarks, Progress progress) {
        progress.at(0, "sections");
        List<AssessedSection> stations = new ArrayList<>();
        for (SectionStation station : design.sections()) {
            stations.add(assessed(station, design));
            progress.check();
        }
        BladeSections sections = BladeSections.of(design);
        progress.at(0.6, "bench tests");
        progress.check();
        Assessment assessment = new Assessment(
                design,
                alloy,
                remarks,
                stations,
                Profiles.of(design, alloy, sections),
                BendingTest.run(design, alloy, sections),
                TwistingTest.run(design, alloy, sections),
                CuttingGeometries.of(design, sections));
        progress.at(1, "done");
        return assessment;
    }

    private static AssessedSection assessed(SectionStation station, Design design) {
        Outline outline = drawn(station.shape());
        return new AssessedSection(
                station.levelMm(), outline, SectionAnalysis.of(outline), Sections.edges(outline, design.hand()));
    }

    /** The checks have refused designs whose sections cannot be drawn. */
    private static Outline drawn(SectionShape shape) {
        if (Sections.outline(shape) instanceof OutlineResult.Drawn drawn) {
            return drawn.outline();
        }
        throw new IllegalStateException("a checked section cannot be drawn: " + shape.family());
    }
}
