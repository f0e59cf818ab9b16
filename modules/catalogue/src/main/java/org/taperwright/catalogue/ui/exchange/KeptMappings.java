package org.taperwright.catalogue.ui.exchange;

import java.util.List;
import java.util.prefs.Preferences;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.ColumnMappings;

/** The column mappings used last, remembered among a person's settings: as many as there is room for, the newest first. */
final class KeptMappings {
    private static final String KEPT = "import.mappings";

    private final Preferences settings;

    KeptMappings(Preferences settings) {
        this.settings = settings;
    }

    /** The mappings; none when what is kept cannot be read. */
    ColumnMappings read() {
        String text = settings.get(KEPT, "");
        return !text.isEmpty() && ColumnMappings.read(text, "settings") instanceof ColumnMappings.Read read
                ? read.mappings()
                : ColumnMappings.NONE;
    }

    /** Remembers a mapping, in the place of an older one for the same headings. */
    void keep(ColumnMapping mapping) {
        List<ColumnMapping> all = read().keeping(mapping).mappings();
        for (int count = all.size(); count > 0; count--) {
            String text = new ColumnMappings(all.subList(0, count)).text();
            if (text.length() <= Preferences.MAX_VALUE_LENGTH) {
                settings.put(KEPT, text);
                return;
            }
        }
    }
}
