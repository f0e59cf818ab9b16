package org.taperwright.library.exchange.course;

import java.util.List;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.shaping.canal.Canal;

/** What a canal's table holds. */
public sealed interface CanalTable {
    /**
     * A canal.
     *
     * @param canal the canal
     * @param points how many points its course was found from
     * @param bends how many bends it has
     * @param rmsMm root mean square distance of the points from its course, mm
     * @param remarks what deserves a look, with its line and column
     */
    record Read(Canal canal, int points, int bends, double rmsMm, List<PlacedFault> remarks) implements CanalTable {
        public Read {
            remarks = List.copyOf(remarks);
        }
    }

    /** Nothing that can be used. */
    record Refused(List<PlacedFault> faults) implements CanalTable {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
