package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import java.util.EnumMap;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

class RoundTripProperties {
    private final Map<ThingKind, JsonSchema> schemas = new EnumMap<>(ThingKind.class);

    RoundTripProperties() {
        for (ThingKind kind : ThingKind.values()) {
            schemas.put(kind, Schemas.of(kind.word()));
        }
    }

    @Provide
    Arbitrary<Record> things() {
        return ArbitraryThings.any();
    }

    @Provide
    Arbitrary<ThingId> ids() {
        return ArbitraryThings.id();
    }

    @Property(tries = 300)
    void whatIsWrittenReadsAsTheSameThing(@ForAll("ids") ThingId id, @ForAll("things") Record thing) {
        String text = JsonForms.write(id, thing);
        assertThat(JsonForms.read(text, "f"))
                .as(text)
                .isInstanceOfSatisfying(
                        ReadResult.Read.class,
                        read -> assertThat(read.bundle().items()).containsExactly(new LibraryBundle.Item(id, thing)));
        assertThat(JsonForms.faults(id, thing)).isEmpty();
    }

    /** Checked with a general-purpose validator that knows nothing of the forms. */
    @Property(tries = 300)
    void whatIsWrittenFollowsThePublishedSchema(@ForAll("ids") ThingId id, @ForAll("things") Record thing) {
        String text = JsonForms.write(id, thing);
        assertThat(schemas.get(ThingKind.of(thing)).validate(text, InputFormat.JSON))
                .as(text)
                .isEmpty();
    }

    /** Read with a general-purpose JSON reader: the text is JSON, whatever the fields hold. */
    @Property(tries = 300)
    void whatIsWrittenIsJson(@ForAll("ids") ThingId id, @ForAll("things") Record thing) throws Exception {
        assertThat(new ObjectMapper()
                        .readTree(JsonForms.write(id, thing))
                        .get("id")
                        .asText())
                .isEqualTo(id.value());
    }
}
