package org.taperwright.library.exchange.form;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.exchange.json.PlacedFault;
import org.taperwright.mechanics.work.Fault;

/** The faults found while one text is read; after a hundred it stops listening, for nobody reads more. */
public final class Findings {
    private static final int MOST = 100;

    private final List<PlacedFault> faults = new ArrayList<>();

    /** Notes a value that is not what it should be. */
    public void refuse(Node node, String path, String expected) {
        refuse(node.place(), path, "found " + node.described(), expected);
    }

    /** Notes what is wrong at a place. */
    public void refuse(Place place, String path, String what, String expected) {
        note(place, Fault.impossible(path, what, expected));
    }

    /** Notes a fault, grave or not, at a place. */
    public void note(Place place, Fault fault) {
        if (faults.size() < MOST) {
            faults.add(new PlacedFault(place, fault));
        }
    }

    /** All noted so far, in the order of the text where they were found in it. */
    public List<PlacedFault> faults() {
        return List.copyOf(faults);
    }

    /** Whether anything was noted that stops the reading. */
    public boolean refused() {
        return faults.stream().anyMatch(each -> each.fault().weight() == Fault.Weight.IMPOSSIBLE);
    }
}
