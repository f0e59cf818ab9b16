package org.taperwright.shaping.canal.preset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The presets of {@code averages.txt}: one a line, its columns named in the first line. */
public final class PublishedAverages implements PresetSource {
    private static final String FILE = "averages.txt";
    private static final String COMMON = "Diameters: medians of Wu and others, Oral Surg 2000;89:739-743 (from memory, "
            + "medium confidence). Length: average of Burns, Pathways of the Pulp (from memory). ";
    private static final String DENTINE =
            " Dentine: De-Deus and others, Int Endod J 2019;52:1501-1507 (abstract read).";

    @Override
    public List<CanalPreset> presets() {
        return text().lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(PublishedAverages::preset)
                .toList();
    }

    private static String text() {
        try (InputStream in = PublishedAverages.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the presets' file is not packed: " + FILE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static CanalPreset preset(String line) {
        String[] cells = line.split("; ");
        Optional<CanalPreset.Dentine> dentine = cells[7].equals("-")
                ? Optional.empty()
                : Optional.of(new CanalPreset.Dentine(Double.parseDouble(cells[7]), Double.parseDouble(cells[8])));
        return new CanalPreset(
                cells[0],
                cells[1],
                numbers(cells[2]),
                numbers(cells[3]),
                Double.parseDouble(cells[4]),
                Double.parseDouble(cells[5]),
                Double.parseDouble(cells[6]),
                dentine,
                COMMON + "Bend: " + cells[9] + "." + (dentine.isPresent() ? DENTINE : ""));
    }

    private static List<Double> numbers(String cell) {
        return Arrays.stream(cell.split(", ")).map(Double::valueOf).toList();
    }
}
