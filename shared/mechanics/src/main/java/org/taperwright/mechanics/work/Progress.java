package org.taperwright.mechanics.work;

/** Where a long computation reports how far it is and learns that it should stop. */
public interface Progress {
    /** Ignores reports and never cancels. */
    Progress NONE = new Progress() {
        @Override
        public void at(double fraction, String what) {
            // nobody listens
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** Reports the fraction done (0 to 1) and what is being done. */
    void at(double fraction, String what);

    /** Whether the result is no longer wanted. */
    boolean cancelled();

    /** Stops the computation by {@link WorkCancelled} when its result is no longer wanted. */
    default void check() {
        if (cancelled()) {
            throw new WorkCancelled();
        }
    }
}
