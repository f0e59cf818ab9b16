package org.taperwright.sequencer.ui.outcome;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JSplitPane;

/** A divider that stands at a share of the room until a person moves it. */
public final class ShareSplit extends JSplitPane {
    private final double share;

    /**
     * Makes a divider.
     *
     * @param name what tests and other code find it by
     * @param orientation as of {@link JSplitPane}
     * @param share of the room that the first part has
     */
    public ShareSplit(String name, int orientation, Component first, Component second, double share) {
        super(orientation, first, second);
        this.share = share;
        setName(name);
        setResizeWeight(share);
        setBorder(BorderFactory.createEmptyBorder());
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean first = (getWidth() == 0 || getHeight() == 0) && width > 0 && height > 0;
        super.setBounds(x, y, width, height);
        if (first) {
            setDividerLocation((int) Math.round((getOrientation() == VERTICAL_SPLIT ? height : width) * share));
        }
    }
}
