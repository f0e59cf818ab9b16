package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.BenchBands;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.SeriesLook;
import org.taperwright.workbench.ui.Spacing;

/** What follows from the design: section, numbers, checks, and four plots, arranged by the room there is. */
final class ResultsPane extends JPanel implements Scrollable {
    private final OpenDesign open;
    private final ViewedLevel level;
    private final NumbersPane numbers = new NumbersPane();
    private final ChecksPane checks;
    private final PlotTile diameters = new PlotTile("design.diameters", "Diameter along the blade", Standing.COMPUTED);
    private final PlotTile stiffnesses =
            new PlotTile("design.stiffnesses", "Stiffness along the blade", Standing.COMPUTED);
    private final PlotTile bending = new PlotTile("design.bending", "Bending test", Standing.ESTIMATE);
    private final PlotTile twisting = new PlotTile("design.twisting", "Twisting test", Standing.ESTIMATE);
    private transient Results.State state = Results.State.EMPTY;

    ResultsPane(Desk desk, OpenDesign open, Results results, ViewedLevel level, Consumer<Fault> go) {
        this.open = open;
        this.level = level;
        checks = new ChecksPane(go);
        setName("design.results");
        setOpaque(false);
        setLayout(new Arrangement());
        add(new SectionPane(desk, open, level));
        JPanel side = new JPanel(new BorderLayout(0, Spacing.NEAR));
        side.setOpaque(false);
        side.add(numbers, BorderLayout.CENTER);
        side.add(checks, BorderLayout.SOUTH);
        add(side);
        List.of(diameters, stiffnesses, bending, twisting).forEach(this::add);
        results.onChange(this::show);
        open.onShown(any -> check());
        level.onChange(mm -> plots());
    }

    private void show(Results.State now) {
        state = now;
        numbers.show(now.readings(), now.outdated());
        check();
        plots();
    }

    /** What was not taken stands before what is wrong with the design as it is. */
    private void check() {
        List<Fault> faults = new ArrayList<>(open.refusals());
        faults.addAll(state.faults());
        checks.show(faults, state.trouble());
    }

    private void plots() {
        Optional<Assessment> known = state.assessment();
        if (known.isEmpty() || state.bands().isEmpty()) {
            Plot none =
                    Plot.of(Plot.Axis.of("Distance from the tip", "mm", 0, 16), Plot.Axis.of("", "", 0, 1), List.of());
            List.of(diameters, stiffnesses, bending, twisting).forEach(tile -> tile.show(none, "", false));
            return;
        }
        SeriesLook look = open.look();
        BenchBands bands = state.bands().get();
        BladePlots plots = new BladePlots(known.get(), bands, look, level.mm());
        boolean old = state.outdated();
        diameters.show(plots.diameters(), "", old);
        stiffnesses.show(plots.stiffnesses(), "", old);
        bending.show(plots.bending(), BenchWords.bending(known.get().bending(), bands.bending()), old);
        twisting.show(plots.twisting(), BenchWords.twisting(known.get().twisting(), bands.twisting()), old);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 2 * Spacing.APART;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent().getWidth() > getMinimumSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent().getHeight() > getMinimumSize().height;
    }

    /** The section and the side column above; the four plots below in one row, or in two where it is narrow. */
    private static final class Arrangement implements LayoutManager {
        private static final int ROW_OF_FOUR = 1040;
        private static final int LEAST_PLOT = 176;
        private static final int LEAST_TOP = 262;
        private static final int NARROWEST = 560;

        @Override
        public void addLayoutComponent(String name, Component part) {
            // places follow from the order of adding
        }

        @Override
        public void removeLayoutComponent(Component part) {
            // nothing is kept by component
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            return minimumLayoutSize(parent);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            int rows = rows(parent.getWidth());
            return new Dimension(NARROWEST, LEAST_TOP + rows * (LEAST_PLOT + Spacing.NEAR));
        }

        private static int rows(int width) {
            return width >= ROW_OF_FOUR ? 1 : 2;
        }

        @Override
        public void layoutContainer(Container parent) {
            int width = parent.getWidth();
            int rows = rows(width);
            int columns = 4 / rows;
            int spare = Math.max(0, parent.getHeight() - minimumLayoutSize(parent).height);
            int plot = LEAST_PLOT + (int) (spare * (rows == 1 ? 0.4 : 0.5)) / rows;
            int top = parent.getHeight() - rows * (plot + Spacing.NEAR);
            int section = Math.min((int) (width * 0.56), Math.max((int) (width * 0.44), top));
            parent.getComponent(0).setBounds(0, 0, section, top);
            parent.getComponent(1).setBounds(section + Spacing.APART, 0, width - section - Spacing.APART, top);
            int cell = (width - (columns - 1) * Spacing.APART) / columns;
            for (int i = 0; i < 4; i++) {
                int x = (i % columns) * (cell + Spacing.APART);
                int y = top + Spacing.NEAR + (i / columns) * (plot + Spacing.NEAR);
                parent.getComponent(2 + i).setBounds(x, y, cell, plot);
            }
        }
    }
}
