package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.SeriesLook;

/** The figures beside the table: map, sections, profiles along the blade, bending curves. */
final class ComparisonFigures extends JPanel {
    private static final int WIDTH = 380;
    private static final int HEIGHT = 340;
    private static final int LEAST_WIDTH = 340;

    private final MapFigure map;
    private final SectionsFigure sections;
    private final ProfilesFigure profiles = new ProfilesFigure();
    private final BendingFigure bending = new BendingFigure();

    ComparisonFigures(Desk desk) {
        super(new BorderLayout());
        map = new MapFigure(desk);
        sections = new SectionsFigure(desk);
        JTabbedPane tabs = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
        tabs.setName("comparison.figures");
        tabs.addTab("Map", null, map, "Two metrics against each other");
        tabs.addTab("Sections", null, sections, "Sections to one scale");
        tabs.addTab("Along the blade", null, profiles, "Diameter, stiffness and strength along the blade");
        tabs.addTab("Bending", null, bending, "Moment against angle in the bending test");
        add(tabs, BorderLayout.CENTER);
        setPreferredSize(new Dimension(WIDTH, HEIGHT));
        setMinimumSize(new Dimension(LEAST_WIDTH, HEIGHT / 2));
    }

    /** Shows a result; looks are in the order of its members. */
    void show(Compared compared, List<SeriesLook> looks) {
        map.show(compared, looks);
        sections.show(compared, looks);
        profiles.show(compared, looks);
        bending.show(compared, looks);
    }

    /** Shows where a design has been while a parameter was moved. */
    void showPath(List<Map<Metric, Double>> ratios, SeriesLook look) {
        map.showPath(ratios, look);
    }

    /** Marks what is shown as outdated, or as current again. */
    void setOutdated(boolean outdated) {
        String remark = outdated ? "outdated" : "";
        map.setRemark(remark);
        sections.setRemark(remark);
        profiles.setRemark(remark);
        bending.setRemark(remark);
    }
}
