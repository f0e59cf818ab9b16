package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.word;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.Form;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.FluteStation;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SectionStation;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.mechanics.section.SectionShape;

/** The form of a design. */
final class DesignForm {
    private static final int MOST_STATIONS = 200;
    private static final Form<Double> LEVEL = number(0, 200, "mm from the tip");
    private static final Form<Double> DIAMETER = number(0, 20, "mm");

    private static final Field<TaperSegment, Double> FROM =
            required("fromMm", LEVEL, "where the segment begins, mm from the tip", TaperSegment::fromMm);
    private static final Field<TaperSegment, Double> TO =
            required("toMm", LEVEL, "where the segment ends, mm from the tip", TaperSegment::toMm);
    private static final Field<TaperSegment, Double> TAPER = required(
            "taper",
            number(-10, 10, "mm per mm"),
            "growth of the diameter, mm per mm: 0.04 is a 4 % taper",
            TaperSegment::taper);
    private static final RecordForm<TaperSegment> SEGMENT = new RecordForm<>(
            "taperSegment",
            "A stretch of constant taper.",
            true,
            List.of(FROM, TO, TAPER),
            values -> new TaperSegment(values.of(FROM), values.of(TO), values.of(TAPER)));

    private static final Field<SectionStation, Double> SECTION_LEVEL =
            required("levelMm", LEVEL, "level of the station, mm from the tip", SectionStation::levelMm);
    private static final Field<SectionStation, SectionShape> SHAPE =
            required("shape", SectionForms.SHAPE, "the section there", SectionStation::shape);
    private static final RecordForm<SectionStation> SECTION_STATION = new RecordForm<>(
            "sectionStation",
            "The section at a level; outlines blend between stations.",
            false,
            List.of(SECTION_LEVEL, SHAPE),
            values -> new SectionStation(values.of(SECTION_LEVEL), values.of(SHAPE)));

    private static final Field<FluteStation, Double> FLUTE_LEVEL =
            required("levelMm", LEVEL, "level of the station, mm from the tip", FluteStation::levelMm);
    private static final Field<FluteStation, Double> FLUTES_PER_MM = required(
            "flutesPerMm",
            number(0, 100, "per mm"),
            "cutting edges that cross a line parallel to the axis, per mm",
            FluteStation::flutesPerMm);
    private static final RecordForm<FluteStation> FLUTE_STATION = new RecordForm<>(
            "fluteStation",
            "Flutes per mm at a level; linear between stations.",
            true,
            List.of(FLUTE_LEVEL, FLUTES_PER_MM),
            values -> new FluteStation(values.of(FLUTE_LEVEL), values.of(FLUTES_PER_MM)));

    private static final Field<Tip, TipKind> TIP_KIND =
            required("kind", word(TipKind.values(), TipKind::word), "whether the tip cuts", Tip::kind);
    private static final Field<Tip, Double> TIP_ANGLE =
            required("angleDeg", number(0, 360, "degrees"), "included angle of the tip, degrees", Tip::angleDeg);
    private static final RecordForm<Tip> TIP_FORM = new RecordForm<>(
            "tip",
            "The tip.",
            true,
            List.of(TIP_KIND, TIP_ANGLE),
            values -> new Tip(values.of(TIP_KIND), values.of(TIP_ANGLE)));

    private static final Field<Design, String> NAME = required("name", name(), "what people call it", Design::name);
    private static final Field<Design, String> NOTE = standing("note", "", note(), "free text", Design::note);
    private static final Field<Design, Double> TIP_DIAMETER = required(
            "tipDiameterMm", DIAMETER, "projected diameter at the tip, mm: size 25 means 0.25", Design::tipDiameterMm);
    private static final Field<Design, List<TaperSegment>> TAPERS = required(
            "taper",
            list(SEGMENT, 1, MOST_STATIONS),
            "taper segments, each beginning where the one before ends, from the tip to the end of the working part",
            Design::taper);
    private static final Field<Design, Optional<Double>> SHAFT = optional(
            "shaftDiameterMm",
            DIAMETER,
            "diameter beyond the working part, mm; left out when it is the diameter where that ends",
            design -> design.shaftDiameterMm().stream().boxed().findFirst());
    private static final Field<Design, Double> LENGTH =
            required("lengthMm", number(0, 200, "mm"), "length from the tip to the handle, mm", Design::lengthMm);
    private static final Field<Design, List<SectionStation>> SECTIONS =
            required("sections", list(SECTION_STATION, 1, MOST_STATIONS), "sections by rising level", Design::sections);
    private static final Field<Design, List<FluteStation>> FLUTES =
            required("flutes", list(FLUTE_STATION, 1, MOST_STATIONS), "flutes per mm by rising level", Design::flutes);
    private static final Field<Design, Hand> HAND = required(
            "hand",
            word(Hand.values(), Hand::word),
            "turning sense in which the edges lead, seen from the handle",
            Design::hand);
    private static final Field<Design, Tip> TIP = required("tip", TIP_FORM, "the tip", Design::tip);
    private static final Field<Design, String> ALLOY =
            required("alloy", identifier(), "identifier of the alloy", Design::alloy);
    private static final Field<Design, Making> MAKING =
            required("making", word(Making.values(), Making::word), "how the flutes are made", Design::making);
    private static final Field<Design, Motion> MOTION =
            required("motion", word(Motion.values(), Motion::word), "the motion it is meant for", Design::motion);

    static final RecordForm<Design> FORM = new RecordForm<>(
            "design",
            "The geometry and material of an instrument's working part and shaft.",
            false,
            List.of(
                    NAME,
                    NOTE,
                    TIP_DIAMETER,
                    TAPERS,
                    SHAFT,
                    LENGTH,
                    SECTIONS,
                    FLUTES,
                    HAND,
                    TIP,
                    ALLOY,
                    MAKING,
                    MOTION),
            values -> new Design(
                    values.of(NAME),
                    values.of(NOTE),
                    values.of(TIP_DIAMETER),
                    values.of(TAPERS),
                    values.of(SHAFT).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                    values.of(LENGTH),
                    values.of(SECTIONS),
                    values.of(FLUTES),
                    values.of(HAND),
                    values.of(TIP),
                    values.of(ALLOY),
                    values.of(MAKING),
                    values.of(MOTION)));

    private DesignForm() {}
}
