package org.taperwright.designer.ui;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.Making;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.Tip;
import org.taperwright.mechanics.design.TipKind;
import org.taperwright.mechanics.section.Hand;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;

/** Turning sense, tip, alloy, making and motion. */
final class MakingPart {
    private static final QuantityKind ANGLE = QuantityKind.degrees(10, 170, 5);

    private final OpenDesign open;
    private final ChoiceField<Hand> hand;
    private final ChoiceField<TipKind> tipKind;
    private final QuantityField tipAngle = new QuantityField("design.tipAngle", "Tip angle", ANGLE);
    private final ChoiceField<Alloy> alloy;
    private final ChoiceField<Making> making;
    private final ChoiceField<Motion> motion;

    MakingPart(FormPane form, OpenDesign open) {
        this.open = open;
        hand = choice(
                "design.hand",
                "Turning sense",
                List.of(Hand.values()),
                Hand::word,
                (design, chosen) -> Designs.with(design).hand(chosen).design());
        tipKind = choice(
                "design.tipKind",
                "Tip",
                List.of(TipKind.values()),
                TipKind::word,
                (design, kind) -> Designs.with(design)
                        .tip(new Tip(kind, design.tip().angleDeg()))
                        .design());
        alloy = choice(
                "design.alloy",
                "Alloy",
                KnownAlloys.SHIPPED.all(),
                Alloy::label,
                (design, chosen) -> Designs.with(design).alloy(chosen.id()).design());
        making = choice(
                "design.making",
                "Making",
                List.of(Making.values()),
                Making::word,
                (design, chosen) -> Designs.with(design).making(chosen).design());
        motion = choice(
                "design.motion",
                "Motion",
                List.of(Motion.values()),
                Motion::word,
                (design, chosen) -> Designs.with(design).motion(chosen).design());
        tipAngle.onPreview(degrees -> open.tryOut(design -> angled(design, degrees)));
        tipAngle.onCommit(
                degrees -> open.edit("Tip angle to " + ANGLE.write(degrees), design -> angled(design, degrees)));
        form.heading("Tip, alloy and use")
                .row("Tip", tipKind, "Whether the tip itself cuts")
                .row("Tip angle", tipAngle, "Included angle of the tip's cone; about 75\u00b0 by ISO 3630-1")
                .row("Alloy", alloy, "The alloy it is made of")
                .row("Making", making, "Whether the flutes are ground or the blank is twisted")
                .row("Motion", motion, "The motion it is meant for")
                .row("Turning sense", hand, "The sense in which the edges lead, seen from the handle");
        open.onShown(shown -> shown.shown().ifPresent(this::show));
    }

    private <T> ChoiceField<T> choice(
            String name,
            String what,
            List<T> choices,
            Function<T, String> words,
            BiFunction<Design, T, Design> change) {
        return new ChoiceField<>(name, what, choices, words)
                .onCommit(chosen ->
                        open.edit(what + " to " + words.apply(chosen), design -> change.apply(design, chosen)));
    }

    private static Design angled(Design design, double degrees) {
        return Designs.with(design).tip(new Tip(design.tip().kind(), degrees)).design();
    }

    private void show(Design design) {
        hand.setValue(design.hand());
        tipKind.setValue(design.tip().kind());
        tipAngle.setValue(design.tip().angleDeg());
        KnownAlloys known = open.alloys();
        alloy.setChoices(known.all());
        known.find(design.alloy()).ifPresent(alloy::setValue);
        making.setValue(design.making());
        motion.setValue(design.motion());
    }
}
