package org.taperwright.library.exchange.bench;

import java.util.List;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.measured.Measured;

/** What a table of measurements holds. */
public sealed interface BenchTable {
    /** Measurements; lines that were passed over, with why, stand in the remarks. */
    record Read(Measured measured, List<PlacedFault> remarks) implements BenchTable {
        public Read {
            remarks = List.copyOf(remarks);
        }
    }

    /** Nothing that can be used. */
    record Refused(List<PlacedFault> faults) implements BenchTable {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
