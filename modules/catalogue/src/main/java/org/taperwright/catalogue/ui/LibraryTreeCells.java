package org.taperwright.catalogue.ui;

import java.awt.Component;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTree;
import javax.swing.UIManager;
import javax.swing.tree.TreeCellRenderer;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Spacing;

/** Draws a heading with how many things stand beneath it, or a thing with its annotation. */
final class LibraryTreeCells extends JPanel implements TreeCellRenderer {
    private final JLabel name = new JLabel();
    private final JLabel annotation = new JLabel();

    LibraryTreeCells() {
        setLayout(new BoxLayout(this, BoxLayout.LINE_AXIS));
        setOpaque(false);
        setBorder(Spacing.around(2, 0));
        add(name);
        add(Box.createHorizontalStrut(Spacing.NEAR));
        add(annotation);
    }

    @Override
    public Component getTreeCellRendererComponent(
            JTree tree, Object node, boolean selected, boolean expanded, boolean leaf, int row, boolean focused) {
        LibraryTreeModel model = (LibraryTreeModel) tree.getModel();
        boolean heading = node instanceof LibraryTreeModel.Heading;
        name.setFont(heading ? Ink.headingFont() : tree.getFont());
        annotation.setFont(Ink.smallFont());
        if (node instanceof LibraryTreeModel.Heading found) {
            name.setText(found.kind().heading());
            annotation.setText(Integer.toString(model.count(found)));
        } else if (node instanceof LibraryTreeModel.Thing thing) {
            name.setText(model.entry(thing).map(entry -> entry.name()).orElse(""));
            annotation.setText(model.entry(thing).map(Annotation::of).orElse(""));
        }
        boolean highlighted = selected && tree.hasFocus();
        name.setForeground(
                selected
                        ? UIManager.getColor(
                                highlighted ? "Tree.selectionForeground" : "Tree.selectionInactiveForeground")
                        : tree.getForeground());
        annotation.setForeground(selected ? name.getForeground() : Ink.quiet());
        getAccessibleContext().setAccessibleName((name.getText() + " " + annotation.getText()).strip());
        return this;
    }
}
