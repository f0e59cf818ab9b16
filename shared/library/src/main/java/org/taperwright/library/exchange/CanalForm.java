package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;

import java.util.List;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;

/** The form of a canal. */
final class CanalForm {
    private static final int MOST_LEVELS = 500;
    private static final Form<Double> LENGTH = number(0, 200, "mm");
    private static final Form<Double> DIAMETER = number(0, 50, "mm");
    private static final Form<Double> ANGLE = number(-720, 720, "degrees");
    private static final String AZIMUTH = "direction of the greater diameter, degrees about the canal's axis";

    private static final Field<CanalPiece, Double> PIECE_LENGTH =
            required("lengthMm", LENGTH, "length along the centreline, mm", CanalPiece::lengthMm);
    private static final Field<CanalPiece, Double> PIECE_ANGLE =
            required("angleDeg", ANGLE, "angle turned over the piece, degrees; 0 is straight", CanalPiece::angleDeg);
    private static final Field<CanalPiece, Double> PIECE_AZIMUTH = standing(
            "azimuthDeg",
            0.0,
            ANGLE,
            "direction it bends towards, degrees; 0 keeps to the first plane",
            CanalPiece::azimuthDeg);
    private static final RecordForm<CanalPiece> PIECE = new RecordForm<>(
            "canalPiece",
            "A piece of the centreline of constant curvature.",
            true,
            List.of(PIECE_LENGTH, PIECE_ANGLE, PIECE_AZIMUTH),
            values -> new CanalPiece(values.of(PIECE_LENGTH), values.of(PIECE_ANGLE), values.of(PIECE_AZIMUTH)));

    private static final Field<Opening, Double> OPENING_DEPTH =
            required("depthMm", LENGTH, "depth from the orifice along the centreline, mm", Opening::depthMm);
    private static final Field<Opening, Double> OPENING_WIDE =
            required("wideMm", DIAMETER, "greater diameter, mm", Opening::wideMm);
    private static final Field<Opening, Double> OPENING_NARROW =
            required("narrowMm", DIAMETER, "lesser diameter, mm", Opening::narrowMm);
    private static final Field<Opening, Double> OPENING_AZIMUTH =
            standing("azimuthDeg", 0.0, ANGLE, AZIMUTH, Opening::azimuthDeg);
    private static final RecordForm<Opening> OPENING = new RecordForm<>(
            "opening",
            "The canal's opening at a depth, an ellipse.",
            true,
            List.of(OPENING_DEPTH, OPENING_WIDE, OPENING_NARROW, OPENING_AZIMUTH),
            values -> new Opening(
                    values.of(OPENING_DEPTH),
                    values.of(OPENING_WIDE),
                    values.of(OPENING_NARROW),
                    values.of(OPENING_AZIMUTH)));

    private static final Field<RootOutline, Double> ROOT_DEPTH =
            required("depthMm", LENGTH, "depth from the orifice along the centreline, mm", RootOutline::depthMm);
    private static final Field<RootOutline, Double> ROOT_WIDE =
            required("wideMm", DIAMETER, "greater diameter, mm", RootOutline::wideMm);
    private static final Field<RootOutline, Double> ROOT_NARROW =
            required("narrowMm", DIAMETER, "lesser diameter, mm", RootOutline::narrowMm);
    private static final Field<RootOutline, Double> ROOT_AZIMUTH =
            standing("azimuthDeg", 0.0, ANGLE, AZIMUTH, RootOutline::azimuthDeg);
    private static final RecordForm<RootOutline> ROOT_OUTLINE = new RecordForm<>(
            "rootOutline",
            "The root's outer outline at a depth, an ellipse.",
            true,
            List.of(ROOT_DEPTH, ROOT_WIDE, ROOT_NARROW, ROOT_AZIMUTH),
            values -> new RootOutline(
                    values.of(ROOT_DEPTH), values.of(ROOT_WIDE), values.of(ROOT_NARROW), values.of(ROOT_AZIMUTH)));

    private static final Field<Canal, String> NAME = required("name", name(), "what people call it", Canal::name);
    private static final Field<Canal, List<CanalPiece>> PIECES =
            required("pieces", list(PIECE, 1, MOST_LEVELS), "the centreline from the orifice on", Canal::pieces);
    private static final Field<Canal, List<Opening>> OPENINGS =
            required("openings", list(OPENING, 2, MOST_LEVELS), "openings by rising depth", Canal::openings);
    private static final Field<Canal, List<RootOutline>> ROOT = standing(
            "root", List.of(), list(ROOT_OUTLINE, 0, MOST_LEVELS), "root outlines by rising depth", Canal::root);
    private static final Field<Canal, Double> REFERENCE = required(
            "coronalReferenceMm",
            LENGTH,
            "distance from the coronal reference point to the orifice, mm",
            Canal::coronalReferenceMm);
    private static final Field<Canal, Double> WORKING_LENGTH = required(
            "workingLengthMm",
            LENGTH,
            "distance from the coronal reference point to where instrumentation ends, mm",
            Canal::workingLengthMm);
    private static final Field<Canal, String> SOURCE =
            standing("source", "", note(), "where the numbers come from and how they are known", Canal::source);
    private static final Field<Canal, String> NOTE = standing("note", "", note(), "free text", Canal::note);

    static final RecordForm<Canal> FORM = new RecordForm<>(
            "canal",
            "A root canal from the orifice to its end.",
            false,
            List.of(NAME, PIECES, OPENINGS, ROOT, REFERENCE, WORKING_LENGTH, SOURCE, NOTE),
            values -> new Canal(
                    values.of(NAME),
                    values.of(PIECES),
                    values.of(OPENINGS),
                    values.of(ROOT),
                    values.of(REFERENCE),
                    values.of(WORKING_LENGTH),
                    values.of(SOURCE),
                    values.of(NOTE)));

    private CanalForm() {}
}
