package org.taperwright.shaping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/** Things that tests start from. */
public final class Given {
    /** A flat tip, which has no cone. */
    public static final double FLAT_DEG = 180;

    private Given() {}

    /** A design with one taper. */
    public static Design design(int size, double taper, double tipAngleDeg, Motion motion) {
        return new Design(
                "design",
                "",
                size / 100.0,
                List.of(new TaperSegment(0, 16, taper)),
                OptionalDouble.empty(),
                25,
                List.of(new SectionStation(0, SectionShape.of("square", java.util.Map.of()))),
                List.of(new FluteStation(0, 1.2)),
                Hand.CLOCKWISE,
                new Tip(TipKind.PASSIVE, tipAngleDeg),
                "stainless-steel",
                Making.GROUND,
                motion);
    }

    /** A hand file. */
    public static Instrument hand(int size, double taper) {
        return instrument(design(size, taper, 75, Motion.FILING), Drive.HAND);
    }

    /** A hand file with a flat tip, so that it is a plain truncated cone. */
    public static Instrument cone(int size, double taper) {
        return instrument(design(size, taper, FLAT_DEG, Motion.FILING), Drive.HAND);
    }

    /** A hand file with as blunt a tip as is made, nearly a plain truncated cone. */
    public static Instrument blunt(int size, double taper) {
        return instrument(design(size, taper, 170, Motion.FILING), Drive.HAND);
    }

    /** A rotary file, 250 to 350 rev/min, 10 to 25 N mm. */
    public static Instrument rotary(int size, double taper) {
        return instrument(design(size, taper, 75, Motion.ROTATION), Drive.POWERED);
    }

    /** The same instrument with another tip. */
    public static Instrument withTip(Instrument old, TipKind kind) {
        Design d = old.design();
        return instrument(
                new Design(
                        d.name(),
                        d.note(),
                        d.tipDiameterMm(),
                        d.taper(),
                        d.shaftDiameterMm(),
                        d.lengthMm(),
                        d.sections(),
                        d.flutes(),
                        d.hand(),
                        new Tip(kind, d.tip().angleDeg()),
                        d.alloy(),
                        d.making(),
                        d.motion()),
                old.drive());
    }

    private static Instrument instrument(Design design, Drive drive) {
        boolean powered = drive == Drive.POWERED;
        return new Instrument(
                "instrument",
                "maker",
                "line",
                "file",
                drive,
                design,
                Optional.empty(),
                false,
                powered ? Optional.of(new Window(250, 350)) : Optional.empty(),
                powered ? Optional.of(new Window(10, 25)) : Optional.empty(),
                0,
                "");
    }

    /** A motor: 100 to 600 rev/min, 5 to 40 N mm, rotation only. */
    public static Motor motor() {
        return new Motor("motor", "maker", new Window(100, 600), new Window(5, 40), Optional.empty(), true, false, "");
    }

    /** A straight canal of 16 mm whose orifice is 6 mm from the reference point; working length 22 mm. */
    public static Canal canal(Opening... openings) {
        return new Canal("canal", List.of(new CanalPiece(16, 0, 0)), List.of(openings), List.of(), 6, 22, "", "");
    }

    /** That canal, round, of one width throughout. */
    public static Canal tube(double diameterMm) {
        return canal(new Opening(0, diameterMm, diameterMm, 0), new Opening(16, diameterMm, diameterMm, 0));
    }

    /** A step with the settings of {@link #rotary}, or none by hand. */
    public static InstrumentStep step(Instrument instrument, double depthMm) {
        boolean powered = instrument.drive() == Drive.POWERED;
        return new InstrumentStep(
                new ThingId("instrument"),
                depthMm,
                instrument.design().motion(),
                powered ? Optional.of(300.0) : Optional.empty(),
                powered ? Optional.of(20.0) : Optional.empty(),
                3,
                "");
    }

    /** Instruments used one after another, all to one depth. */
    public static ArrangedSequence arranged(Canal canal, double depthMm, List<Instrument> instruments) {
        return arranged(
                canal,
                Optional.of(motor()),
                instruments,
                instruments.stream().map(i -> step(i, depthMm)).toList());
    }

    /** Instruments used with their steps. */
    public static ArrangedSequence arranged(
            Canal canal, Optional<Motor> motor, List<Instrument> instruments, List<? extends Step> steps) {
        Sequence sequence = new Sequence("sequence", Optional.empty(), Optional.empty(), new ArrayList<>(steps), "");
        return new ArrangedSequence(
                sequence, canal, motor, instruments.stream().map(Optional::of).toList());
    }
}
