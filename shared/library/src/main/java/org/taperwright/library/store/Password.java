package org.taperwright.library.store;

/** Hands over a password when it is needed, such as from the platform's keyring; asked anew for each connection. */
@FunctionalInterface
public interface Password {
    /** The password; empty when there is none. */
    char[] letters();
}
