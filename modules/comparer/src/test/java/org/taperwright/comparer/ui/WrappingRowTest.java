package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.taperwright.workbench.ui.Shots;

class WrappingRowTest {
    @Test
    void componentsThatDoNotFitBeginAnotherRowAndStandInItsMiddle() throws InterruptedException {
        JPanel row = Shots.onEventThread(() -> row(3));
        row.setSize(230, 100);
        row.doLayout();
        assertThat(row.getComponent(0).getLocation()).hasToString("java.awt.Point[x=0,y=0]");
        assertThat(row.getComponent(1).getX()).isEqualTo(108);
        assertThat(row.getComponent(2).getX()).isZero();
        assertThat(row.getComponent(2).getY()).isEqualTo(28);
        assertThat(row.getPreferredSize().height).isEqualTo(48);
    }

    /** Asking without end would keep the event queue busy for ever. */
    @Test
    void aRowThatIsNotShowingNeverAsksToBeLaidOutAgain() throws InterruptedException {
        AtomicInteger asked = new AtomicInteger();
        JPanel row = Shots.onEventThread(() -> {
            JPanel made = new JPanel(new WrappingRow(8)) {
                @Override
                public void revalidate() {
                    asked.incrementAndGet();
                    super.revalidate();
                }
            };
            made.add(label());
            made.add(label());
            return made;
        });
        Shots.onEventThread(() -> {
            asked.set(0);
            row.setSize(0, 0);
            row.doLayout();
            return row;
        });
        Shots.onEventThread(() -> row);
        assertThat(asked.get()).isZero();
    }

    private static JPanel row(int labels) {
        JPanel row = new JPanel(new WrappingRow(8));
        row.setBorder(null);
        for (int i = 0; i < labels; i++) {
            row.add(label());
        }
        return row;
    }

    private static JLabel label() {
        JLabel label = new JLabel("x");
        label.setPreferredSize(new Dimension(100, 20));
        return label;
    }
}
