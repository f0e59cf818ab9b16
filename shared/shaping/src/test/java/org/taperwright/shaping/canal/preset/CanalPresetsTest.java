package org.taperwright.shaping.canal.preset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.canal.Lumen;
import org.taperwright.shaping.passage.stroke.LeastDentine;
import org.taperwright.shaping.passage.stroke.RootWall;

class CanalPresetsTest {
    private static final CanalPreset MESIAL =
            CanalPresets.find("lower-molar-mb").orElseThrow();

    @Test
    void everyPresetIsACanalThatCanBeComputedAndSaysItsSource() {
        assertThat(CanalPresets.all()).hasSizeGreaterThanOrEqualTo(19).allSatisfy(preset -> {
            assertThat(preset.source()).contains("Wu").contains("from memory");
            assertThat(CanalGeometry.possible(PresetDraw.average(preset))).isTrue();
        });
        assertThat(CanalPresets.all().stream().map(CanalPreset::id)).doesNotHaveDuplicates();
    }

    /**
     * Medians by Wu and others, Oral Surg 2000;89:739-743 (from memory): 0.40 by 0.21 mm at 1 mm, 0.64 by 0.32 mm at 5 mm; angle by Gu
     * and others, J Endod 2010 (abstract read): 24.3 degrees.
     */
    @Test
    void theAverageCanalHasThePublishedNumbers() {
        Canal canal = PresetDraw.average(MESIAL);
        CanalGeometry geometry = new CanalGeometry(canal);
        assertThat(geometry.wideMm(canal.lengthMm() - 1)).isEqualTo(0.40, within(1e-9));
        assertThat(geometry.narrowMm(canal.lengthMm() - 1)).isEqualTo(0.21, within(1e-9));
        assertThat(geometry.wideMm(canal.lengthMm() - 5)).isEqualTo(0.64, within(1e-9));
        assertThat(geometry.narrowMm(canal.lengthMm() - 5)).isEqualTo(0.32, within(1e-9));
        assertThat(canal.pieces().stream()
                        .mapToDouble(piece -> piece.angleDeg())
                        .sum())
                .isEqualTo(24.3, within(1e-9));
    }

    /** De-Deus and others, Int Endod J 2019;52:1501-1507 (abstract read): 1.13 mm. */
    @Test
    void leastDentineIsThePublishedMean() {
        Canal canal = PresetDraw.average(MESIAL);
        LeastDentine least = RootWall.of(canal).least(Lumen.of(canal, 0.1, 72));
        assertThat(least.thicknessMm()).isEqualTo(1.13, within(0.02));
    }

    /** Mean and standard deviation of what is drawn come back, within three standard errors of 400 draws. */
    @Test
    void aPopulationSpreadsAsThePresetSays() {
        List<Canal> drawn = PresetDraw.population(MESIAL, 400, 1);
        double[] angles = drawn.stream()
                .mapToDouble(c -> c.pieces().stream()
                        .mapToDouble(piece -> piece.angleDeg())
                        .sum())
                .toArray();
        double mean = Arrays.stream(angles).average().orElseThrow();
        double square = Arrays.stream(angles)
                .map(angle -> (angle - mean) * (angle - mean))
                .average()
                .orElseThrow();
        assertThat(mean).isEqualTo(24.3, within(3 * 9.8 / 20));
        assertThat(Math.sqrt(square)).isEqualTo(9.8, within(3 * 9.8 / Math.sqrt(800)));
        assertThat(drawn).allMatch(CanalGeometry::possible);
        assertThat(PresetDraw.population(MESIAL, 400, 1)).isEqualTo(drawn);
        assertThat(PresetDraw.population(MESIAL, 400, 2)).isNotEqualTo(drawn);
    }
}
