package org.taperwright.comparer.ui;

import java.awt.Component;
import java.awt.Container;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JTable;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Shots;

/** The comparison's panel on a desk in memory, without a display. */
record OpenPanel(BareDesk desk, ComparisonPanel panel) implements AutoCloseable {
    static OpenPanel of(Map<ThingId, Record> library) throws InterruptedException {
        Shots.theme(false);
        BareDesk desk = Shots.onEventThread(() -> new BareDesk(library));
        ComparisonPanel panel = Shots.onEventThread(() -> {
            ComparisonPanel made = new ComparisonPanel(desk);
            made.attach();
            return made;
        });
        desk.settle();
        return new OpenPanel(desk, panel);
    }

    /** Does something on the event thread and waits until all that follows from it is shown. */
    void perform(Runnable action) throws InterruptedException {
        Supplier<Optional<Void>> run = () -> {
            action.run();
            return Optional.empty();
        };
        Shots.onEventThread(run);
        desk.settle();
        desk.settle();
    }

    <T extends Component> T find(String name, Class<T> type) {
        return type.cast(search(panel, name).orElseThrow(() -> new AssertionError("no component " + name)));
    }

    boolean has(String name) {
        return search(panel, name).isPresent();
    }

    SavedComparison comparison() {
        return desk.snapshot()
                .thing(SampleDesigns.COMPARISON, SavedComparison.class)
                .orElseThrow();
    }

    ComparisonTableModel model() {
        return (ComparisonTableModel) find("comparison.table", JTable.class).getModel();
    }

    /** The cell of a metric, by its label, and a design. */
    CellText cell(String label, int member) {
        for (int row = 0; row < model().getRowCount(); row++) {
            if (model().metric(row)
                    .filter(metric -> metric.label().equals(label))
                    .isPresent()) {
                return (CellText) model().getValueAt(row, 1 + member);
            }
        }
        throw new AssertionError("no metric \"" + label + "\"");
    }

    private static Optional<Component> search(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (name.equals(child.getName())) {
                return Optional.of(child);
            }
            if (child instanceof Container inner) {
                Optional<Component> found = search(inner, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public void close() {
        desk.close();
    }
}
