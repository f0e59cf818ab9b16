package org.taperwright.shaping.kit;

import java.time.LocalDate;

/**
 * That a piece was discarded.
 *
 * @param date when
 * @param reason why, in words
 * @param replacementWanted whether a new piece is to be ordered in its place
 */
public record Discarding(LocalDate date, String reason, boolean replacementWanted) {}
