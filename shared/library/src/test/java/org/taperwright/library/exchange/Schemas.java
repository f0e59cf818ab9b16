package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.InputStream;

/** The published schemas in a general-purpose validator, found as users of the library find them. */
final class Schemas {
    private Schemas() {}

    /** The schema of the version written. */
    static JsonSchema of(String form) {
        int version =
                ThingForm.named(ThingForm.PREFIX + form).map(ThingForm::version).orElse(FormReader.BUNDLE_VERSION);
        return of(form, version);
    }

    static JsonSchema of(String form, int version) {
        InputStream in = Schemas.class.getResourceAsStream("schema/" + form + '.' + version + ".schema.json");
        assertThat(in).as(form).isNotNull();
        return JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(in, SchemaValidatorsConfig.builder().build());
    }
}
