package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;
import static org.taperwright.library.exchange.form.Forms.word;

import java.util.List;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.FieldValues;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.mechanics.bench.CurvePoint;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.fatigue.Tube;
import org.taperwright.mechanics.measured.BenchCurve;
import org.taperwright.mechanics.measured.Measured;
import org.taperwright.mechanics.measured.MeasuredCurve;
import org.taperwright.mechanics.measured.MeasuredLives;
import org.taperwright.mechanics.measured.MeasuredLives.Life;

/** The form of measurements kept with a comparison: a curve of points, or lives in tubes. */
final class MeasuredForm {
    private static final int MOST_POINTS = 20_000;

    /** Which test the measurements are of. */
    private enum Test {
        BENDING("bending"),
        TWISTING("twisting"),
        TURNING("turning");

        private final String word;

        Test(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }

        static Test of(Measured measured) {
            if (measured instanceof MeasuredCurve curve) {
                return curve.test() == BenchCurve.BENDING ? BENDING : TWISTING;
            }
            return TURNING;
        }
    }

    private static final Field<CurvePoint, Double> ANGLE =
            required("angleDeg", number(-1e6, 1e6, "degrees"), "angle, degrees", CurvePoint::angleDeg);
    private static final Field<CurvePoint, Double> MOMENT =
            required("momentNmm", number(-1e6, 1e6, "N·mm"), "moment or torque, N·mm", CurvePoint::momentNmm);
    private static final RecordForm<CurvePoint> POINT = new RecordForm<>(
            "curvePoint",
            "A point of a measured curve.",
            true,
            List.of(ANGLE, MOMENT),
            values -> new CurvePoint(values.of(ANGLE), values.of(MOMENT)));

    private static final Field<Life, Double> TURN = required(
            "angleDeg",
            number(0, 180, "degrees"),
            "angle through which the tube's axis turns",
            life -> life.tube().angleDeg());
    private static final Field<Life, Double> RADIUS = required(
            "radiusMm",
            number(0, 1_000, "mm"),
            "radius of the tube's axis, mm",
            life -> life.tube().radiusMm());
    private static final Field<Life, Double> LEVEL = required(
            "levelMm",
            number(0, 200, "mm"),
            "the instrument's level at the middle of the curve, mm from the tip",
            life -> life.tube().middleMm());
    private static final Field<Life, Double> PLAY = required(
            "playMm",
            number(0, 10, "mm"),
            "room between instrument and wall on either side, mm",
            life -> life.tube().playMm());
    private static final Field<Life, Double> CYCLES =
            required("cycles", number(0, 1e12, ""), "turns to fracture", Life::cycles);
    private static final RecordForm<Life> LIFE = new RecordForm<>(
            "measuredLife",
            "Turns to fracture of one instrument in a tube.",
            true,
            List.of(TURN, RADIUS, LEVEL, PLAY, CYCLES),
            values -> new Life(
                    new Tube(values.of(TURN), values.of(RADIUS), values.of(LEVEL), values.of(PLAY)),
                    values.of(CYCLES)));

    private static final Field<MeasuredOn, ThingId> DESIGN =
            required("design", thing(), "identifier of the design of the instruments measured", MeasuredOn::design);
    private static final Field<MeasuredOn, String> LABEL = required(
            "label",
            line(),
            "what people call the measurements",
            each -> each.measured().label());
    private static final Field<MeasuredOn, Test> TEST = required(
            "test", word(Test.values(), Test::word), "which test they are of", each -> Test.of(each.measured()));
    private static final Field<MeasuredOn, List<CurvePoint>> POINTS = standing(
            "points",
            List.of(),
            list(POINT, 0, MOST_POINTS),
            "of bending and twisting: the points of the curve",
            each -> each.measured() instanceof MeasuredCurve curve ? curve.points() : List.of());
    private static final Field<MeasuredOn, List<Life>> LIVES = standing(
            "lives",
            List.of(),
            list(LIFE, 0, MOST_POINTS),
            "of turning: one for each instrument",
            each -> each.measured() instanceof MeasuredLives lives ? lives.lives() : List.of());

    static final RecordForm<MeasuredOn> FORM = new RecordForm<>(
            "measured",
            "Measurements made on instruments of a design.",
            false,
            List.of(DESIGN, LABEL, TEST, POINTS, LIVES),
            values -> new MeasuredOn(values.of(DESIGN), measured(values)));

    private MeasuredForm() {}

    private static Measured measured(FieldValues values) {
        boolean turning = values.of(TEST) == Test.TURNING;
        if (turning ? !values.of(POINTS).isEmpty() : !values.of(LIVES).isEmpty()) {
            throw new IllegalArgumentException(
                    turning ? "has points, which turning has not" : "has lives, which only turning has");
        }
        return switch (values.of(TEST)) {
            case BENDING -> new MeasuredCurve(BenchCurve.BENDING, values.of(LABEL), values.of(POINTS));
            case TWISTING -> new MeasuredCurve(BenchCurve.TWISTING, values.of(LABEL), values.of(POINTS));
            case TURNING -> new MeasuredLives(values.of(LABEL), values.of(LIVES));
        };
    }
}
