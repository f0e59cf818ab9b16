package org.taperwright.library.store;

import java.nio.file.Path;
import java.time.Instant;

/**
 * A whole copy of a library.
 *
 * @param file where it lies
 * @param at when it was taken
 * @param things how many things it holds
 * @param revisions how many revisions of them
 */
public record Backup(Path file, Instant at, long things, long revisions) {}
