package org.taperwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandTest {
    @Test
    void helpIsShownOnDemand() {
        Ran ran = Ran.with("--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("assess", "compare", "shape", "do not replace the manufacturer's instructions");
    }

    @ParameterizedTest
    @ValueSource(strings = {"assess", "compare", "shape"})
    void everyVerbHasItsHelp(String verb) {
        Ran ran = Ran.with(verb, "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("taperwright " + verb, "--demo", "--from", "--json");
    }

    @Test
    void withoutAVerbTheHelpIsShownAndTheCodeIsThatOfBadInput() {
        Ran ran = Ran.with();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("Verbs:");
    }

    @Test
    void theVersionIsShownOnDemand() {
        Ran ran = Ran.with("--version");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("taperwright ");
    }

    @Test
    void anUnknownVerbOrOptionIsBadInput() {
        assertThat(Ran.with("sharpen").code()).isEqualTo(2);
        assertThat(Ran.with("sharpen").err())
                .contains("there is no verb \"sharpen\"; expected one of assess, compare, shape, library", "--help");
        assertThat(Ran.with("library", "chek", "l.db").err())
                .contains("there is no verb \"chek\"; expected one of import, export, check");
        assertThat(Ran.with("library", "check", "l.db", "k.db").err()).contains("\"k.db\" is one word too many");
        assertThat(Ran.with("assess", "--loud", "x.json").code()).isEqualTo(2);
        assertThat(Ran.with("assess").err()).contains("DESIGN");
    }

    @Test
    void whatIsWrittenFailingEndsWithItsOwnCode() {
        PrintWriter broken = new PrintWriter(new StringWriter()) {
            @Override
            public void print(String text) {
                throw new IllegalStateException("no more room");
            }
        };
        StringWriter err = new StringWriter();
        int code = Main.run(new String[] {"shape", "--demo", "rotary-moderate"}, broken, new PrintWriter(err));
        assertThat(code).isEqualTo(1);
        assertThat(err.toString()).contains("taperwright failed", "no more room");
    }
}
