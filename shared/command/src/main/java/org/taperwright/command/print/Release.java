package org.taperwright.command.print;

import java.util.Optional;

/** The program's release. */
public final class Release {
    private Release() {}

    /** The number, as the jar says; "development" when run from classes. */
    public static String number() {
        return Optional.ofNullable(Release.class.getPackage().getImplementationVersion())
                .orElse("development");
    }
}
