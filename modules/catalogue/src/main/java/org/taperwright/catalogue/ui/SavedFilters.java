package org.taperwright.catalogue.ui;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;

/**
 * Filters kept by name among a person's settings, each as one line: {@code taper=0.04&stock=LOW}, escaped as in a web
 * form. A line of another program's making that does not fit is passed over.
 */
final class SavedFilters {
    private final Preferences kept;

    SavedFilters(Preferences settings) {
        kept = settings.node("filters");
    }

    /** The names, in natural order. */
    List<String> names() {
        try {
            return List.of(kept.keys()).stream().sorted(NaturalOrder.OF_NAMES).toList();
        } catch (BackingStoreException unreachable) {
            return List.of(); // settings that cannot be read are as good as none
        }
    }

    /** The filter of a name. */
    Optional<InstrumentFilter> find(String name) {
        return Optional.ofNullable(kept.get(name, null)).flatMap(SavedFilters::read);
    }

    /** Keeps a filter; one of the same name is replaced. */
    void keep(String name, InstrumentFilter filter) {
        String trimmed = name.strip();
        String key = trimmed.substring(0, Math.min(Preferences.MAX_KEY_LENGTH, trimmed.length()));
        String text = written(filter);
        if (!key.isEmpty() && text.length() <= Preferences.MAX_VALUE_LENGTH) {
            kept.put(key, text);
        }
    }

    /** Forgets a filter. */
    void forget(String name) {
        kept.remove(name);
    }

    static String written(InstrumentFilter filter) {
        List<String> parts = new ArrayList<>();
        part(parts, "text", Optional.of(filter.text().strip()).filter(text -> !text.isEmpty()));
        part(parts, "from", filter.leastSize());
        part(parts, "to", filter.mostSize());
        part(parts, "taper", filter.taper());
        part(parts, "length", filter.lengthMm());
        part(parts, "section", filter.section());
        part(parts, "alloy", filter.alloy());
        part(parts, "motion", filter.motion().map(Motion::name));
        part(parts, "stock", Optional.of(filter.stock().name()).filter(name -> filter.stock() != StockFilter.ANY));
        part(parts, "motor", filter.motor().map(ThingId::value));
        return String.join("&", parts);
    }

    private static void part(List<String> parts, String name, Optional<?> value) {
        value.ifPresent(each -> parts.add(name + '=' + URLEncoder.encode(each.toString(), StandardCharsets.UTF_8)));
    }

    static Optional<InstrumentFilter> read(String line) {
        try {
            Map<String, String> parts = new HashMap<>();
            for (String part : line.split("&")) {
                int sign = part.indexOf('=');
                if (sign > 0) {
                    parts.put(
                            part.substring(0, sign),
                            URLDecoder.decode(part.substring(sign + 1), StandardCharsets.UTF_8));
                }
            }
            return Optional.of(new InstrumentFilter(
                    parts.getOrDefault("text", ""),
                    value(parts, "from", Integer::valueOf),
                    value(parts, "to", Integer::valueOf),
                    value(parts, "taper", Double::valueOf),
                    value(parts, "length", Double::valueOf),
                    value(parts, "section", word -> word),
                    value(parts, "alloy", word -> word),
                    value(parts, "motion", Motion::valueOf),
                    value(parts, "stock", StockFilter::valueOf).orElse(StockFilter.ANY),
                    value(parts, "motor", ThingId::new)));
        } catch (IllegalArgumentException strange) {
            return Optional.empty();
        }
    }

    private static <T> Optional<T> value(Map<String, String> parts, String name, Function<String, T> reading) {
        return Optional.ofNullable(parts.get(name)).map(reading);
    }
}
