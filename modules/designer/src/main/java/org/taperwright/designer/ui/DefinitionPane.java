package org.taperwright.designer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Spacing;

/** The whole definition of a design, from its name to its motion, in one form. */
final class DefinitionPane extends JPanel {
    private static final int NARROWEST = 384;

    DefinitionPane(OpenDesign open, ViewedLevel level) {
        super(new BorderLayout());
        setName("design.definition");
        FormPane form = new FormPane("design.form");
        form.setBorder(BorderFactory.createEmptyBorder(Spacing.NEAR, Spacing.APART, Spacing.NEAR, Spacing.NEAR));
        new IdentityPart(form, open);
        new SizePart(form, open);
        new TaperPart(form, open);
        new FlutePart(form, open);
        new SectionPart(form, open, level);
        new MakingPart(form, open);
        JScrollPane scroll = new JScrollPane(form);
        scroll.setName("design.definition.scroll");
        scroll.setBorder(null);
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
        setMinimumSize(new Dimension(NARROWEST, 200));
    }
}
