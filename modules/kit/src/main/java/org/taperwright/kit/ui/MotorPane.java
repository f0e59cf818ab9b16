package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.MotorChoice;

/** Every motor set against the kit's powered instruments: how many it can drive, and why not the others. */
final class MotorPane extends JPanel {
    private final transient KitEdits edits;
    private final ListPane motors = new ListPane(
            "kit.motors", "Motors for the kit", List.of("Motor", "Drives", "Cannot drive"), List.of(220, 90, 620));
    private final ListPane fits = new ListPane(
            "kit.fits",
            "What the motor drives",
            List.of("Instrument", "Driven", "Settings both allow", "Why not, or what is not stated"),
            List.of(220, 70, 240, 420));
    private final JButton use;
    private transient Optional<KitReading> reading = Optional.empty();

    MotorPane(KitEdits edits) {
        super(new BorderLayout());
        this.edits = edits;
        use = motors.button("Use this motor", "Makes the motor selected the kit's", this::use);
        motors.table().setSelectionMode(javax.swing.ListSelectionModel.SINGLE_SELECTION);
        motors.table().getSelectionModel().addListSelectionListener(event -> showFits());
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, motors, fits);
        split.setResizeWeight(0.45);
        split.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        add(split);
    }

    void show(KitReading shown) {
        int row = motors.table().getSelectedRow();
        reading = Optional.of(shown);
        motors.show(
                shown.motors().isEmpty()
                        ? "The library has no motor; add one in the Library window."
                        : "By what the makers state. Follow the instructions of instrument and motor.",
                shown.motors().stream().map(choice -> row(choice, shown)).toList());
        if (!shown.motors().isEmpty()) {
            int kept = Math.min(Math.max(0, row), shown.motors().size() - 1);
            motors.table().setRowSelectionInterval(kept, kept);
        }
        showFits();
    }

    private static List<String> row(MotorChoice choice, KitReading reading) {
        int all = choice.fits().size();
        String own = reading.kit().motor().equals(Optional.of(choice.motor()))
                ? choice.name() + " (the kit's)"
                : choice.name();
        return List.of(
                own,
                all - choice.missing().size() + " of " + all,
                choice.missing().stream().map(id -> name(reading, id)).collect(Collectors.joining(", ")));
    }

    private static String name(KitReading reading, org.taperwright.mechanics.design.ThingId id) {
        return Optional.ofNullable(reading.catalogue().get(id))
                .map(Instrument::name)
                .orElse(id.value());
    }

    private Optional<MotorChoice> chosen() {
        int row = motors.table().getSelectedRow();
        return reading.filter(read -> row >= 0 && row < read.motors().size())
                .map(read -> read.motors().get(row));
    }

    private void showFits() {
        use.setEnabled(chosen().isPresent());
        List<List<String>> rows = new ArrayList<>();
        chosen().ifPresent(choice -> choice.fits().entrySet().stream()
                .map(fit -> List.of(
                        name(reading.orElseThrow(), fit.getKey()),
                        fit.getValue().drives() ? "yes" : "no",
                        fit.getValue().settings().orElse(""),
                        fit.getValue().reasons().stream().map(Fault::what).collect(Collectors.joining("; "))))
                .sorted(java.util.Comparator.comparing(row -> row.get(0)))
                .forEach(rows::add));
        fits.show(
                chosen().map(choice -> choice.name() + " and the kit's powered instruments.")
                        .orElse(""),
                rows);
    }

    private void use() {
        chosen().ifPresent(choice -> edits.motor(Optional.of(choice.motor())));
    }
}
