package org.taperwright.catalogue.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Window;
import org.taperwright.workbench.ui.Shots;

/** A filter shown in the bar stays the filter it is until a person changes one of its conditions. */
class FilterBarTest {
    private static final InstrumentFilter WIDE = InstrumentFilter.ALL
            .withWords("fen")
            .withSize(Optional.of(new Window(12.5, 40)))
            .withTaper(Optional.of(new Window(0.02, 0.06)))
            .withLengthMm(Optional.of(new Window(21, 28)))
            .withFamilies(List.of("square", "triangle"))
            .withAlloys(List.of("stainless-steel", "niti-superelastic"))
            .withMotions(List.of(Motion.FILING, Motion.ROTATION))
            .withInStock(true)
            .withMotor(Optional.of(new ThingId("gone")));
    private FilterBar bar;

    @BeforeEach
    void open() {
        Shots.theme(false);
        bar = Shots.onEventThread(FilterBar::new);
    }

    @Test
    void ranges_and_several_choices_stay_whole_when_shown() {
        assertThat(shown(WIDE)).isEqualTo(WIDE);
    }

    @Test
    void they_stay_whole_when_the_library_offers_other_choices() {
        shown(WIDE);
        InstrumentChoices offered = new InstrumentChoices(
                List.of(),
                List.of("square"),
                Map.of("stainless-steel", "Stainless steel"),
                List.of(0.02),
                List.of(25.0),
                List.of());

        assertThat(Shots.onEventThread(() -> {
                    bar.offer(offered);
                    return bar.filter("fen");
                }))
                .isEqualTo(WIDE);
    }

    @Test
    void one_condition_changed_leaves_the_others_whole() {
        shown(WIDE);

        assertThat(Shots.onEventThread(() -> {
                    choice("filter.section").setSelectedIndex(0);
                    return bar.filter("fen");
                }))
                .isEqualTo(WIDE.withFamilies(List.of()));
    }

    @Test
    void a_range_and_several_choices_are_said_in_words() {
        shown(WIDE);

        assertThat(((JTextField) Panels.find(bar, "filter.sizes")).getText()).isEqualTo("12.5–40");
        assertThat(text("filter.taper")).isEqualTo(".02–.06");
        assertThat(text("filter.length")).isEqualTo("21–28 mm");
        assertThat(text("filter.motion")).isEqualTo("filing or rotation");
        assertThat(text("filter.motor")).isEqualTo("a motor no longer there");
    }

    @Test
    void another_filter_shown_takes_nothing_over() {
        shown(WIDE);

        assertThat(shown(InstrumentFilter.ALL)).isEqualTo(InstrumentFilter.ALL);
    }

    private InstrumentFilter shown(InstrumentFilter filter) {
        return Shots.onEventThread(() -> {
            bar.show(filter);
            return bar.filter(filter.words());
        });
    }

    private JComboBox<?> choice(String name) {
        return (JComboBox<?>) Panels.find(bar, name);
    }

    @SuppressWarnings("unchecked")
    private String text(String name) {
        return Shots.onEventThread(() -> {
            JComboBox<Object> field = (JComboBox<Object>) choice(name);
            return ((javax.swing.JLabel) field.getRenderer()
                            .getListCellRendererComponent(
                                    new javax.swing.JList<>(), field.getSelectedItem(), -1, false, false))
                    .getText();
        });
    }
}
