package org.taperwright.mechanics.work;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Keeps the results last asked for, up to a number; the one not asked for the longest goes first. Safe for threads. */
public final class BoundedCache<K, V> {
    private final Map<K, V> kept;

    /** Keeps at most so many results. */
    public BoundedCache(int most) {
        kept = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** The result for a key, computed outside the lock when it is not there; two threads may then both compute it. */
    public V get(K key, Function<K, V> compute) {
        synchronized (kept) {
            V found = kept.get(key);
            if (found != null) {
                return found;
            }
        }
        V fresh = compute.apply(key);
        synchronized (kept) {
            kept.put(key, fresh);
        }
        return fresh;
    }
}
