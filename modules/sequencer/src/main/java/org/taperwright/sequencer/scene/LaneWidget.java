package org.taperwright.sequencer.scene;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.stream.Stream;
import org.netbeans.api.visual.widget.Scene;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.passage.Third;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** A step's lane: what was open before the step, the instrument over it, and the numbers beneath each third. */
final class LaneWidget extends SceneWidget {
    private static final int MARK = 3;
    private static final int SHORTEST = 2;
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
        setToolTipText(lane.geometry()
                .map(geometry -> LEGEND + "<br>Here: " + LaneContent.wider(geometry) + ".")
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
        if (lane.sentence().isEmpty()) {
            lane.geometry().ifPresent(geometry -> numbers(g, geometry));
        } else {
            sentence(g, lane.sentence());
        }
    }

    /** What a step does that is no instrument's work, beneath its silhouette. */
    private void sentence(Graphics2D g, String words) {
        g.setFont(Ink.smallFont());
        g.setColor(Ink.text());
        FontMetrics metrics = g.getFontMetrics();
        double from = scale.x(content.canal().coronalReferenceMm()) + Spacing.TIGHT;
        g.drawString(
                cut(metrics, words, scale.right() - from), (float) from, layout.numbersTop() + metrics.getAscent());
    }

    /** Volume and share engaged, beneath the third they belong to; all three in the longest form that fits. */
    private void numbers(Graphics2D g, StepGeometry geometry) {
        CanalGeometry canal = new CanalGeometry(content.canal());
        double reference = content.canal().coronalReferenceMm();
        g.setFont(Ink.smallFont());
        g.setColor(lane.outdated() ? Ink.mix(Ink.quiet(), Ink.paper(), 0.5) : Ink.text());
        FontMetrics metrics = g.getFontMetrics();
        double room = scale.x(reference + Third.CORONAL.toMm(canal))
                - scale.x(reference + Third.CORONAL.fromMm(canal))
                - Spacing.TIGHT;
        int length = 0;
        while (length < SHORTEST && !fits(geometry, length, metrics, room)) {
            length++;
        }
        int baseline = layout.numbersTop() + metrics.getAscent();
        for (Third third : Third.values()) {
            double middle = (scale.x(reference + third.fromMm(canal)) + scale.x(reference + third.toMm(canal))) / 2;
            String words = words(geometry, third, length);
            g.drawString(words, (float) (middle - metrics.stringWidth(words) / 2.0), baseline);
        }
    }

    private static boolean fits(StepGeometry geometry, int length, FontMetrics metrics, double room) {
        return Stream.of(Third.values()).allMatch(third -> metrics.stringWidth(words(geometry, third, length)) <= room);
    }

    /** What a step does in a third: 0 in full, {@link #SHORTEST} as the share alone. */
    private static String words(StepGeometry geometry, Third third, int length) {
        double share = geometry.engagedShare().getOrDefault(third, 0.0);
        double volume = geometry.enlargedMm3().getOrDefault(third, 0.0);
        if (share <= 0 && volume <= 0) {
            return "–";
        }
        String percent = LaneContent.percent(share);
        if (length == SHORTEST) {
            return percent;
        }
        return (length == 0 ? "wider over " : "") + percent + ", " + LaneContent.cubicMillimetres(volume);
    }
}
