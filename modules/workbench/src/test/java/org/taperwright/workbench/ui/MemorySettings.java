package org.taperwright.workbench.ui;

import java.util.HashMap;
import java.util.Map;
import java.util.prefs.AbstractPreferences;

/** Settings that last as long as the test. */
public final class MemorySettings extends AbstractPreferences {
    private final Map<String, String> values = new HashMap<>();
    private final Map<String, MemorySettings> children = new HashMap<>();

    /** Empty settings. */
    public MemorySettings() {
        this(null, "");
    }

    private MemorySettings(AbstractPreferences parent, String name) {
        super(parent, name);
    }

    @Override
    protected void putSpi(String key, String value) {
        values.put(key, value);
    }

    @Override
    protected String getSpi(String key) {
        return values.get(key);
    }

    @Override
    protected void removeSpi(String key) {
        values.remove(key);
    }

    @Override
    protected void removeNodeSpi() {
        values.clear();
    }

    @Override
    protected String[] keysSpi() {
        return values.keySet().toArray(String[]::new);
    }

    @Override
    protected String[] childrenNamesSpi() {
        return children.keySet().toArray(String[]::new);
    }

    @Override
    protected AbstractPreferences childSpi(String name) {
        return children.computeIfAbsent(name, each -> new MemorySettings(this, each));
    }

    @Override
    protected void syncSpi() {
        // in memory only
    }

    @Override
    protected void flushSpi() {
        // in memory only
    }
}
