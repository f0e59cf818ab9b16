package org.taperwright.catalogue.ui;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;

/** Opens the menu of columns where the headings are right-clicked. */
final class HeadingMenu extends MouseAdapter {
    private final ChosenColumns columns;

    HeadingMenu(ChosenColumns columns) {
        this.columns = columns;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        open(event);
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        open(event);
    }

    private void open(MouseEvent event) {
        if (event.isPopupTrigger()) {
            columns.menu().show(event.getComponent(), event.getX(), event.getY());
        }
    }
}
