package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.history.Change;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.FitAccount;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Gestures;
import org.taperwright.workbench.ui.Shots;

/** A library's own alloy in the Design window and in its own. */
class OwnAlloyTest {
    private static final ThingId WIRE = new ThingId("tern-wire");

    private BareDesk desk;

    @BeforeEach
    void open() {
        Shots.theme(true);
        Map<ThingId, Record> things = new HashMap<>(SampleDesigns.library());
        things.put(WIRE, alloy());
        desk = new BareDesk(things);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void a_design_can_be_made_of_an_alloy_of_the_library() throws InterruptedException {
        DesignPanel panel = Shots.onEventThread(() -> {
            desk.select(SampleDesigns.ROTARY);
            return new DesignPanel(desk);
        });
        desk.settle();
        JComboBox<?> choice = Gestures.named(panel, "design.alloy", JComboBox.class);
        assertThat(choice.getItemAt(choice.getItemCount() - 1))
                .isInstanceOfSatisfying(
                        Alloy.class, last -> assertThat(last.label()).isEqualTo("Tern wire"));
        Shots.onEventThread(() -> {
            choice.setSelectedIndex(choice.getItemCount() - 1);
            return panel;
        });
        desk.settle();

        assertThat(design().alloy()).isEqualTo("tern-wire");
        assertThat(desk.nextUndo()).contains("Alloy to Tern wire");
        assertThat(Gestures.all(panel).stream()
                        .filter(JTextComponent.class::isInstance)
                        .map(part -> ((JTextComponent) part).getText()))
                .noneMatch(words -> words.contains("no alloy is called"));
    }

    @Test
    void the_alloy_window_tells_all_that_is_known_of_it_and_renames_it() throws InterruptedException {
        Shots.onEventThread(() -> {
            Design own = Designs.with(design()).alloy(WIRE.value()).design();
            desk.edit("Own alloy", List.of(new Change.Put(SampleDesigns.ROTARY, own)));
            return own;
        });
        AlloyPanel panel = Shots.onEventThread(() -> new AlloyPanel(desk));
        desk.settle();
        assertThat(text(panel, "alloy.constants"))
                .contains("Of the kind of Superelastic NiTi", "Young's modulus: 47000 (45000 to 49000) MPa");
        assertThat(text(panel, "alloy.fit"))
                .contains(
                        "Fitted on 2027-03-31 to measurements of Tern 25/.04",
                        "Young's modulus: from 42500 to 47000 ± 1200",
                        "Correlation of Young's modulus and Yield or plateau stress: -0.5",
                        "bench.csv: 14 points used, 2 not");
        assertThat(text(panel, "alloy.source")).startsWith("Young's modulus: fitted.");
        assertThat(text(panel, "alloy.use")).isEqualTo(design().name());
        Shots.take("alloy-dark", panel, 900, 640, 1);
        Shots.theme(false);
        AlloyPanel light = Shots.onEventThread(() -> new AlloyPanel(desk));
        Shots.take("alloy-light", light, 900, 640, 1);

        Shots.onEventThread(() -> {
            JTextField name = Gestures.named(light, "alloy.name", JTextField.class);
            name.setText("Tern wire, lot 2");
            name.postActionEvent();
            return name;
        });
        assertThat(desk.snapshot().thing(WIRE, OwnAlloy.class).orElseThrow().name())
                .isEqualTo("Tern wire, lot 2");
        assertThat(desk.nextUndo()).contains("Rename alloy to Tern wire, lot 2");
    }

    private Design design() {
        return desk.snapshot().thing(SampleDesigns.ROTARY, Design.class).orElseThrow();
    }

    private static String text(AlloyPanel panel, String name) {
        return Gestures.named(panel, name, JTextComponent.class).getText();
    }

    private static OwnAlloy alloy() {
        Alloy like = Alloys.find("niti-superelastic").orElseThrow();
        Map<String, Reading> constants = new TreeMap<>(like.constants());
        constants.put("youngMpa", new Reading(47_000, Optional.of(new Band(45_000, 49_000))));
        constants.put("yieldMpa", new Reading(like.yieldMpa(), Optional.of(like.yieldBand())));
        FitAccount fit = new FitAccount(
                "Tern 25/.04",
                LocalDate.of(2027, 3, 31),
                List.of(
                        new FitAccount.Constant("youngMpa", 42_500, 47_000, 1_200, false),
                        new FitAccount.Constant("yieldMpa", 492, 500, 10, false)),
                List.of(List.of(1_440_000.0, -6_000.0), List.of(-6_000.0, 100.0)),
                List.of(new FitAccount.Residual("bench.csv", 14, 2, 0.012)),
                OptionalDouble.of(0.012),
                OptionalDouble.empty());
        return new OwnAlloy(
                "Tern wire",
                like.id(),
                like.poisson(),
                like.ultimateMpa(),
                constants,
                Optional.of(fit),
                "Young's modulus: fitted. Invented.",
                like.validity(),
                "");
    }
}
