package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** The job from end to end in the real workbench: a taper edited, a comparison that follows, a step dragged in. */
@WindowTest
class JobTest {
    private static final String MOMENT = "Bending moment at 45°";

    @Test
    void aTaperEditMovesTheDesignsNumbersAndTheComparisonAndIsTakenBack(Hands hands) {
        LibraryTree.open(hands, "Marram 25/.04");
        JTable numbers = hands.find("design.numbers.table", JTable.class);
        hands.await("the moment to be computed", () -> row(numbers, MOMENT) >= 0);
        String before = figure(cell(hands, numbers, row(numbers, MOMENT), 1));
        Screen.keep("design");

        JTable taper = hands.find("design.taper.table", JTable.class);
        hands.doubleClick(middle(hands, taper, 0, 2));
        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        hands.type("0.06");
        hands.press(KeyEvent.VK_ENTER);
        hands.await("another moment", () -> !before.equals(figure(text(numbers, row(numbers, MOMENT), 1))));
        String after = figure(cell(hands, numbers, row(numbers, MOMENT), 1));
        assertThat(number(after)).as("a thicker blade is stiffer").isGreaterThan(number(before));
        Screen.keep("taper-edited");

        LibraryTree.open(hands, "Six ways to make a 25/.04");
        JTable comparison = hands.find("comparison.table", JTable.class);
        hands.await("the comparison to follow", () -> holds(comparison, after));
        Screen.keep("comparison-after-the-edit");

        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.await("the comparison to go back", () -> holds(comparison, before));
    }

    @Test
    void anInstrumentDraggedOntoTheSceneBecomesAStepAndIsTakenBack(Hands hands) {
        LibraryTree.open(hands, "Rotary, moderate curve");
        JComponent scene = hands.find("sequence.scene", JComponent.class);
        hands.await("its steps", () -> says(hands, "of 17"));
        hands.choose("Window", "Instruments");
        JTable instruments = hands.find("instruments.table", JTable.class);

        Point from = middle(hands, instruments, 1, 3);
        Rectangle seen = hands.onEventThread(() -> {
            Rectangle visible = scene.getVisibleRect();
            Point corner = scene.getLocationOnScreen();
            return new Rectangle(corner.x + visible.x, corner.y + visible.y, visible.width, visible.height);
        });
        hands.click(from);
        hands.drag(from, new Point(seen.x + seen.width / 2, seen.y + seen.height * 3 / 4));
        hands.await("one step more", () -> says(hands, "of 18"));
        Screen.keep("step-dragged-in");

        hands.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        hands.await("its steps again", () -> says(hands, "of 17"));
    }

    /** A sequence is shaped as soon as it is shown, its bands follow, and a line and its lane are selected together. */
    @Test
    void theOutcomeOfASequenceFillsAndItsBandsFollow(Hands hands) {
        LibraryTree.open(hands, "Rotary, moderate curve");
        JTable outcome = hands.find("outcome.table", JTable.class);
        hands.await("a line for each step and the whole canal", () -> outcome.getRowCount() >= 18);
        int torque = column(outcome, "Torque");
        hands.await(
                "the band of the greatest torque",
                Duration.ofMinutes(4),
                () -> text(outcome, row(outcome, "Whole canal"), torque)
                        .matches("Torque: [0-9.]+ \\([0-9.]+ to [0-9.]+\\)"));
        assertThat(cell(hands, outcome, row(outcome, "Whole canal"), column(outcome, "Least wall left")))
                .as("the demo canal's root is known")
                .containsPattern("[0-9]");

        hands.click(middle(hands, outcome, hands.onEventThread(() -> row(outcome, "5  ")), 0));
        hands.await("the fifth step", () -> says(hands, "Step 5 of 17"));
        hands.await(
                "its thirds", () -> text(outcome, row(outcome, "5  ") + 1, 0).equals("coronal"));
        Screen.keep("sequence-outcome");
    }

    private static int column(JTable table, String heading) {
        return IntStream.range(0, table.getColumnCount())
                .filter(column -> table.getColumnName(column).equals(heading))
                .findFirst()
                .orElseThrow();
    }

    private static boolean says(Hands hands, String end) {
        return hands.showsAny(
                JLabel.class,
                label -> label.getText() != null
                        && label.getText().startsWith("Step ")
                        && label.getText().endsWith(end));
    }

    private static int row(JTable table, String measure) {
        return IntStream.range(0, table.getRowCount())
                .filter(row -> text(table, row, 0).contains(measure))
                .findFirst()
                .orElse(-1);
    }

    private static boolean holds(JTable table, String number) {
        return IntStream.range(0, table.getRowCount())
                .anyMatch(row -> text(table, row, 0).contains(MOMENT)
                        && IntStream.range(1, table.getColumnCount())
                                .anyMatch(column -> text(table, row, column).contains(number)));
    }

    private static String cell(Hands hands, JTable table, int row, int column) {
        return hands.onEventThread(() -> text(table, row, column));
    }

    /** What a cell shows, as its renderer draws it or as it is read aloud. */
    private static String text(JTable table, int row, int column) {
        if (row < 0) {
            return "";
        }
        var drawn = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
        String aloud = drawn.getAccessibleContext().getAccessibleName();
        return aloud == null ? String.valueOf(table.getValueAt(row, column)) : aloud;
    }

    /** The number that a cell begins with; its unit and its band may follow. */
    private static String figure(String text) {
        return text.strip().split(" ")[0];
    }

    private static double number(String text) {
        return Double.parseDouble(text.strip());
    }

    private static Point middle(Hands hands, JTable table, int row, int column) {
        return hands.onEventThread(() -> {
            Rectangle cell = table.getCellRect(row, column, true);
            table.scrollRectToVisible(cell);
            JComponent pane = (JComponent) SwingUtilities.getAncestorOfClass(JScrollPane.class, table);
            pane.scrollRectToVisible(SwingUtilities.convertRectangle(table, cell, pane));
            Point corner = table.getLocationOnScreen();
            return new Point(corner.x + (int) cell.getCenterX(), corner.y + (int) cell.getCenterY());
        });
    }
}
