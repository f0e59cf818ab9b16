package org.taperwright.validation;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.properties.SectionAnalysis;
import org.taperwright.mechanics.properties.SectionProperties;
import org.taperwright.mechanics.section.Outline;
import org.taperwright.mechanics.section.Point;
import org.taperwright.mechanics.section.Segment;

/**
 * Closed forms and tables of torsion and plasticity. Source: S. P. Timoshenko and J. N. Goodier, Theory of Elasticity,
 * chapter on torsion; A. Nadai, Theory of Flow and Fracture of Solids, for the sand heaps; all from memory.
 */
class TorsionHandbookTest {
    private static final String SOURCE = "Handbook: torsion of simple sections (Timoshenko and Goodier; from memory)";
    private static final String WANTED = "closed forms and series are exact; what is wanted of the engine";

    private static void torsion(String name, double j, double peak, SectionProperties ours) {
        Findings.hold(SOURCE, name + ": J, d⁴", j, ours.torsionConstant(), 1e-4, WANTED);
        Findings.hold(SOURCE, name + ": peak shear c, 1", peak, ours.peakShear(), 1e-2, WANTED);
    }

    private static void heap(String name, double expected, SectionProperties ours) {
        Findings.hold(SOURCE, name + ": fully plastic torque, k d³", expected, ours.plasticTorque(), 1e-4, WANTED);
    }

    @Test
    void aCircleIsStiffByItsPolarMoment() {
        SectionProperties circle = SectionAnalysis.of(new Outline(List.of(
                new Segment.Arc(Point.AXIS, 0.5, 0, Math.PI), new Segment.Arc(Point.AXIS, 0.5, Math.PI, 2 * Math.PI))));
        torsion("circle", Math.PI / 32, 16 / Math.PI, circle);
        heap("circle", Math.PI / 12, circle);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 0.5, 0.3})
    void anEllipseHasSaintVenantsClosedForm(double b) {
        List<Segment> arcs = new ArrayList<>();
        int count = 240;
        for (int i = 0; i < count; i++) {
            arcs.add(Segment.through(ellipse(b, i, count), ellipse(b, i + 0.5, count), ellipse(b, i + 1, count)));
        }
        double j = Math.PI * Math.pow(0.5, 3) * Math.pow(b / 2, 3) / (0.25 + b * b / 4);
        double peak = 2 / (Math.PI * 0.5 * b * b / 4);
        torsion("ellipse 1 : " + b, j, peak, SectionAnalysis.of(new Outline(arcs)));
    }

    private static Point ellipse(double b, double i, int count) {
        double t = 2 * Math.PI * i / count;
        return new Point(0.5 * Math.cos(t), b / 2 * Math.sin(t));
    }

    @Test
    void anEquilateralTriangleHasItsClosedForm() {
        double side = Math.sqrt(3) / 2;
        SectionProperties triangle = SectionAnalysis.of(polygon(
                Point.polar(0.5, 0), Point.polar(0.5, 2.0943951023931953), Point.polar(0.5, 4.1887902047863905)));
        torsion("equilateral triangle", Math.sqrt(3) / 80 * Math.pow(side, 4), 20 / Math.pow(side, 3), triangle);
        heap("equilateral triangle", Math.pow(side, 3) / 12, triangle);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2, 4, 10})
    void aRectangleHasItsSeries(double ratio) {
        double b = 1 / Math.hypot(ratio, 1);
        double a = ratio * b;
        double sum = 0;
        double edge = 0;
        for (int n = 1; n < 400; n += 2) {
            sum += Math.tanh(n * Math.PI * ratio / 2) / Math.pow(n, 5);
            edge += 1 / (n * n * Math.cosh(n * Math.PI * ratio / 2));
        }
        double j = a * b * b * b * (1.0 / 3 - 64 / Math.pow(Math.PI, 5) / ratio * sum);
        double peak = b * (1 - 8 / (Math.PI * Math.PI) * edge) / j;
        SectionProperties rectangle = SectionAnalysis.of(polygon(
                new Point(a / 2, -b / 2),
                new Point(a / 2, b / 2),
                new Point(-a / 2, b / 2),
                new Point(-a / 2, -b / 2)));
        torsion("rectangle " + ratio + " : 1", j, peak, rectangle);
        heap("rectangle " + ratio + " : 1", b * b * (3 * a - b) / 6, rectangle);
    }

    /** {@code J = 8 a / pi^2 r^4 sum over odd n of 1 / (n (n pi / a + 2))^2} for the angle a, by separating variables. */
    @ParameterizedTest
    @ValueSource(doubles = {45, 90, 120, 180, 270})
    void aSectorOfACircleHasItsSeries(double degrees) {
        double angle = Math.toRadians(degrees);
        double sum = 0;
        for (int n = 1; n < 4000; n += 2) {
            sum += 1 / Math.pow(n * (n * Math.PI / angle + 2), 2);
        }
        double r = 0.5;
        SectionProperties sector = SectionAnalysis.of(new Outline(List.of(
                new Segment.Line(Point.AXIS, Point.polar(r, 0)),
                new Segment.Arc(Point.AXIS, r, 0, angle),
                new Segment.Line(Point.polar(r, angle), Point.AXIS))));
        double expected = 8 * angle / (Math.PI * Math.PI) * sum;
        String name = "sector of " + (int) degrees + "°: J, r⁴";
        Findings.hold(SOURCE, name, expected, sector.torsionConstant() / Math.pow(r, 4), 1e-4, WANTED);
    }

    private static Outline polygon(Point... points) {
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < points.length; i++) {
            sides.add(new Segment.Line(points[i], points[(i + 1) % points.length]));
        }
        return new Outline(sides);
    }
}
