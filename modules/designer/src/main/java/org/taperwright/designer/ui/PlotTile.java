package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.JPanel;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.workbench.ui.Heading;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Plot;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.StandingMark;
import org.taperwright.workbench.ui.XyPlot;

/** A plot with its title, its standing, and a line that says the outcome in words. */
final class PlotTile extends JPanel {
    private final XyPlot plot;
    private final Prose words = new Prose("", Ink::quiet, true);

    PlotTile(String name, String title, Standing standing) {
        super(new BorderLayout());
        setName(name);
        setOpaque(false);
        plot = new XyPlot(name + ".plot", title);
        JPanel top = new JPanel(new BorderLayout());
        top.setOpaque(false);
        Heading heading = new Heading(title);
        heading.setLabelFor(plot);
        words.setName(name + ".words");
        top.add(heading, BorderLayout.CENTER);
        top.add(new StandingMark(standing), BorderLayout.LINE_END);
        top.add(words, BorderLayout.SOUTH);
        add(top, BorderLayout.NORTH);
        add(plot, BorderLayout.CENTER);
        setMinimumSize(new Dimension(240, 170));
    }

    /** Shows a plot with what it says in words; an outdated one is marked. */
    void show(Plot shown, String inWords, boolean outdated) {
        plot.setPlot(shown);
        plot.setRemark(outdated ? "outdated" : "");
        words.setText(inWords);
        words.setVisible(!inWords.isEmpty());
    }
}
