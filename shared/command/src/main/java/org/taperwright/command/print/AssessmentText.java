package org.taperwright.command.print;

import java.util.List;
import java.util.Optional;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.bench.StandardLimit;
import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.fatigue.FatigueResult;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.uncertainty.Sampled;
import org.taperwright.shaping.instrument.Designation;

/** Assessments as text for people. */
public final class AssessmentText {
    private AssessmentText() {}

    /** The designs one after another, the caution at the end. */
    public static String of(List<Assessment> assessments) {
        Page page = new Page();
        for (Assessment assessment : assessments) {
            page.title(assessment.design().name());
            definition(assessment, page);
            page.remarks(assessment.remarks());
            page.part("Sections, in units of the diameter d");
            page.table(SectionTables.properties(assessment));
            if (SectionTables.singular(assessment)) {
                page.line(
                        "* A sharp re-entrant corner has no finite peak; the value is with that corner filleted by 0.02 d.");
            }
            page.part("Edges of the sections");
            page.table(SectionTables.edges(assessment));
            page.part("Along the blade");
            page.table(BladeTable.of(assessment));
            page.part("Bench tests clamped 3 mm from the tip, cutting, and turning in a curve");
            page.table(metrics(assessment));
            limits(assessment, page);
            fatigue(assessment.fatigue(), page);
        }
        return page.finished();
    }

    private static void definition(Assessment assessment, Page page) {
        Design design = assessment.design();
        Designation designation = Designation.of(design);
        String colour = designation.colour().map(c -> " (" + c.word() + ")").orElse("");
        page.line("Size " + designation.text() + colour + ", taper "
                + designation.course().word() + ", working part " + Shown.mm(design.workingPartMm()) + " of "
                + Shown.mm(design.lengthMm()));
        page.line(assessment.alloy().label() + ", " + design.making().word() + ", tip "
                + design.tip().kind().word() + ", for " + design.motion().word() + ", edges lead "
                + design.hand().word());
    }

    private static Table metrics(Assessment assessment) {
        Table table = Table.of(
                Column.words("metric"),
                Column.numbers("value"),
                Column.words("5 to 95 %"),
                Column.words("unit"),
                Column.words("standing"));
        Optional<MetricGroup> group = Optional.empty();
        for (Metric metric : Metrics.all()) {
            if (!group.equals(Optional.of(metric.group()))) {
                group = Optional.of(metric.group());
                table.row(metric.group().label(), "", "", "", "");
            }
            Reading reading = metric.read(assessment);
            table.row(
                    "  " + metric.label(),
                    Shown.number(reading.value()),
                    reading.band().map(Shown::band).orElse(""),
                    metric.unit(),
                    metric.standing().word());
        }
        return table;
    }

    private static void limits(Assessment assessment, Page page) {
        BendingSpread bending = assessment.bendingSpread();
        TwistingSpread twisting = assessment.twistingSpread();
        page.line("");
        page.line("Bending at 45° (estimate, 5 to 95 % in brackets): "
                + Shown.benchMoment(assessment.bending().momentNmm()) + band(bending.momentNmm()) + ", by a force of "
                + Shown.number(assessment.bending().forceN()) + band(bending.forceN()) + " N");
        page.line("  Greatest strain " + Shown.number(100 * assessment.bending().greatestStrain())
                + band(bending.greatestStrain().map(strain -> 100 * strain)) + " %, "
                + Shown.mm(assessment.bending().strainLevelMm()) + band(bending.strainLevelMm()) + " from the tip"
                + (assessment.bending().setDeg().isPresent()
                        ? "; it stays bent by "
                                + Shown.number(assessment.bending().setDeg().getAsDouble()) + band(bending.setDeg())
                                + "°"
                        : "; it springs back"));
        limit(assessment.bending().limit(), page);
        page.line("Twisting (estimate, 5 to 95 % in brackets): fully plastic at "
                + Shown.benchMoment(assessment.twisting().plasticTorqueNmm()) + band(twisting.plasticTorqueNmm())
                + "; fracture at " + Shown.benchMoment(assessment.twisting().fractureTorqueNmm())
                + band(twisting.fractureTorqueNmm()) + " after "
                + Shown.number(assessment.twisting().fractureAngleDeg()) + band(twisting.fractureAngleDeg()) + "°, "
                + Shown.mm(assessment.twisting().weakestLevelMm()) + band(twisting.weakestLevelMm())
                + " from the tip");
        limit(assessment.twisting().limit(), page);
    }

    private static String band(Sampled sampled) {
        return sampled.band().map(band -> " [" + Shown.band(band) + "]").orElse("");
    }

    private static void fatigue(FatigueResult fatigue, Page page) {
        page.line("Turning in a tube of " + Shown.degrees(fatigue.tube().angleDeg()) + " on "
                + Shown.mm(fatigue.tube().radiusMm()) + ": fracture after "
                + (fatigue.unbroken() ? "at least " : "about ") + Shown.number(fatigue.cycles()) + " turns ("
                + Shown.band(fatigue.band()) + "), " + Shown.number(fatigue.seconds()) + " s ("
                + Shown.band(fatigue.secondsBand()) + ") at "
                + Shown.rpm(fatigue.speedRpm()) + ", " + Shown.mm(fatigue.levelMm()) + " from the tip");
        if (fatigue.extrapolated()) {
            page.line("  Extrapolated: the strain or the motion lies outside what the source tested.");
        }
        page.line("  (" + fatigue.source() + ")");
    }

    private static void limit(Optional<StandardLimit> limit, Page page) {
        if (limit.isEmpty()) {
            page.line("  No limit of the standard is at hand for this size and type.");
            return;
        }
        StandardLimit l = limit.get();
        page.line(
                "  The standard's limit: " + (l.upper() ? "at most " : "at least ") + Shown.benchMoment(l.valueNmm()));
        page.line("  (" + l.source() + ")");
    }
}
