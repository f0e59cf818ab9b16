package org.taperwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.library.exchange.DemoLibrary;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.ReadResult;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.design.Design;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

class DemoFilesTest {
    @Test
    void theWholeLibraryReadsWithoutFaultOrRemark() {
        assertThat(DemoLibrary.load())
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.remarks()).isEmpty());
    }

    @Test
    void everyKindOfThingIsThere() {
        DemoThings things = DemoThings.read();
        assertThat(things.all(Design.class)).hasSize(21);
        assertThat(things.all(Instrument.class)).hasSize(84 + 31);
        assertThat(things.all(Motor.class)).hasSize(3);
        assertThat(things.all(Canal.class)).hasSize(4);
        assertThat(things.all(Sequence.class)).hasSize(2);
        assertThat(things.all(Kit.class)).hasSize(2);
        assertThat(things.all(SavedComparison.class)).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "comparisons",
                "designs",
                "instruments",
                "standard-series",
                "motors",
                "canals",
                "sequences",
                "kits"
            })
    void everyFileStandsAsTheProgramWouldWriteIt(String name) throws IOException {
        String text = resource(name + ".json");
        ReadResult result = JsonForms.read(text, name);
        assertThat(result).isInstanceOf(ReadResult.Read.class);
        assertThat(JsonForms.write(((ReadResult.Read) result).bundle())).isEqualTo(text);
    }

    @Test
    void namesOfDesignsAreTheirOwn() {
        List<String> names =
                DemoThings.read().all(Design.class).stream().map(Design::name).toList();
        assertThat(names).doesNotHaveDuplicates();
    }

    private static String resource(String name) throws IOException {
        try (var in = DemoFilesTest.class.getResourceAsStream("/org/taperwright/demo/" + name)) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
