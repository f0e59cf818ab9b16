package org.taperwright.workbench.platform;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.openide.util.RequestProcessor;
import org.taperwright.workbench.ui.Background;

/** Runs work on a thread of the platform's, for dialogs that come before there is a desk. */
enum Aside implements Background {
    INSTANCE;

    private static final RequestProcessor THREADS = new RequestProcessor("taperwright aside", 2);

    @Override
    public <T> void run(Supplier<T> work, Consumer<T> deliver) {
        THREADS.post(() -> {
            T result = work.get();
            EventThread.INSTANCE.execute(() -> deliver.accept(result));
        });
    }
}
