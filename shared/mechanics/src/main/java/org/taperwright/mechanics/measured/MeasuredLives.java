package org.taperwright.mechanics.measured;

import java.util.List;
import org.taperwright.mechanics.fatigue.Tube;

/** Cycles to fracture of like instruments turning in tubes. */
public record MeasuredLives(String label, List<Life> lives) implements Measured {
    public MeasuredLives {
        lives = List.copyOf(lives);
    }

    /** An instrument's cycles to fracture in a tube. */
    public record Life(Tube tube, double cycles) {}
}
