package org.taperwright.library.exchange;

import java.util.List;
import org.taperwright.library.exchange.LibraryBundle.Item;

/** What came of reading one or more files: all their things, or the faults for which all are refused. */
public sealed interface ReadResult {
    /**
     * Read.
     *
     * @param things the things in the order of the files; one for the form of a single thing
     * @param remarks what deserves a look
     */
    record Read(List<ReadThing> things, List<FileFault> remarks) implements ReadResult {
        public Read {
            things = List.copyOf(things);
            remarks = List.copyOf(remarks);
        }

        /** The things without their origin. */
        public LibraryBundle bundle() {
            return new LibraryBundle(things.stream()
                    .map(each -> new Item(each.id(), each.thing()))
                    .toList());
        }
    }

    /** Refused: at least one fault. */
    record Refused(List<FileFault> faults) implements ReadResult {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
