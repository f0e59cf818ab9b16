package org.taperwright.workbench.platform;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.time.Instant;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.BackupResult;
import org.taperwright.library.store.CheckReport;
import org.taperwright.library.store.LibraryCheck;

/** Checks the library's file and takes a backup of it now, and says what came of both. */
@ActionID(category = "File", id = "org.taperwright.workbench.platform.CareAction")
@ActionRegistration(displayName = "Check and back up the library")
@ActionReference(path = "Menu/File", position = 400)
public final class CareAction implements ActionListener {
    /** What came of both. */
    private record Care(CheckReport report, BackupResult backup) {}

    @Override
    public void actionPerformed(ActionEvent chosen) {
        if (SharedLibrary.chosen()) {
            Notices.warn("The library lies on a server", "Whoever runs the server checks it and backs it up.");
            return;
        }
        Aside.INSTANCE.run(
                () -> new Care(
                        LibraryCheck.of(LibraryPlace.file(), JsonForms.forStore()),
                        DeskProvider.get().backups().take(Instant.now())),
                CareAction::tell);
    }

    private static void tell(Care care) {
        String found = care.report().findings().isEmpty()
                ? "Nothing wrong was found in " + care.report().things() + " things and "
                        + care.report().revisions() + " steps of their past."
                : care.report().findings().get(0).fault().sentence() + " "
                        + care.report().findings().get(0).mend();
        String detail = found + " " + words(care.backup());
        if (care.report().sound() && !(care.backup() instanceof BackupResult.Refused)) {
            Notices.tell("The library is whole", detail);
        } else {
            Notices.warn(care.report().sound() ? "The library is whole" : "The library is damaged", detail);
        }
    }

    private static String words(BackupResult result) {
        if (result instanceof BackupResult.Taken taken) {
            return "Backed up to " + taken.backup().file() + ".";
        }
        if (result instanceof BackupResult.Unchanged unchanged) {
            return "The newest backup holds everything: " + unchanged.newest().file() + ".";
        }
        return result instanceof BackupResult.Refused refused
                ? "Not backed up: " + refused.fault().sentence()
                : "";
    }
}
