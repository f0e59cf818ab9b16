package org.taperwright.sequencer.ui;

import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.JPanel;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.NeedleGauge;
import org.taperwright.shaping.sequence.Irrigation;
import org.taperwright.shaping.sequence.Patency;
import org.taperwright.shaping.sequence.Recapitulation;
import org.taperwright.shaping.sequence.Step;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;

/** The fields of a selected step that is no instrument's work: irrigation, patency or recapitulation. */
final class BetweenForm extends JPanel {
    private final transient StepForm.Entries entries;
    private final CardLayout cards = new CardLayout();
    private final ChoiceField<NeedleGauge> needle =
            new ChoiceField<>("step.needle", "Needle", List.of(NeedleGauge.values()), NeedleGauge::word);
    private final QuantityField depth =
            new QuantityField("step.needleDepth", "Needle depth", QuantityKind.length(0, 40, 0.5));
    private final QuantityField volume =
            new QuantityField("step.volume", "Volume", new QuantityKind("ml", 0, 100, 0.5, 1, 2, Map.of()));
    private final IrrigantField irrigant = new IrrigantField("step.irrigant");
    private final QuantityField beyond =
            new QuantityField("step.beyond", "Beyond the end", QuantityKind.length(0, 5, 0.1));
    private final QuantityField strokes =
            new QuantityField("step.backStrokes", "Strokes", new QuantityKind("", 0, 99, 1, 0, 0, Map.of()));
    private final ChoiceField<FileChoice> patencyFile =
            new ChoiceField<>("step.patencyFile", "File of the patency", List.of(), FileChoice::name);
    private final ChoiceField<FileChoice> backFile =
            new ChoiceField<>("step.backFile", "File of the recapitulation", List.of(), FileChoice::name);
    private transient List<FileChoice> files = List.of();
    private transient Optional<Step> shown = Optional.empty();

    BetweenForm(StepForm.Entries entries) {
        this.entries = entries;
        setName("step.between");
        setLayout(cards);
        setOpaque(false);
        listen();
        add(
                new FormPane("step.irrigation")
                        .row("Needle", needle, "Gauge of the needle")
                        .row("Depth", depth, "How far its tip is to go, from the coronal reference point")
                        .row("Volume", volume, "How much is given")
                        .row("Irrigant", irrigant, "What is given; any name may be written"),
                "irrigation");
        add(
                new FormPane("step.patency")
                        .row(
                                "File",
                                patencyFile,
                                "Which instrument: one of this sequence, or that selected in the catalogue")
                        .row("Beyond the end", beyond, "How far beyond the working length the file passes"),
                "patency");
        add(
                new FormPane("step.recapitulation")
                        .row(
                                "File",
                                backFile,
                                "Which instrument: one of this sequence, or that selected in the catalogue")
                        .row("Strokes", strokes, "Number of strokes at the working length"),
                "recapitulation");
    }

    private void listen() {
        depth.onPreview(entries::tryDepth).onCommit(entries::depth);
        needle.onCommit(gauge -> rinse(
                "needle",
                gauge.word(),
                old -> new Irrigation(gauge, old.depthMm(), old.volumeMl(), old.irrigant(), old.note())));
        volume.onCommit(ml -> rinse(
                "volume",
                Shown.number(ml) + " ml",
                old -> new Irrigation(old.needle(), old.depthMm(), ml, old.irrigant(), old.note())));
        irrigant.onCommit(words -> rinse(
                "irrigant",
                words,
                old -> new Irrigation(old.needle(), old.depthMm(), old.volumeMl(), words, old.note())));
        beyond.onCommit(mm -> of(
                Patency.class,
                old -> entries.between("beyond the end", Shown.mm(mm), new Patency(old.instrument(), mm, old.note()))));
        strokes.onCommit(count -> entries.strokes((int) Math.round(count)));
        patencyFile.onCommit(this::use);
        backFile.onCommit(this::use);
    }

    private void use(FileChoice file) {
        UnaryOperator<ThingId> other = old -> file.id();
        shown.ifPresent(step -> entries.between("file", file.name(), step.using(other)));
    }

    private void rinse(String field, String value, UnaryOperator<Irrigation> change) {
        of(Irrigation.class, old -> entries.between(field, value, change.apply(old)));
    }

    private <T extends Step> void of(Class<T> kind, Consumer<T> use) {
        shown.filter(kind::isInstance).map(kind::cast).ifPresent(use);
    }

    /** Offers instruments that a patency or recapitulation may use. */
    void offer(List<FileChoice> offered) {
        files = List.copyOf(offered);
    }

    /** Shows a step of one of these kinds. */
    void show(Step step, Optional<Instrument> instrument) {
        shown = Optional.of(step);
        if (step instanceof Irrigation rinse) {
            needle.setValue(rinse.needle());
            depth.setValue(rinse.depthMm());
            volume.setValue(rinse.volumeMl());
            irrigant.setValue(rinse.irrigant());
        } else if (step instanceof Patency patency) {
            choose(patencyFile, patency.instrument(), instrument);
            beyond.setValue(patency.beyondMm());
        } else if (step instanceof Recapitulation back) {
            choose(backFile, back.instrument(), instrument);
            strokes.setValue(back.strokes());
        }
        cards.show(this, step.word());
    }

    private void choose(ChoiceField<FileChoice> field, ThingId used, Optional<Instrument> instrument) {
        List<FileChoice> choices = new ArrayList<>(files);
        FileChoice now =
                new FileChoice(used, instrument.map(Instrument::name).orElse("an instrument no longer in the library"));
        if (!choices.contains(now)) {
            choices.add(0, now);
        }
        field.setChoices(choices);
        field.setValue(now);
    }
}
