package org.taperwright.sequencer.scene;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import org.netbeans.api.visual.widget.Scene;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.passage.Third;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** A step's lane: what was open before the step, the instrument over it, and the numbers beneath each third. */
final class LaneWidget extends SceneWidget {
    private static final int MARK = 3;
    private static final String LEGEND = "<html>Hatched: where the instrument is wider than what was there before, by "
            + "geometry alone, centred in the canal.<br>Beneath each third: the share of its length that is hatched, and "
            + "the volume between instrument and opening.";

    private final StepLabel label;
    private final InstrumentWidget instrument;
    private SceneContent content;
    private LaneContent lane;
    private SceneScale scale;
    private SceneLayout layout;

    LaneWidget(Scene scene, SceneContent content, LaneContent lane, SceneScale scale, SceneLayout layout) {
        super(scene);
        this.content = content;
        this.lane = lane;
        this.scale = scale;
        this.layout = layout;
        label = new StepLabel(scene, lane, layout);
        instrument = new InstrumentWidget(scene, content, lane, scale);
        addChild(label);
        addChild(instrument);
        show(content, lane, scale, layout);
    }

    void show(SceneContent newContent, LaneContent newLane, SceneScale newScale, SceneLayout newLayout) {
        content = newContent;
        lane = newLane;
        scale = newScale;
        layout = newLayout;
        place(0, layout.laneTop(lane.index()), layout.width(), layout.laneHeight());
        setToolTipText(lane.geometry().map(geometry -> LEGEND + "<br>Here: " + LaneContent.wider(geometry) + ".")
                .orElse(LEGEND));
        label.show(lane, layout);
        instrument.show(content, lane, scale, layout);
    }

    StepLabel label() {
        return label;
    }

    InstrumentWidget instrument() {
        return instrument;
    }

    LaneContent lane() {
        return lane;
    }

    @Override
    void draw(Graphics2D g) {
        if (content.selected() == lane.index()) {
            g.setColor(Ink.mix(Ink.accent(), Ink.paper(), 0.88));
            g.fillRect(0, 0, area().width, area().height);
            g.setColor(Ink.accent());
            g.fillRect(0, 0, MARK, area().height);
        }
        g.setColor(Ink.grid());
        g.fillRect(0, 0, area().width, 1);
        Thirds.draw(g, content.canal(), scale, 1, area().height);
        Openings.draw(g, new WideningSoFar(content, lane.index()), content.canal(), scale, layout.axisInLane());
        lane.geometry().ifPresent(geometry -> numbers(g, geometry));
    }

    /** Volume and share engaged, beneath the third they belong to. */
    private void numbers(Graphics2D g, StepGeometry geometry) {
        CanalGeometry canal = new CanalGeometry(content.canal());
        g.setFont(Ink.smallFont());
        g.setColor(lane.outdated() ? Ink.mix(Ink.quiet(), Ink.paper(), 0.5) : Ink.text());
        FontMetrics metrics = g.getFontMetrics();
        int baseline = layout.numbersTop() + metrics.getAscent();
        for (Third third : Third.values()) {
            double from = scale.x(content.canal().coronalReferenceMm() + third.fromMm(canal));
            double to = scale.x(content.canal().coronalReferenceMm() + third.toMm(canal));
            String words = words(geometry, third, metrics, to - from - Spacing.TIGHT);
            g.drawString(words, (float) ((from + to - metrics.stringWidth(words)) / 2), baseline);
        }
    }

    private static String words(StepGeometry geometry, Third third, FontMetrics metrics, double width) {
        double share = geometry.engagedShare().getOrDefault(third, 0.0);
        double volume = geometry.enlargedMm3().getOrDefault(third, 0.0);
        if (share <= 0 && volume <= 0) {
            return "–";
        }
        String percent = LaneContent.percent(share);
        String cubic = LaneContent.cubicMillimetres(volume);
        for (String words : new String[] {
            "wider over " + percent + ", " + cubic,
            percent + ", " + cubic
        }) {
            if (metrics.stringWidth(words) <= width) {
                return words;
            }
        }
        return percent;
    }
}
