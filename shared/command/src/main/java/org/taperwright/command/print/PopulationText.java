package org.taperwright.command.print;

import java.util.Map;
import java.util.Optional;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.canal.preset.CanalPreset;
import org.taperwright.shaping.population.Distribution;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.population.WorstCase;

/** A sequence over a population of canals, as text for people. */
public final class PopulationText {
    private PopulationText() {}

    /** The distributions and the worst cases, the caution at the end. */
    public static String of(String sequence, CanalPreset preset, PopulationShaping population) {
        Page page = new Page();
        page.title(sequence);
        page.line("In " + population.canals() + " canals drawn from: " + preset.label());
        page.line(preset.source() + " Spreads that these do not give are assumed.");
        page.part("Steps that could not be made");
        if (population.notMade().isEmpty()) {
            page.line("None.");
        }
        population.notMade().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(step -> page.line("step " + (step.getKey() + 1) + ": in " + step.getValue() + " canals"));
        page.part("How the outcomes are distributed (spread of canals, at the usual constants)");
        Table table = Table.of(
                Column.words("step"),
                Column.words("quantity"),
                Column.words("standing"),
                Column.numbers("canals"),
                Column.numbers("5 %"),
                Column.numbers("half"),
                Column.numbers("95 %"),
                Column.words("unit"));
        for (Distribution found : population.distributions()) {
            table.row(
                    step(found.quantity().step()),
                    found.quantity().label(),
                    found.quantity().standing().word(),
                    String.valueOf(found.canals()),
                    number(found.quantity().shown(found.low())),
                    number(found.quantity().shown(found.median())),
                    number(found.quantity().shown(found.high())),
                    found.quantity().shownUnit());
        }
        page.table(table);
        page.part("The worst");
        for (WorstCase worst : population.worst()) {
            page.line(worst.quantity().label() + " " + number(worst.quantity().shown(worst.value())) + " "
                    + worst.quantity().shownUnit() + ", step "
                    + step(worst.quantity().step()) + ": "
                    + worst.canal().name());
        }
        return page.finished();
    }

    private static String step(Optional<Integer> place) {
        return place.map(at -> String.valueOf(at + 1)).orElse("all");
    }

    private static String number(double value) {
        return Math.abs(value) < 1e-9 ? "0" : Shown.number(value);
    }
}
