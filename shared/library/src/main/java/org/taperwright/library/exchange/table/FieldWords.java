package org.taperwright.library.exchange.table;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.shaping.instrument.Drive;

/** The words that cells may hold, in lower case, each with the word of the form. */
final class FieldWords {
    private FieldWords() {}

    /** Hand or powered; the handle and latch that go with them (common practice, no source). */
    static Map<String, String> drives() {
        Map<String, String> words = of(Drive.values(), Drive::word);
        words.put("handle", Drive.HAND.word());
        words.put("manual", Drive.HAND.word());
        words.put("latch", Drive.POWERED.word());
        words.put("engine", Drive.POWERED.word());
        words.put("motor", Drive.POWERED.word());
        return words;
    }

    static Map<String, String> motions() {
        Map<String, String> words = of(Motion.values(), Motion::word);
        words.put("rotary", Motion.ROTATION.word());
        words.put("continuous rotation", Motion.ROTATION.word());
        words.put("reciprocating", Motion.RECIPROCATION.word());
        return words;
    }

    static Map<String, String> makings() {
        return of(Making.values(), Making::word);
    }

    static Map<String, String> tips() {
        Map<String, String> words = of(TipKind.values(), TipKind::word);
        words.put("cutting", TipKind.ACTIVE.word());
        words.put("non-cutting", TipKind.PASSIVE.word());
        return words;
    }

    static Map<String, String> alloys() {
        Map<String, String> words = new LinkedHashMap<>();
        Alloys.all().forEach(alloy -> {
            words.put(alloy.label().toLowerCase(Locale.ROOT), alloy.id());
            words.put(alloy.id(), alloy.id());
        });
        return words;
    }

    static Map<String, String> sections() {
        Map<String, String> words = new LinkedHashMap<>();
        Sections.families().forEach(family -> {
            words.put(family.label().toLowerCase(Locale.ROOT), family.id());
            words.put(family.id(), family.id());
        });
        return words;
    }

    private static <T> Map<String, String> of(T[] values, Function<T, String> word) {
        Map<String, String> words = new LinkedHashMap<>();
        Arrays.stream(values).map(word).forEach(each -> words.put(each, each));
        return words;
    }
}
