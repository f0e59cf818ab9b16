package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;
import org.taperwright.workbench.ui.SeriesLook;

/**
 * Finds the sections of a comparison at a level.
 *
 * @param compared the comparison
 * @param looks one for each member
 * @param levelMm level from the tip, mm
 * @param oneDiameter whether every section is drawn with the same diameter
 */
record SectionsWork(Compared compared, List<SeriesLook> looks, double levelMm, boolean oneDiameter)
        implements Work<SectionsWork.Drawn> {
    /**
     * A section to draw.
     *
     * @param name the design's name
     * @param look its look
     * @param outline of unit diameter
     * @param diameterMm diameter at the level, mm
     */
    record OneSection(String name, SeriesLook look, Outline outline, double diameterMm) {}

    /** The sections at a level that designs of the comparison reach, in their order. */
    record Drawn(List<OneSection> sections, boolean oneDiameter) {
        Drawn {
            sections = List.copyOf(sections);
        }
    }

    @Override
    public Drawn run(Progress progress) {
        List<OneSection> sections = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            progress.check();
            String name = compared.members().get(i).name();
            SeriesLook look = looks.get(i);
            compared.assessment(i)
                    .map(assessment -> assessment.design())
                    .filter(design -> levelMm <= design.workingPartMm())
                    .ifPresent(design -> sections.add(section(name, look, design)));
        }
        return new Drawn(sections, oneDiameter);
    }

    private OneSection section(String name, SeriesLook look, Design design) {
        return new OneSection(name, look, BladeSections.of(design).outlineAt(levelMm), design.diameterMm(levelMm));
    }
}
