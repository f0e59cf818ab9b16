package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class XyPlotTest {
    private XyPlot plot;

    @BeforeEach
    void open() {
        Shots.theme(false);
        plot = Shots.onEventThread(() -> {
            XyPlot made = new XyPlot("plot", "Diameter");
            made.setPlot(Plot.of(
                    Plot.Axis.of("Distance from the tip", "mm", 0, 16),
                    Plot.Axis.of("Diameter", "mm", 0, 1),
                    List.of(new Plot.Curve(
                            "Blade",
                            new SeriesLook(0),
                            Plot.Style.LINE,
                            List.of(new Plot.Spot(0, 0.25), new Plot.Spot(16, 0.57))))));
            return made;
        });
    }

    @Test
    void pixels_and_axes_turn_into_each_other() {
        Shots.take("plot", plot, 400, 300, 1);

        Point2D pixel = plot.toPixels(8, 0.41);
        Point2D back = plot.toAxes(pixel);

        assertThat(back.getX()).isCloseTo(8, Offset.offset(1e-9));
        assertThat(back.getY()).isCloseTo(0.41, Offset.offset(1e-9));
    }

    @Test
    void the_curve_is_drawn_where_its_values_say() {
        BufferedImage image = Shots.take("plot", plot, 400, 300, 2);

        Point2D pixel = plot.toPixels(8, 0.41);
        int blue = new SeriesLook(0).colour().getRGB();
        assertThat(image.getRGB((int) (2 * pixel.getX()), (int) Math.round(2 * pixel.getY())))
                .isEqualTo(blue);
    }

    @Test
    void hovering_reads_the_value_between_points() {
        assertThat(plot.reading(8)).hasValueSatisfying(text -> assertThat(text).contains("Blade: 0.41 mm"));
    }

    @Test
    void a_saved_drawing_keeps_its_words_as_text_and_its_lines_as_vectors() {
        Shots.layOut(plot, 400, 300);

        String svg = Shots.onEventThread(() -> Picture.svg(plot));

        assertThat(svg)
                .contains("Distance from the tip (mm)")
                .contains("Diameter (mm)")
                .contains("Blade");
        assertThat(svg).contains("<path").doesNotContain("<image");
        assertThat(svg).contains("viewBox=\"0 0 400 300\"");
    }

    @Test
    void values_that_are_not_finite_do_not_spoil_the_axes() {
        Plot odd = Plot.of(
                Plot.Axis.of("x", ""),
                Plot.Axis.of("y", ""),
                List.of(new Plot.Curve(
                        "",
                        new SeriesLook(0),
                        Plot.Style.LINE,
                        List.of(new Plot.Spot(0, Double.NaN), new Plot.Spot(4, 2)))));

        assertThat(PlotRange.of(odd, false).low()).isZero();
        assertThat(PlotRange.of(odd, false).high()).isBetween(2.0, 2.5);
    }

    @Test
    void numbers_go_to_csv_as_rfc_4180_wants_them() {
        DataTable table = new DataTable(
                List.of("Curve", "Moment, least"), List.of(List.of("the \"old\" file", "1.5"), List.of("b", "2")));

        // RFC 4180, section 2: fields with commas or quotes are quoted, quotes doubled, lines end in CRLF.
        assertThat(table.csv()).isEqualTo("Curve,\"Moment, least\"\r\n\"the \"\"old\"\" file\",1.5\r\nb,2\r\n");
    }
}
