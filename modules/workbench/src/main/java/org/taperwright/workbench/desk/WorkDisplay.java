package org.taperwright.workbench.desk;

/** Where people see that something is being worked out, how far it is, and can stop it. */
@FunctionalInterface
public interface WorkDisplay {
    /** Begins to show a piece of work; may be called from any thread. */
    Line begin(String label, Runnable stop);

    /** What shows one piece of work. */
    interface Line {
        /** Shows how far it is: a fraction from 0 to 1, and what is being done. */
        void at(double fraction, String what);

        /** Takes the line away. */
        void end();
    }

    /** Shows nothing. */
    WorkDisplay NONE = (label, stop) -> new Line() {
        @Override
        public void at(double fraction, String what) {
            // nobody looks
        }

        @Override
        public void end() {
            // nothing was shown
        }
    };
}
