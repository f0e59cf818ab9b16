package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.Optional;
import org.taperwright.shaping.instrument.Instrument;

/** A rule by which a piece is discarded. */
public interface DiscardRule {
    /** What a rule says when nobody has published it. */
    String COMMON_PRACTICE = "common practice, no source";

    /** Identifier. */
    String id();

    /** One sentence on what it checks. */
    String explanation();

    /** The published source, or {@link #COMMON_PRACTICE}. */
    String source();

    /**
     * Why a piece is to be discarded, if it is.
     *
     * @param piece one in use
     * @param entry its catalogue entry, unless that is gone
     * @param today the day as of which it is asked
     */
    Optional<DiscardReason> check(Piece piece, Optional<Instrument> entry, LocalDate today);
}
