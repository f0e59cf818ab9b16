package org.taperwright.mechanics.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.cutting.CuttingGeometries;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.fatigue.Fatigue;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.properties.BladeProfile;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.properties.Profiles;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.helix.NoFactors;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.OutlineResult;
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
        return of(design, KnownAlloys.SHIPPED, progress);
    }

    /** The same where it may name other alloys than those that come with the program. */
    public static AssessmentResult of(Design design, KnownAlloys alloys, Progress progress) {
        List<Fault> faults = new ArrayList<>(DesignChecks.check(design, alloys));
        Optional<Alloy> alloy = alloys.find(design.alloy());
        if (!impossible(faults)) {
            faults.addAll(BladeSections.faults(design));
        }
        if (impossible(faults) || alloy.isEmpty()) {
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
        } catch (NoFactors unknown) {
            faults.add(Fault.impossible(
                    "sections", unknown.getMessage(), "outlines with fewer or thicker fins, or more alike"));
            return new AssessmentResult.Refused(faults);
        }
    }

    private static boolean impossible(List<Fault> faults) {
        return faults.stream().anyMatch(fault -> fault.weight() == Weight.IMPOSSIBLE);
    }

    private static Assessment assess(Design design, Alloy alloy, List<Fault> remarks, Progress progress) {
        progress.at(0, "sections");
        progress.check();
        List<AssessedSection> stations = new ArrayList<>();
        BladeSections sections = BladeSections.of(design);
        for (SectionStation station : design.sections()) {
            stations.add(assessed(station, design));
        }
        progress.at(0.6, "bench tests");
        progress.check();
        BendingResult bending = BendingTest.run(design, alloy, sections);
        StrainRemark.on(bending, alloy).ifPresent(remarks::add);
        ClampRemark.on(design, alloy, sections).ifPresent(remarks::add);
        BladeProfile profile = Profiles.of(design, alloy, sections);
        HelixRemark.on(design, profile).ifPresent(remarks::add);
        Assessment assessment = new Assessment(
                design,
                alloy,
                remarks,
                stations,
                profile,
                bending,
                TwistingTest.run(design, alloy, sections),
                CuttingGeometries.of(design, sections),
                Fatigue.in(Tube.USUAL, design, alloy, sections, Fatigue.USUAL_RPM));
        progress.at(1, "done");
        return assessment;
    }

    private static AssessedSection assessed(SectionStation station, Design design) {
        if (Sections.outline(station.shape()) instanceof OutlineResult.Drawn drawn) {
            Outline outline = drawn.outline();
            return new AssessedSection(
                    station.levelMm(), outline, SectionAnalysis.of(outline), Sections.edges(outline, design.hand()));
        }
        throw new IllegalStateException("a checked section cannot be drawn: " + station.shape());
    }
}
