package org.taperwright.catalogue.ui.motor;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.MotorFit;
import org.taperwright.shaping.instrument.MotorFits;
import org.taperwright.workbench.api.Work;

/**
 * The powered instruments of a library set against a motor, worked out off the event thread.
 *
 * @param motor the motor
 * @param library the library
 */
record DrivenList(Motor motor, Snapshot library) implements Work<DrivenList.Rows> {
    private static final int BETWEEN_CHECKS = 1000;

    /**
     * What came of it: rows of instrument, settings and remarks.
     *
     * @param driven those the motor can drive
     * @param others those it cannot, with the reasons
     */
    record Rows(List<List<String>> driven, List<List<String>> others) {}

    @Override
    public Rows run(Progress progress) {
        List<List<String>> driven = new ArrayList<>();
        List<List<String>> others = new ArrayList<>();
        int seen = 0;
        for (Entry entry : library.ofKind(ThingKind.INSTRUMENT)) {
            if (++seen % BETWEEN_CHECKS == 0) {
                progress.check();
            }
            Instrument instrument = (Instrument) entry.thing();
            if (instrument.drive() == Drive.POWERED) {
                MotorFit fit = MotorFits.of(motor, instrument);
                String remarks = fit.reasons().stream().map(Fault::what).collect(Collectors.joining("; "));
                (fit.drives() ? driven : others)
                        .add(List.of(instrument.name(), fit.settings().orElse(""), remarks));
            }
        }
        return new Rows(driven, others);
    }
}
