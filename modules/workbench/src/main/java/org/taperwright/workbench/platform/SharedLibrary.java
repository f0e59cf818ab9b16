package org.taperwright.workbench.platform;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;
import org.taperwright.library.store.Password;
import org.taperwright.library.store.ServerSettings;

/**
 * Whether the library lies on a server, and where: kept among the settings. The password is kept by the platform's keyring
 * alone, which hands it to the keyring of the operating system; where there is none it is encrypted by a master password, or
 * lasts as long as the program.
 */
final class SharedLibrary {
    private static final String CHOSEN = "server.chosen";

    private SharedLibrary() {}

    private static Preferences kept() {
        return NbPreferences.forModule(SharedLibrary.class).node("library");
    }

    /** Whether the library is the one on the server. */
    static boolean chosen() {
        return kept().getBoolean(CHOSEN, false);
    }

    /** Where the server is. */
    static ServerSettings settings() {
        Map<String, String> words = new LinkedHashMap<>();
        for (String name : ServerSettings.of(Map.of()).words().keySet()) {
            words.put(name, kept().get(name, ""));
        }
        return ServerSettings.of(words);
    }

    /** The password, asked of the keyring anew each time. */
    static Password password() {
        return password(settings());
    }

    /** The password kept for a user of a server. */
    static Password password(ServerSettings settings) {
        return () -> Passwords.get().read(key(settings));
    }

    /**
     * Keeps where the library lies; an empty password leaves the one that is kept.
     *
     * @return whether the password is kept beyond the end of the program
     */
    static boolean keep(boolean onServer, ServerSettings settings, char[] password) {
        kept().putBoolean(CHOSEN, onServer);
        settings.words().forEach(kept()::put);
        boolean kept = !onServer
                || password.length == 0
                || Passwords.get()
                        .keep(key(settings), password, "Taperwright: " + settings.user() + " at " + settings.host());
        Arrays.fill(password, ' ');
        return kept;
    }

    private static String key(ServerSettings settings) {
        return "taperwright." + settings.user() + "@" + settings.host() + ":" + settings.port() + "/"
                + settings.database();
    }
}
