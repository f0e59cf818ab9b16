package org.taperwright.mechanics.alloy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;

/**
 * The alloys that instruments are made of. Constants of wire differ from lot to lot and from author to author; each
 * alloy's band holds the published spread, and its source says how the numbers are known.
 */
public final class Alloys {
    private static final List<Alloy> ALL = List.of(
            new Alloy(
                    "stainless-steel",
                    "Stainless steel",
                    193_000,
                    new Band(180_000, 200_000),
                    0.29,
                    1_820,
                    new Band(1_580, 2_110),
                    2_200,
                    "hardening",
                    Map.of(
                            Hardening.MODULUS,
                            about(15_000, 5_000, 25_000),
                            Fracture.SHEAR_STRENGTH.name(),
                            about(1_485, 1_320, 1_650),
                            Fracture.SHEAR_STRAIN.name(),
                            about(1.0, 0.6, 1.5)),
                    false,
                    "Tensile strength: ASTM A313 table for spring wire of 0.23 to 0.8 mm (read). Elastic constants: "
                            + "handbook values for 302 and 304 (from memory, high confidence). Yield: 0.75 to 0.9 of the "
                            + "tensile strength, shear strength 0.6 to 0.75 of it (spring handbooks, from memory, medium "
                            + "confidence). Hardening modulus and shear strain at fracture: from memory, low confidence.",
                    "Hardened wire at room temperature; beyond the strain at the tensile strength an extrapolation."),
            new Alloy(
                    "carbon-steel",
                    "Carbon steel",
                    207_000,
                    new Band(200_000, 210_000),
                    0.29,
                    1_900,
                    new Band(1_600, 2_300),
                    2_300,
                    "hardening",
                    Map.of(
                            Hardening.MODULUS,
                            about(15_000, 5_000, 25_000),
                            Fracture.SHEAR_STRENGTH.name(),
                            about(1_550, 1_380, 1_725),
                            Fracture.SHEAR_STRAIN.name(),
                            about(0.8, 0.5, 1.2)),
                    false,
                    "Elastic constants: handbook values for music wire (from memory, high confidence). Tensile strength "
                            + "of such wire, 0.75 to 0.9 of it as yield, hardening and fracture: from memory, low "
                            + "confidence.",
                    "Hardened wire at room temperature; beyond the strain at the tensile strength an extrapolation; not after "
                            + "corrosion."),
            new Alloy(
                    "niti-superelastic",
                    "Superelastic NiTi (austenitic)",
                    42_500,
                    new Band(36_000, 63_000),
                    0.33,
                    492,
                    new Band(432, 582),
                    1_500,
                    "superelastic",
                    Map.of(
                            Plateau.END,
                            about(0.055, 0.045, 0.065),
                            Plateau.SLOPE,
                            about(1_500, 500, 3_200),
                            Plateau.MARTENSITE,
                            about(20_000, 12_800, 27_800),
                            Plateau.MARTENSITE_YIELD,
                            about(1_170, 1_000, 1_300),
                            Plateau.ASYMMETRY,
                            about(1.3, 1.1, 1.5),
                            Fracture.SHEAR_STRENGTH.name(),
                            about(866, 817, 920),
                            Fracture.SHEAR_STRAIN.name(),
                            about(0.38, 0.29, 0.48)),
                    true,
                    "He and Ni, J Endod 2010;36:1180 (modulus 42.5 GPa, plateau from 492 MPa; from memory, medium "
                            + "confidence). Band: models of Kim, Cheung and others, J Endod 2008 (36 GPa, 504 MPa; from "
                            + "memory, medium confidence), a generic published card (62.9 GPa, 460 MPa; read), wire of "
                            + "Zhou and others, J Endod 2012;38:1535 (plateau 490 to 582, strength 1415 to 1593 MPa; "
                            + "from memory, medium confidence; strain at fracture 16.7 to 27.5 %, read). Plateau's slope and "
                            + "end, martensite and asymmetry: between those models.",
                    "Loading at 23 to 37 °C; the plateau rises with temperature, which is not in it."),
            new Alloy(
                    "niti-r-phase",
                    "R-phase NiTi",
                    32_000,
                    new Band(20_000, 45_000),
                    0.33,
                    350,
                    new Band(200, 490),
                    1_400,
                    "superelastic",
                    Map.of(
                            Plateau.END,
                            about(0.055, 0.045, 0.065),
                            Plateau.SLOPE,
                            about(1_500, 500, 3_200),
                            Plateau.MARTENSITE,
                            about(20_000, 12_800, 27_800),
                            Plateau.MARTENSITE_YIELD,
                            about(1_100, 900, 1_300),
                            Plateau.ASYMMETRY,
                            about(1.3, 1.0, 1.5),
                            Fracture.SHEAR_STRENGTH.name(),
                            about(808, 700, 900),
                            Fracture.SHEAR_STRAIN.name(),
                            about(0.45, 0.3, 0.7)),
                    true,
                    "No source specific to instruments: set between the austenitic and the martensitic alloy, from "
                            + "memory, low confidence.",
                    "Loading at room temperature; the bands are wide for want of a source."),
            new Alloy(
                    "niti-martensitic",
                    "Heat-treated NiTi (martensitic)",
                    34_000,
                    new Band(28_000, 41_000),
                    0.33,
                    190,
                    new Band(128, 251),
                    1_110,
                    "reorienting",
                    Map.of(
                            Plateau.END,
                            about(0.055, 0.045, 0.07),
                            Plateau.SLOPE,
                            about(1_500, 500, 3_500),
                            Plateau.MARTENSITE,
                            about(20_000, 12_800, 27_800),
                            Plateau.MARTENSITE_YIELD,
                            about(900, 700, 1_050),
                            Plateau.ASYMMETRY,
                            about(1.2, 1.0, 1.5),
                            Fracture.SHEAR_STRENGTH.name(),
                            about(641, 632, 652),
                            Fracture.SHEAR_STRAIN.name(),
                            about(1.24, 1.01, 1.47)),
                    true,
                    "Modulus: handbook range of martensite, 28 to 41 GPa (property sheet of 2003, read). Plateau 128 to "
                            + "251 MPa and strength 1094 to 1130 MPa: Zhou and others, J Endod 2012;38:1535 (from memory, "
                            + "medium confidence; the order against conventional wire and the strain at fracture of 58 to "
                            + "85 % read in the abstract). The rest as for the austenitic alloy.",
                    "Loading at room and body temperature, where this wire is not superelastic."));

    private Alloys() {}

    private static Reading about(double value, double low, double high) {
        return new Reading(value, Optional.of(new Band(low, high)));
    }

    /** All alloys, steels first. */
    public static List<Alloy> all() {
        return ALL;
    }

    /** The alloy with an identifier. */
    public static Optional<Alloy> find(String id) {
        return ALL.stream().filter(alloy -> alloy.id().equals(id)).findFirst();
    }
}
