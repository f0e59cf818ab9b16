package org.taperwright.library.store;

/** The library's file could not be read or written, such as on a full disk; nothing of the change was stored. */
public final class StoreFailure extends RuntimeException {
    /** A failure in plain words. */
    public StoreFailure(String reason, Throwable cause) {
        super(reason, cause);
    }

    /** A failure in plain words. */
    public StoreFailure(String reason) {
        super(reason);
    }
}
