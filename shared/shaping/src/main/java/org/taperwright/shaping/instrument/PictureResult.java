package org.taperwright.shaping.instrument;

import org.taperwright.mechanics.work.Fault;

/** A picture, or why a file was not taken as one. */
public sealed interface PictureResult {
    /** Taken. */
    record Taken(Picture picture) implements PictureResult {}

    /** Refused. */
    record Refused(Fault fault) implements PictureResult {}
}
