package org.taperwright.mechanics.alloy;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;

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
                    false,
                    "Tensile strength: ASTM A313 table for spring wire of 0.23 to 0.8 mm (read). Elastic constants: "
                            + "handbook values for 302 and 304 (from memory, high confidence). Yield: 0.75 to 0.9 of the "
                            + "tensile strength (spring handbooks, from memory, medium confidence).",
                    "Hardened wire at room temperature, up to yield."),
            new Alloy(
                    "carbon-steel",
                    "Carbon steel",
                    207_000,
                    new Band(200_000, 210_000),
                    0.29,
                    1_900,
                    new Band(1_600, 2_300),
                    2_300,
                    false,
                    "Elastic constants: handbook values for music wire (from memory, high confidence). Tensile strength "
                            + "of such wire and 0.75 to 0.9 of it as yield: from memory, low confidence.",
                    "Hardened wire at room temperature, up to yield; not after corrosion."),
            new Alloy(
                    "niti-superelastic",
                    "Superelastic NiTi (austenitic)",
                    42_500,
                    new Band(36_000, 63_000),
                    0.33,
                    492,
                    new Band(432, 582),
                    1_500,
                    true,
                    "He and Ni, J Endod 2010;36:1180 (modulus 42.5 GPa, plateau from 492 MPa; from memory, medium "
                            + "confidence). Band: models of Kim, Cheung and others, J Endod 2008 (36 GPa, 504 MPa; from "
                            + "memory, medium confidence), a generic published card (62.9 GPa, 460 MPa; read), wire of "
                            + "Zhou and others, J Endod 2012;38:1535 (plateau 490 to 582, strength 1415 to 1593 MPa; "
                            + "from memory, medium confidence).",
                    "Up to the start of the plateau, at 23 to 37 °C; beyond it the linear law overstates the stiffness."),
            new Alloy(
                    "niti-r-phase",
                    "R-phase NiTi",
                    32_000,
                    new Band(20_000, 45_000),
                    0.33,
                    350,
                    new Band(200, 490),
                    1_400,
                    true,
                    "No source specific to instruments: set between the austenitic and the martensitic alloy, from "
                            + "memory, low confidence.",
                    "Up to the start of the plateau, at room temperature; the band is wide for want of a source."),
            new Alloy(
                    "niti-martensitic",
                    "Heat-treated NiTi (martensitic)",
                    34_000,
                    new Band(28_000, 41_000),
                    0.33,
                    190,
                    new Band(128, 251),
                    1_110,
                    true,
                    "Modulus: handbook range of martensite, 28 to 41 GPa (property sheet of 2003, read). Plateau 128 to "
                            + "251 MPa and strength 1094 to 1130 MPa: Zhou and others, J Endod 2012;38:1535 (from memory, "
                            + "medium confidence; the order against conventional wire read in the abstract).",
                    "At room and body temperature, where this wire is not superelastic; up to the start of the plateau."));

    private Alloys() {}

    /** All alloys, steels first. */
    public static List<Alloy> all() {
        return ALL;
    }

    /** The alloy with an identifier. */
    public static Optional<Alloy> find(String id) {
        return ALL.stream().filter(alloy -> alloy.id().equals(id)).findFirst();
    }
}
