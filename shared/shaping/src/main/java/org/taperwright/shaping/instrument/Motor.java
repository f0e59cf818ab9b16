package org.taperwright.shaping.instrument;

import java.util.Optional;

/**
 * A motor.
 *
 * @param name what people call it
 * @param maker who makes it
 * @param speedRpm speeds it can be set to, rev/min
 * @param torqueNmm torque limits it can be set to, N mm
 * @param reciprocation the angles it can be set to, if it reciprocates
 * @param cordless whether it runs from a battery
 * @param apexLocator whether an apex locator is linked
 * @param note free text
 */
public record Motor(
        String name,
        String maker,
        Window speedRpm,
        Window torqueNmm,
        Optional<Reciprocation> reciprocation,
        boolean cordless,
        boolean apexLocator,
        String note) {}
