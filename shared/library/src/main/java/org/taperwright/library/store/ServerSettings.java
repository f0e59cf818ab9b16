package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.mechanics.work.Fault;

/**
 * Where a shared library lies. The password is no part of it, so that none can reach a file by it.
 *
 * @param host name or address of the server
 * @param port its port, 1 to 65535
 * @param database name of the database
 * @param user who connects
 * @param encryption whether the link is encrypted
 */
public record ServerSettings(String host, int port, String database, String user, Encryption encryption) {
    /** The port that PostgreSQL listens on unless told otherwise (registered with IANA). */
    public static final int USUAL_PORT = 5432;

    private static final int LONGEST = 255;

    /** How the link is encrypted. */
    public enum Encryption {
        /** Encrypted, and the server proves by its certificate to be the one named. */
        VERIFIED("verified"),
        /** Encrypted, whoever answers. */
        REQUIRED("required"),
        /** In the clear: only for a server on this machine or in a network of its own. */
        NONE("none");

        private final String word;

        Encryption(String word) {
            this.word = word;
        }

        /** The word in files. */
        public String word() {
            return word;
        }
    }

    /** What is wrong with the settings; empty when a connection may be tried. */
    public List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        if (host.isBlank() || host.length() > LONGEST || !host.matches("[A-Za-z0-9._:%-]+")) {
            faults.add(
                    Fault.impossible("host", "is no name of a server", "expected a name or an address, without port"));
        }
        if (port < 1 || port > 65_535) {
            faults.add(Fault.impossible("port", "found " + port, "expected 1 to 65535, usually " + USUAL_PORT));
        }
        named("database", database, faults);
        named("user", user, faults);
        return faults;
    }

    private static void named(String where, String name, List<Fault> faults) {
        if (name.isBlank() || name.length() > LONGEST || name.chars().anyMatch(Character::isISOControl)) {
            faults.add(Fault.impossible(where, "is no name", "expected the name of a " + where));
        }
    }

    /** The settings by name, for a file of preferences. */
    public Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("host", host);
        words.put("port", String.valueOf(port));
        words.put("database", database);
        words.put("user", user);
        words.put("encryption", encryption.word());
        return words;
    }

    /** Settings from words; what is missing or makes no sense is left empty, or encrypted and verified. */
    public static ServerSettings of(Map<String, String> words) {
        Encryption encryption = Encryption.VERIFIED;
        for (Encryption each : Encryption.values()) {
            encryption = each.word().equals(words.get("encryption")) ? each : encryption;
        }
        String port = words.getOrDefault("port", "");
        return new ServerSettings(
                words.getOrDefault("host", ""),
                port.matches("[0-9]{1,5}") ? Integer.parseInt(port) : USUAL_PORT,
                words.getOrDefault("database", ""),
                words.getOrDefault("user", ""),
                encryption);
    }
}
