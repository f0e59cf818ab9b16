package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalPiece;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.rod.MomentLaw;
import org.taperwright.shaping.placement.rod.Rod;
import org.taperwright.shaping.placement.rod.RodSection;
import org.taperwright.shaping.placement.rod.RoundPlateau;

/** Canals, instruments and tolerances of reference/canal.json, by the definitions in its header. */
final class ReferenceCanals {
    static final String SOURCE = "Independent instruments in canals (reference/canal.json)";

    private ReferenceCanals() {}

    static Stream<JsonNode> cases(String kind) {
        return ReferenceFile.cases("canal.json", "cases")
                .filter(row -> row.get("kind").asText().equals(kind));
    }

    static JsonNode only(String id) {
        return ReferenceFile.cases("canal.json", "cases")
                .filter(row -> row.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Segments are length, curvature, azimuth; openings by depth, round where there is one diameter. */
    static Canal canal(JsonNode canal) {
        List<Opening> openings = new ArrayList<>();
        JsonNode table = canal.get("opening");
        for (int i = 0; i < table.get("s").size(); i++) {
            double wide = table.get("D_major").get(i).asDouble();
            double narrow = table.has("D_minor") ? table.get("D_minor").get(i).asDouble() : wide;
            openings.add(new Opening(
                    table.get("s").get(i).asDouble(),
                    wide,
                    narrow,
                    table.path("major_azimuth_deg").asDouble(0)));
        }
        List<CanalPiece> pieces = pieces(canal.get("segments"));
        double length = pieces.stream().mapToDouble(CanalPiece::lengthMm).sum();
        return new Canal("reference", pieces, openings, List.of(), 0, length, "", "");
    }

    static List<CanalPiece> pieces(JsonNode segments) {
        List<CanalPiece> pieces = new ArrayList<>();
        for (JsonNode segment : segments) {
            double length = segment.get(0).asDouble();
            double turned = Math.toDegrees(length * segment.get(1).asDouble());
            pieces.add(new CanalPiece(length, turned, segment.get(2).asDouble()));
        }
        return pieces;
    }

    /** A blunt rod: the working part has the share cI of a round bar's second moment, the shaft is round. */
    static Rod rod(JsonNode instrument) {
        double young = instrument.get("E").asDouble();
        double blade = instrument.get("cI").asDouble() * young * Math.PI / 64;
        double d = instrument.get("d0").asDouble();
        double length = instrument.get("length").asDouble();
        List<RodSection> sections = new ArrayList<>(List.of(new RodSection(0, d, blade, d)));
        double level = 0;
        for (JsonNode taper : instrument.get("tapers")) {
            d += taper.get(1).asDouble() * (taper.get(0).asDouble() - level);
            level = taper.get(0).asDouble();
            sections.add(new RodSection(level, d, blade, d));
        }
        double shaft = instrument.get("shaft_d").asDouble();
        sections.add(new RodSection(level, shaft, young * Math.PI / 64, shaft));
        sections.add(new RodSection(length + 1, shaft, young * Math.PI / 64, shaft));
        return Rod.of(length, 0, level, sections, law(instrument, young));
    }

    private static MomentLaw law(JsonNode instrument, double young) {
        return instrument.has("superelastic") ? plateau(instrument.get("superelastic"), young) : MomentLaw.LINEAR;
    }

    static MomentLaw plateau(JsonNode law, double young) {
        return new RoundPlateau(
                young,
                law.get("Ep").asDouble(),
                law.get("EM").asDouble(),
                law.get("e1").asDouble(),
                law.get("e2").asDouble());
    }

    static Setting setting(JsonNode input, double tipDepthMm) {
        JsonNode tilt = input.get("handle_tilt_rad");
        return tilt == null
                ? Setting.straight(tipDepthMm)
                : new Setting(tipDepthMm, tilt.get(0).asDouble(), tilt.get(1).asDouble());
    }

    /**
     * Holds a value to a stated tolerance, or to the difference between the reference's own two meshes where that is more.
     * What is zero but for rounding is held absolutely.
     *
     * @param path where the expected value stands beneath "output", as the reference writes it for mesh differences
     */
    static void hold(JsonNode row, String path, double ours, double relative, double absolute, String reason) {
        double expected = row.at("/output" + path).asDouble();
        double mesh = row.path("mesh_diff").path(path).asDouble(0);
        double allowed = Math.max(Math.max(relative * Math.abs(expected), absolute), mesh);
        boolean zero = Math.abs(expected) < 1e-12;
        Findings.hold(
                SOURCE,
                row.get("id").asText() + ": " + path.substring(1).replace('/', ' '),
                zero ? 0 : expected,
                ours,
                zero ? allowed : allowed / Math.abs(expected),
                reason);
    }
}
