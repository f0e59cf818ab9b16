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

    static JsonSchema of(String form) {
        InputStream in = Schemas.class.getResourceAsStream("schema/" + form + ".1.schema.json");
        assertThat(in).as(form).isNotNull();
        return JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(in, SchemaValidatorsConfig.builder().build());
    }
}
