package org.taperwright.sequencer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.netbeans.api.visual.action.ConnectorState;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.sequencer.SampleSequence;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.passage.GeometricPassages;
import org.taperwright.shaping.passage.StepGeometry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.api.ThingTransfer;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Shots;

/** The scene without a display: drops, drags and what it draws. */
class SequenceSceneTest {
    private final List<String> asked = new ArrayList<>();
    private SequenceScene scene;

    @BeforeEach
    void open() {
        Shots.theme(false);
        scene = Shots.onEventThread(() -> {
            SequenceScene made = new SequenceScene(new Asked());
            made.setViewSize(900, 400);
            made.show(content(0));
            return made;
        });
    }

    @Test
    void an_instrument_dropped_between_two_lanes_asks_for_a_step_there() {
        InstrumentDrop drop = new InstrumentDrop(scene, new Asked());
        SceneLayout layout = scene.layout();
        ThingTransfer things = new ThingTransfer(List.of(SampleSequence.EXTRA));
        Point between = new Point(400, layout.laneTop(1) + 3);

        assertThat(drop.isAcceptable(scene, between, things)).isEqualTo(ConnectorState.ACCEPT);
        drop.accept(scene, between, things);
        drop.accept(scene, new Point(400, layout.height(3) + 500), things);

        assertThat(asked).containsExactly("insert 1 [rotary-30]", "insert 3 [rotary-30]");
    }

    @Test
    void something_else_dropped_is_refused() {
        InstrumentDrop drop = new InstrumentDrop(scene, new Asked());

        assertThat(drop.isAcceptable(scene, new Point(400, 200), new java.awt.datatransfer.StringSelection("text")))
                .isEqualTo(ConnectorState.REJECT);
    }

    @Test
    void a_silhouette_dragged_along_tries_depths_and_sets_the_last_on_release() {
        DepthDrag drag = new DepthDrag(scene, new Asked());
        InstrumentWidget widget = scene.lanes().get(1).instrument();
        double pixelsPerMm = scene.scale().orElseThrow().pixelsPerMm();
        Point tip = drag.getOriginalLocation(widget);

        drag.movementStarted(widget);
        drag.setNewLocation(widget, new Point((int) Math.round(tip.x - 2 * pixelsPerMm), tip.y));
        drag.movementFinished(widget);

        assertThat(asked).containsExactly("try 1 15.5", "set 1 15.5");
    }

    @Test
    void a_silhouette_dragged_back_to_where_it_was_sets_nothing() {
        DepthDrag drag = new DepthDrag(scene, new Asked());
        InstrumentWidget widget = scene.lanes().get(1).instrument();

        drag.movementStarted(widget);
        drag.setNewLocation(widget, drag.getOriginalLocation(widget));
        drag.movementFinished(widget);

        assertThat(asked).noneMatch(order -> order.startsWith("set"));
    }

    @Test
    void a_lane_dragged_below_the_last_asks_to_be_moved_there() {
        OrderDrag drag = new OrderDrag(scene, new Asked());
        StepLabel label = scene.lanes().get(0).label();
        Point middle = drag.getOriginalLocation(label);

        drag.movementStarted(label);
        drag.setNewLocation(
                label, new Point(middle.x, middle.y + 3 * scene.layout().laneHeight()));
        drag.movementFinished(label);

        assertThat(asked).containsExactly("move 0 2");
    }

    @Test
    void a_lane_dropped_where_it_stands_asks_for_nothing() {
        OrderDrag drag = new OrderDrag(scene, new Asked());
        StepLabel label = scene.lanes().get(1).label();
        Point middle = drag.getOriginalLocation(label);

        drag.movementStarted(label);
        drag.setNewLocation(label, new Point(middle.x, middle.y + 5));
        drag.movementFinished(label);

        assertThat(asked).isEmpty();
    }

    @Test
    void depths_and_pixels_find_each_other_and_everything_fits_the_width() {
        SceneScale scale = scene.scale().orElseThrow();

        assertThat(scale.depthMm(scale.x(13.7))).isCloseTo(13.7, within(1e-9));
        assertThat(scale.x(17.5)).isLessThan(900);
        assertThat(scale.x(6)).isGreaterThan(scene.layout().left());
    }

    @ParameterizedTest
    @CsvSource({"false, 1, 900", "false, 2, 520", "true, 1, 520", "true, 2, 900"})
    void engaged_stretches_are_drawn_where_the_step_is_wider(boolean dark, double scale, int width) throws IOException {
        Shots.theme(dark);
        BufferedImage picture = Shots.onEventThread(() -> picture(scale, width));
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        ImageIO.write(
                picture,
                "png",
                folder.resolve("sequence-" + (dark ? "dark" : "light") + "-" + (int) scale + "-" + width + ".png")
                        .toFile());

        SceneLayout layout = scene.layout();
        SceneScale along = scene.scale().orElseThrow();
        StepGeometry.Stretch engaged =
                content(0).lanes().get(2).geometry().orElseThrow().engaged().get(0);
        double inside = along.x(6 + (engaged.fromMm() + engaged.toMm()) / 2);
        double outside = along.x(6 + engaged.toMm()) + 12;
        int axis = (int) (layout.laneTop(2) + layout.axisInLane());
        assertThat(accents(picture, scale, (int) inside, axis)).isPositive();
        assertThat(accents(picture, scale, (int) outside, axis)).isZero();
    }

