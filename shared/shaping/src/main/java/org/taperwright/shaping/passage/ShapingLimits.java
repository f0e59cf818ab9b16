package org.taperwright.shaping.passage;

import java.util.List;

/** What every result of shaping leaves out, and how large that is; the whole list stands in LIMITS.md of this module. */
public final class ShapingLimits {
    /**
     * Something left out.
     *
     * @param what what it is
     * @param size how large it is, or that it was not estimated
     */
    public record Limit(String what, String size) {}

    /** The largest. */
    public static final List<Limit> LEFT_OUT = List.of(
            new Limit("friction about the instrument's axis", "up to 0.03 mm out of the plane of the bend"),
            new Limit("torque by hysteresis of the alloy", "up to 0.03 N·cm (an estimate)"),
            new Limit("tilt of the handle", "0.1 rad doubles the bending energy"),
            new Limit("swings of reciprocation in fatigue", "not estimated: only turns left over are counted"),
            new Limit("debris, lubrication, temperature, what an irrigant does", "not estimated"),
            new Limit(
                    "more torque at a low rate of insertion, as published",
                    "not reproduced: only the feed for each turn counts"));

    private ShapingLimits() {}
}
