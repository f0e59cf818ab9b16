package org.taperwright.catalogue.ui.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;

/** The part of an instrument's form that says what follows from its design, with wider bands where that is only assumed. */
final class NumbersPart {
    private final Desk desk;
    private final List<Prose> values = new ArrayList<>();
    private final Prose remark = new Prose("", Ink::unusual, true);
    private Optional<Inputs> shown = Optional.empty();

    /** All that the numbers hang on; a new lot or stock leaves them as they are. */
    private record Inputs(Design design, boolean assumed) {
        static Inputs of(Instrument instrument) {
            return new Inputs(instrument.design(), instrument.designAssumed());
        }
    }

    NumbersPart(Desk desk) {
        this.desk = desk;
        remark.setName("instrument.numbers.remark");
        for (Metric metric : MainNumbers.METRICS) {
            Prose value = new Prose("", Ink::text, false);
            value.setName("instrument.number." + metric.id());
            values.add(value);
        }
    }

    void addTo(FormPane form) {
        form.heading("What follows from the design");
        for (int i = 0; i < values.size(); i++) {
            Metric metric = MainNumbers.METRICS.get(i);
            values.get(i).setToolTipText(metric.explanation() + " Band: 5 to 95 %.");
            form.wide(values.get(i));
        }
        form.wide(remark);
    }

    /** Shows an instrument's numbers once they are worked out; until then none, never those of another. */
    void show(Instrument instrument) {
        Inputs now = Inputs.of(instrument);
        if (shown.equals(Optional.of(now))) {
            return;
        }
        shown = Optional.of(now);
        show(List.of(), "Working out…");
        desk.compute(
                this, "Numbers of " + instrument.name(), progress -> MainNumbers.of(instrument, progress), outcome -> {
                    if (outcome instanceof Outcome.Current<MainNumbers> current) {
                        show(current.value().values(), current.value().remark());
                    } else if (outcome instanceof Outcome.Failed<MainNumbers> failed) {
                        show(List.of(), failed.reason());
                    } else {
                        show(List.of(), "Stopped; select the instrument again to have its numbers.");
                        shown = Optional.empty();
                    }
                });
    }

    private void show(List<String> words, String why) {
        for (int i = 0; i < values.size(); i++) {
            String value = i < words.size() ? words.get(i) : "–";
            values.get(i).setText(MainNumbers.METRICS.get(i).label() + ": " + value);
        }
        remark.setText(why);
        remark.setVisible(!why.isEmpty());
    }
}
