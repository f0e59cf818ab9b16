package org.taperwright.catalogue.ui;

import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

/** The same thing under another name. */
final class Renamed {
    private Renamed() {}

    static Record of(Record thing, String name) {
        return switch (ThingKind.of(thing)) {
            case DESIGN -> design((Design) thing, name);
            case INSTRUMENT -> instrument((Instrument) thing, name);
            case MOTOR -> motor((Motor) thing, name);
            case CANAL -> canal((Canal) thing, name);
            case SEQUENCE -> sequence((Sequence) thing, name);
            case KIT -> kit((Kit) thing, name);
            case COMPARISON -> comparison((SavedComparison) thing, name);
            case FILTER -> filter((SavedFilter) thing, name);
            case ALLOY -> ((OwnAlloy) thing).named(name);
        };
    }

    private static Design design(Design d, String name) {
        return new Design(
                name,
                d.note(),
                d.tipDiameterMm(),
                d.taper(),
                d.shaftDiameterMm(),
                d.lengthMm(),
                d.sections(),
                d.flutes(),
                d.hand(),
                d.tip(),
                d.alloy(),
                d.making(),
                d.motion());
    }

    private static Instrument instrument(Instrument i, String name) {
        return i.draft().name(name).instrument();
    }

    private static Motor motor(Motor m, String name) {
        return new Motor(
                name,
                m.maker(),
                m.speedRpm(),
                m.torqueNmm(),
                m.reciprocation(),
                m.cordless(),
                m.apexLocator(),
                m.note());
    }

    private static Canal canal(Canal c, String name) {
        return new Canal(
                name,
                c.pieces(),
                c.openings(),
                c.root(),
                c.coronalReferenceMm(),
                c.workingLengthMm(),
                c.source(),
                c.note());
    }

    private static Sequence sequence(Sequence s, String name) {
        return new Sequence(name, s.canal(), s.motor(), s.steps(), s.note());
    }

    private static Kit kit(Kit k, String name) {
        return new Kit(name, k.purpose(), k.motor(), k.pieces(), k.note());
    }

    private static SavedFilter filter(SavedFilter f, String name) {
        return new SavedFilter(name, f.filter(), f.note());
    }

    private static SavedComparison comparison(SavedComparison c, String name) {
        return c.named(name);
    }
}
