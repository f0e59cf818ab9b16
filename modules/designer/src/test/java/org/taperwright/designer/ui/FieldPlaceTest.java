package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.Shots;

class FieldPlaceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "taper[1].taper|Taper segment 2",
                "taper[0].toMm|Taper segment 1, to",
                "sections[0].shape.parameters.coreDiameter|Section 1, core diameter",
                "sections[1].levelMm|Section 2, level",
                "flutes[2].flutesPerMm|Flute station 3, flutes per",
                "tip.angleDeg|Tip",
                "tipDiameterMm|Tip diameter",
                "making|Making"
            })
    void fields_are_called_as_the_form_calls_them(String field, String words) {
        assertThat(FieldPlace.words(field)).isEqualTo(words);
    }

    @Test
    void every_place_is_a_component_of_the_panel() {
        Shots.theme(false);
        try (BareDesk desk = new BareDesk(SampleDesigns.library())) {
            DesignPanel panel = Shots.onEventThread(() -> {
                desk.select(SampleDesigns.FILE);
                return new DesignPanel(desk);
            });
            List<String> names = Gestures.all(panel).stream()
                    .map(part -> String.valueOf(part.getName()))
                    .toList();

            for (String field : List.of(
                    "name",
                    "note",
                    "tipDiameterMm",
                    "shaftDiameterMm",
                    "lengthMm",
                    "taper[0].taper",
                    "sections[0].shape.family",
                    "flutes[0].flutesPerMm",
                    "hand",
                    "tip.kind",
                    "alloy",
                    "making",
                    "motion")) {
                assertThat(names).contains(FieldPlace.of(field).component());
            }
        }
    }
}
