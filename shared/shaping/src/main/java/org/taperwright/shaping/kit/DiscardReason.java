package org.taperwright.shaping.kit;

import java.util.Optional;
import org.taperwright.mechanics.quantity.Standing;

/**
 * Why a piece is to be discarded.
 *
 * @param rule identifier of the rule
 * @param weight whether the rule is broken or only may be
 * @param sentence why, for people
 * @param standing how far what was predicted may be trusted; absent where nothing was, as of a count or a date
 * @param source where the rule comes from
 */
public record DiscardReason(String rule, Weight weight, String sentence, Optional<Standing> standing, String source) {
    /** How much it weighs. */
    public enum Weight {
        /** The rule says to discard it. */
        DISCARD("discard"),
        /** The rule may say so, for its limit lies within the band of an estimate. */
        CONSIDER("consider");

        private final String word;

        Weight(String word) {
            this.word = word;
        }

        /** The word shown to people. */
        public String word() {
            return word;
        }
    }

    static DiscardReason counted(DiscardRule rule, String sentence) {
        return new DiscardReason(rule.id(), Weight.DISCARD, sentence, Optional.empty(), rule.source());
    }
}
