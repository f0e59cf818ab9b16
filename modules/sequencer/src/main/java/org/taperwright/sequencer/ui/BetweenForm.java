package org.taperwright.sequencer.ui;

import java.awt.CardLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;

/** The fields of a selected step that is no instrument's work: irrigation, patency or recapitulation. */
final class BetweenForm extends JPanel {
    /** Told what the step becomes and which of its fields changed. */
    interface Entry {
        void changed(String field, Step step);
    }

    private final CardLayout cards = new CardLayout();
    private final ChoiceField<NeedleGauge> needle =
            new ChoiceField<>("step.needle", "Needle", List.of(NeedleGauge.values()), NeedleGauge::word);
    private final QuantityField depth =
            new QuantityField("step.needleDepth", "Needle depth", QuantityKind.length(0, 40, 0.5));
    private final QuantityField volume =
            new QuantityField("step.volume", "Volume", new QuantityKind("ml", 0, 100, 0.5, 1, 2, Map.of()));
    private final NameField irrigant = new NameField("step.irrigant", "Irrigant");
    private final QuantityField beyond =
            new QuantityField("step.beyond", "Beyond the end", QuantityKind.length(0, 5, 0.1));
    private final QuantityField strokes =
            new QuantityField("step.backStrokes", "Strokes", new QuantityKind("", 0, 99, 1, 0, 0, Map.of()));
    private final Prose patencyFile = new Prose("", Ink::quiet, true);
    private final Prose backFile = new Prose("", Ink::quiet, true);
    private transient Optional<Step> shown = Optional.empty();

    BetweenForm(Entry entry) {
        setName("step.between");
        setLayout(cards);
        setOpaque(false);
        needle.onCommit(gauge -> rinse(
                entry,
                "needle",
                old -> new Irrigation(gauge, old.depthMm(), old.volumeMl(), old.irrigant(), old.note())));
        depth.onCommit(mm -> rinse(entry, "depth", old -> old.at(mm)));
        volume.onCommit(ml -> rinse(
                entry, "volume", old -> new Irrigation(old.needle(), old.depthMm(), ml, old.irrigant(), old.note())));
        irrigant.onCommit(words -> rinse(
                entry,
                "irrigant",
                old -> words.isBlank()
                        ? old
                        : new Irrigation(old.needle(), old.depthMm(), old.volumeMl(), words.strip(), old.note())));
        irrigant.setToolTipText(String.join(", ", Irrigation.COMMON_IRRIGANTS));
        beyond.onCommit(mm ->
                of(Patency.class, old -> entry.changed("beyond", new Patency(old.instrument(), mm, old.note()))));
        strokes.onCommit(count -> of(
                Recapitulation.class,
                old -> entry.changed(
                        "strokes", new Recapitulation(old.instrument(), (int) Math.round(count), old.note()))));
        add(
                new FormPane("step.irrigation")
                        .row("Needle", needle, "Gauge of the needle")
                        .row("Depth", depth, "How far its tip is to go, from the coronal reference point")
                        .row("Volume", volume, "How much is given")
                        .row("Irrigant", irrigant, "What is given, such as sodium hypochlorite 2.5 %"),
                "irrigation");
        add(
                new FormPane("step.patency")
                        .wide(patencyFile)
                        .row("Beyond the end", beyond, "How far beyond the working length the file passes"),
                "patency");
        add(
                new FormPane("step.recapitulation")
                        .wide(backFile)
                        .row("Strokes", strokes, "Number of strokes at the working length"),
                "recapitulation");
    }

    private void rinse(Entry entry, String field, java.util.function.UnaryOperator<Irrigation> change) {
        of(Irrigation.class, old -> entry.changed(field, change.apply(old)));
    }

    private <T extends Step> void of(Class<T> kind, Consumer<T> use) {
        shown.filter(kind::isInstance).map(kind::cast).ifPresent(use);
    }

    /** Shows a step of one of these kinds. */
    void show(Step step, Optional<Instrument> instrument) {
        shown = Optional.of(step);
        String file = "With " + instrument.map(Instrument::name).orElse("an instrument no longer in the library");
        patencyFile.setText(file);
        backFile.setText(file);
        if (step instanceof Irrigation rinse) {
            needle.setValue(rinse.needle());
            depth.setValue(rinse.depthMm());
            volume.setValue(rinse.volumeMl());
            irrigant.setValue(rinse.irrigant());
        } else if (step instanceof Patency patency) {
            beyond.setValue(patency.beyondMm());
        } else if (step instanceof Recapitulation back) {
            strokes.setValue(back.strokes());
        }
        cards.show(this, step.word());
    }
}
