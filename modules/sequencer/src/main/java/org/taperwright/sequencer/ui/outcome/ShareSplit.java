package org.taperwright.sequencer.ui.outcome;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JSplitPane;

/** A divider that stands at a share of the room until a person moves it. */
public final class ShareSplit extends JSplitPane {
    /** With less room it is not yet laid out as a person will see it, px. */
    private static final int LEAST_ROOM = 100;

    private final double share;
    private boolean placed;

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
    public void doLayout() {
        int room = getOrientation() == VERTICAL_SPLIT ? getHeight() : getWidth();
        if (!placed && room > LEAST_ROOM) {
            placed = true;
            setDividerLocation((int) Math.round(room * share));
        }
        super.doLayout();
    }
}
