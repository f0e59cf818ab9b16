package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.taperwright.mechanics.design.ThingId;

/** Makes a query of a search, every value bound. */
final class Searches {
    private Searches() {}

    static List<ThingId> find(Handle handle, Search search) {
        List<String> conditions = new ArrayList<>(List.of("1 = 1"));
        Map<String, Object> values = new LinkedHashMap<>();
        search.kind().ifPresent(kind -> put(conditions, values, "kind = :kind", "kind", kind.word()));
        search.leastSize().ifPresent(size -> put(conditions, values, "size >= :least", "least", size));
        search.mostSize().ifPresent(size -> put(conditions, values, "size <= :most", "most", size));
        search.family().ifPresent(family -> put(conditions, values, "family = :family", "family", family));
        search.alloy().ifPresent(alloy -> put(conditions, values, "alloy = :alloy", "alloy", alloy));
        search.motion().ifPresent(motion -> put(conditions, values, "motion = :motion", "motion", motion));
        for (String word : SearchColumns.folded(search.text()).split("\\s+")) {
            if (!word.isEmpty()) {
                String name = "word" + values.size();
                put(conditions, values, "search_text like :" + name + " escape '!'", name, '%' + escaped(word) + '%');
            }
        }
        Query query = handle.createQuery(
                "select thing from present_thing where " + String.join(" and ", conditions) + " order by name, thing");
        values.forEach(query::bind);
        return query.mapTo(String.class).map(ThingId::new).list();
    }

    private static void put(
            List<String> conditions, Map<String, Object> values, String condition, String name, Object value) {
        conditions.add(condition);
        values.put(name, value);
    }

    private static String escaped(String word) {
        return word.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }
}
