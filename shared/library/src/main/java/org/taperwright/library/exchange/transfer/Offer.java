package org.taperwright.library.exchange.transfer;

import java.util.List;
import java.util.function.Consumer;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.library.exchange.StreamedForms;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.mechanics.work.Progress;

/** A file that offers things. It is read anew each time, so that its things never need to be in memory together. */
public interface Offer {
    /** The name of the file. */
    String name();

    /** How large the file is, bytes; 0 when that is not known. */
    long size();

    /**
     * Gives each thing.
     *
     * @return what is wrong with the file as a whole; if anything, nothing of it is to be taken
     * @throws org.taperwright.mechanics.work.WorkCancelled when the progress says so
     */
    Given each(Consumer<LibraryBundle.Item> taker, Progress progress);

    /**
     * What came of it.
     *
     * @param faults what is wrong with the file as a whole
     * @param remarks what deserves a look
     * @param bad how many rows of a table were passed over because of their own faults
     */
    record Given(List<FileFault> faults, List<FileFault> remarks, long bad) {
        public Given {
            faults = List.copyOf(faults);
            remarks = List.copyOf(remarks);
        }
    }

    /** The things of a file in JSON form. */
    static Offer ofForms(TextSource source) {
        return new Offer() {
            @Override
            public String name() {
                return source.name();
            }

            @Override
            public long size() {
                return source.size();
            }

            @Override
            public Given each(Consumer<LibraryBundle.Item> taker, Progress progress) {
                StreamedForms.Outcome outcome = StreamedForms.read(
                        source, read -> taker.accept(new LibraryBundle.Item(read.id(), read.thing())), progress);
                return new Given(outcome.faults(), outcome.remarks(), 0);
            }
        };
    }
}
