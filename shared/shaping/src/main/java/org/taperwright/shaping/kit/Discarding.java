package org.taperwright.shaping.kit;

import java.time.LocalDate;

/**
 * That a piece was discarded.
 *
 * @param date when
 * @param reason why, in words
 */
public record Discarding(LocalDate date, String reason) {}
