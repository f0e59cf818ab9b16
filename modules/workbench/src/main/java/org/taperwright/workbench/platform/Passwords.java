package org.taperwright.workbench.platform;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.netbeans.api.keyring.Keyring;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;

/**
 * Passwords, kept by the platform's keyring alone. One that it does not take, such as one that is locked, is held in memory
 * until the program ends, and nowhere else. Not for the event thread: a keyring may ask the person for leave.
 */
@ServiceProvider(service = Passwords.class)
public final class Passwords {
    private final Map<String, char[]> notTaken = new ConcurrentHashMap<>();

    /** The one of the running program. */
    static Passwords get() {
        return Lookup.getDefault().lookup(Passwords.class);
    }

    /** Keeps a password; whether the keyring holds it beyond the end of the program. */
    boolean keep(String key, char[] password, String description) {
        Keyring.save(key, password.clone(), description);
        boolean taken = Arrays.equals(Keyring.read(key), password);
        if (taken) {
            notTaken.remove(key);
        } else {
            notTaken.put(key, password.clone());
        }
        return taken;
    }

    /** A password kept; empty when there is none. */
    char[] read(String key) {
        return Optional.ofNullable(notTaken.get(key))
                .map(char[]::clone)
                .or(() -> Optional.ofNullable(Keyring.read(key)))
                .orElseGet(() -> new char[0]);
    }
}