    /** A needle's drops and a file's arrow are in the accent, before the tip; an instrument's lane has nothing there. */
    @ParameterizedTest
    @CsvSource({"false", "true"})
    void each_kind_of_step_has_a_drawing_of_its_own(boolean dark) throws IOException {
        Shots.theme(dark);
        List<Step> steps = List.of(
                SampleSequence.byHand(SampleSequence.HAND),
                new Irrigation(NeedleGauge.G30, 15, 2, "saline", ""),
                new Patency(SampleSequence.HAND, 0.5, ""),
                new Recapitulation(SampleSequence.HAND, 2, ""));
        BufferedImage picture = Shots.onEventThread(() -> picture(1, 900, content(steps, 0)));
        ImageIO.write(
                picture,
                "png",
                Files.createDirectories(Path.of("target", "screenshots"))
                        .resolve("step-kinds-" + (dark ? "dark" : "light") + ".png")
                        .toFile());
        SceneScale along = scene.scale().orElseThrow();
        int axis = (int) scene.layout().axisInLane();
        int end = (int) along.x(17.5);
        assertThat(accents(picture, 1, end + 9, scene.layout().laneTop(0) + axis))
                .isZero();
        assertThat(accents(picture, 1, (int) along.x(15) + 14, scene.layout().laneTop(1) + axis))
                .isPositive();
        assertThat(accents(picture, 1, end + 9, scene.layout().laneTop(2) + axis))
                .isPositive();
        assertThat(accents(picture, 1, end + 9, scene.layout().laneTop(3) + axis))
                .isPositive();
        assertThat(scene.lanes())
                .extracting(lane -> lane.lane().sentence())
                .containsExactly(
                        "",
                        "2 ml saline through a needle of 30G",
                        "0.5 mm beyond the working length, once",
                        "back to the working length, 2 strokes");
    }

    private BufferedImage picture(double scale, int width) {
        return picture(scale, width, content(1));
    }

    private BufferedImage picture(double scale, int width, SceneContent content) {
        SequenceScene drawn = new SequenceScene(new Asked());
        drawn.setViewSize(width, 500);
        drawn.show(content);
        scene = drawn;
        BufferedImage image = new BufferedImage(
                (int) (drawn.layout().width() * scale), (int) (drawn.height() * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Ink.paper());
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        drawn.validate(g);
        drawn.paint(g);
        g.dispose();
        return image;
    }

    /** How many pixels near a place are in the accent that marks engagement. */
    private static int accents(BufferedImage picture, double scale, int x, int y) {
        int accents = 0;
        for (int dx = -6; dx <= 6; dx++) {
            for (int dy = -3; dy <= 3; dy++) {
                Color pixel = new Color(picture.getRGB((int) ((x + dx) * scale), (int) ((y + dy) * scale)));
                Color accent = Ink.accent();
                int difference = Math.abs(pixel.getRed() - accent.getRed())
                        + Math.abs(pixel.getGreen() - accent.getGreen())
                        + Math.abs(pixel.getBlue() - accent.getBlue());
                accents += difference < 90 ? 1 : 0;
            }
        }
        return accents;
    }

    private static SceneContent content(int selected) {
        return content(((Sequence) SampleSequence.things().get(SampleSequence.SEQUENCE)).steps(), selected);
    }

    private static SceneContent content(List<Step> steps, int selected) {
        Canal canal = SampleSequence.canal();
        Sequence sequence = new Sequence("Drawn", Optional.empty(), Optional.empty(), steps, "");
        List<Optional<Instrument>> instruments = steps.stream()
                .map(step -> step.uses()
                        .map(id -> (Instrument) SampleSequence.things().get(id)))
                .toList();
        List<Optional<StepGeometry>> geometry =
                GeometricPassages.steps(new ArrangedSequence(sequence, canal, Optional.empty(), instruments));
        List<LaneContent> lanes = new ArrayList<>();
        for (int i = 0; i < instruments.size(); i++) {
            Step step = steps.get(i);
            lanes.add(new LaneContent(
                    i, step, instruments.get(i), step.depthMm(canal.workingLengthMm()), geometry.get(i), false));
        }
        return new SceneContent(canal, lanes, selected);
    }

    /** Writes down what is asked for. */
    private final class Asked implements SceneOrders {
        @Override
        public void select(int step) {
            asked.add("select " + step);
        }

        @Override
        public void tryDepth(int step, double depthMm) {
            asked.add("try " + step + " " + depthMm);
        }

        @Override
        public void setDepth(int step, double depthMm) {
            asked.add("set " + step + " " + depthMm);
        }

        @Override
        public void move(int from, int to) {
            asked.add("move " + from + " " + to);
        }

        @Override
        public void insert(int place, List<ThingId> instruments) {
            asked.add("insert " + place + " " + instruments);
        }
    }
}
