package org.taperwright.shaping.passage.spread;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.uncertainty.LatinHypercube;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.WorkingInstrument;

/** All uncertain inputs of a sequence, each once, and the sequence at any sample of them. */
final class SequenceInputs {
    private final PreparedSequence prepared;
    private final Map<String, AlloyInputs> alloys = new HashMap<>();
    private final Map<String, UncertainInput> inputs = new LinkedHashMap<>();
    private final LatinHypercube cube;

    SequenceInputs(PreparedSequence prepared) {
        this.prepared = prepared;
        DentineInputs.ALL.forEach(input -> inputs.put(input.name(), input));
        for (Optional<Alloy> alloy : prepared.alloys()) {
            alloy.ifPresent(of -> alloys.computeIfAbsent(of.id(), id -> {
                AlloyInputs found = new AlloyInputs(of);
                found.inputs().forEach(input -> inputs.putIfAbsent(input.name(), input));
                return found;
            }));
        }
        cube = LatinHypercube.of(List.copyOf(inputs.keySet()));
    }

    /** The inputs, those of dentine first. */
    List<UncertainInput> all() {
        return List.copyOf(inputs.values());
    }

    /** Share of an input's spread in a sample. */
    double share(int input, int sample) {
        return cube.shares(sample)[input];
    }

    /** Dentine's constants in a sample. */
    ShapingConstants constants(int sample) {
        return DentineInputs.at(cube.shares(sample));
    }

    /** The sequence in a sample. */
    PreparedSequence sequence(int sample) {
        double[] drawn = cube.shares(sample);
        Map<String, Double> shares = new HashMap<>();
        int place = 0;
        for (String name : inputs.keySet()) {
            shares.put(name, drawn[place++]);
        }
        List<Optional<WorkingInstrument>> instruments = new ArrayList<>();
        for (int i = 0; i < prepared.instruments().size(); i++) {
            Optional<Alloy> alloy = prepared.alloys().get(i);
            instruments.add(prepared.instruments()
                    .get(i)
                    .map(usual -> Objects.requireNonNull(
                                    alloys.get(alloy.orElseThrow().id()))
                            .at(usual, shares)));
        }
        return prepared.with(instruments);
    }
}
