package org.taperwright.sequencer.outcome;

import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.passage.spread.WallQuantities;

/** What is shown of each step: its quantity in the engine's words, how it is written, and how far it may be trusted. */
public enum OutcomeColumn {
    REMOVED(
            "Dentine",
            "removed",
            "mm³",
            1,
            Standing.COMPUTED,
            WallQuantities.REMOVED,
            true,
            "Volume of dentine the step removed"),
    WORN(
            "Wall worn",
            "so far",
            "%",
            100,
            Standing.ESTIMATE,
            WallQuantities.TOUCHED,
            true,
            "Share of the wall that is worn by more than 0.02 mm after the step, by it or by one before it"),
    TRANSPORTED(
            "Transported",
            "so far",
            "mm",
            1,
            Standing.INDEX,
            WallQuantities.TRANSPORTED,
            true,
            "Widening towards the inside of the bend less that towards its outside, where the two differ most: above 0 "
                    + "towards the inside. The sign and the order hold"),
    DENTINE(
            "Least wall",
            "left",
            "mm",
            1,
            Standing.ESTIMATE,
            WallQuantities.DENTINE,
            true,
            "Least dentine between canal and root after the step; absent where the root's outline is not known"),
    TORQUE("Torque", "", "N·cm", 0.1, Standing.INDEX, "torqueNmm", false, "Greatest torque of the step's strokes"),
    RESERVE(
            "Strength",
            "over torque",
            "times",
            1,
            Standing.INDEX,
            "torsionalReserve",
            false,
            "How many times the torque that acts the instrument bears before it breaks, where that is least; below 1 it "
                    + "would break. From 0.5 mm above the tip on"),
    LIMIT(
            "Motor's limit",
            "used",
            "%",
            100,
            Standing.INDEX,
            "torqueNmm",
            false,
            "Torque over the limit set in the step, or over the most the motor gives; above 100 the motor would stop"),
    STRAIN(
            "Strain",
            "",
            "%",
            100,
            Standing.COMPUTED,
            "greatestStrain",
            false,
            "Greatest strain by bending in the curve"),
    LIFE(
            "Life",
            "spent",
            "%",
            100,
            Standing.INDEX,
            "lifeSpent",
            false,
            "Share of the instrument's life that turning in the curve spent, where most is spent; 100 is fracture"),
    TIP_FORCE(
            "Side force",
            "at the tip",
            "N",
            1,
            Standing.COMPUTED,
            "tipForceN",
            false,
            "Net force on the wall along the last millimetre of the instrument, in the last stroke");

    private final String name;
    private final String more;
    private final String unit;
    private final double factor;
    private final Standing standing;
    private final String quantity;
    private final boolean byThird;
    private final String meaning;

    OutcomeColumn(
            String name,
            String more,
            String unit,
            double factor,
            Standing standing,
            String quantity,
            boolean byThird,
            String meaning) {
        this.name = name;
        this.more = more;
        this.unit = unit;
        this.factor = factor;
        this.standing = standing;
        this.quantity = quantity;
        this.byThird = byThird;
        this.meaning = meaning;
    }

    /** First line of its heading. */
    public String firstLine() {
        return name;
    }

    /** Second line of its heading; may be empty. */
    public String secondLine() {
        return more;
    }

    /** Its heading in one line. */
    public String label() {
        return more.isEmpty() ? name : name + " " + more;
    }

    /** The unit in which it is written. */
    public String unit() {
        return unit;
    }

    /** How far it may be trusted. */
    public Standing standing() {
        return standing;
    }

    /** What it means, in a sentence without its end. */
    public String meaning() {
        return meaning;
    }

    /** Whether it is also told by third. */
    boolean byThird() {
        return byThird;
    }

    /** The quantity's name in the engine. */
    String quantity() {
        return quantity;
    }

    /** What a value in the engine's unit is multiplied by. */
    double factor() {
        return factor;
    }
}
