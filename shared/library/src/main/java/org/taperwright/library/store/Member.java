package org.taperwright.library.store;

/**
 * A user whom a server knows, and what it may do with the library there.
 *
 * @param user the name
 * @param rights what it may do
 */
public record Member(String user, Rights rights) {
    /** What a user may do, from the most to nothing. */
    public enum Rights {
        /** Do everything, and give rights to others. */
        OWNER("owner"),
        /** Look and edit. */
        EDITOR("editor"),
        /** Look at everything. */
        READER("reader"),
        /** Not even look. */
        NONE("none");

        private final String word;

        Rights(String word) {
            this.word = word;
        }

        /** The word for people. */
        public String word() {
            return word;
        }
    }
}
