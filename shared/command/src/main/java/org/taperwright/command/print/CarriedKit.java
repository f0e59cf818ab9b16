package org.taperwright.command.print;

import org.taperwright.shaping.kit.CarriedLife;

/**
 * A kit with which a sequence is made.
 *
 * @param name the kit's name
 * @param life its pieces
 */
public record CarriedKit(String name, CarriedLife life) {}
