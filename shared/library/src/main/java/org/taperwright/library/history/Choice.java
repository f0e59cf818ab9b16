package org.taperwright.library.history;

/** Whose version of a thing stands when two programs changed it. */
public enum Choice {
    /** The version of this program, as a new revision after theirs. */
    MINE,
    /** The version already stored; this program's edits of the thing are dropped. */
    THEIRS
}
