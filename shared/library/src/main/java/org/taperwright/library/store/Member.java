package org.taperwright.library.store;

/**
 * A user of the server that a shared library lies on, and what that user may do with the library.
 *
 * @param user the user's name on the server
 * @param right the most that the user may do, by rights of their own or of a group
 */
public record Member(String user, Right right) {
    /** What a user may do with a library, the most first. */
    public enum Right {
        /** Everything, and give rights. */
        OWNER("owner"),
        /** Look and edit. */
        EDITOR("may edit"),
        /** Look at everything. */
        READER("may look"),
        /** Not even open it. */
        NONE("nothing");

        private final String words;

        Right(String words) {
            this.words = words;
        }

        /** The words for people. */
        public String words() {
            return words;
        }
    }
}
