package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LibraryTest {
    @Test
    void libraryWithoutAVerbIsBadInput() {
        Ran ran = Ran.with("library");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("a verb is missing", "taperwright library --help");
    }

    @Test
    void libraryHasItsHelp() {
        Ran ran = Ran.with("library", "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("taperwright library");
    }
}
