package org.taperwright.library.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedSchemaTest {
    @TestFactory
    List<DynamicTest> eachSchemaIsOneByTheStandard() {
        JsonSchema dialect = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(
                        SchemaLocation.of(SchemaId.V202012),
                        SchemaValidatorsConfig.builder().build());
        return PublishedSchema.all().entrySet().stream()
                .map(schema -> DynamicTest.dynamicTest(
                        schema.getKey(),
                        () -> assertThat(dialect.validate(schema.getValue(), InputFormat.JSON))
                                .isEmpty()))
                .toList();
    }

    @TestFactory
    List<DynamicTest> eachGoldenFileFollowsItsSchema() {
        return List.of(
                        "design",
                        "alloy",
                        "instrument",
                        "motor",
                        "canal",
                        "sequence",
                        "kit",
                        "comparison",
                        "filter",
                        "library")
                .stream()
                .map(form -> DynamicTest.dynamicTest(
                        form,
                        () -> assertThat(Schemas.of(form).validate(golden(form), InputFormat.JSON))
                                .isEmpty()))
                .toList();
    }

    /** What the reader refuses for its shape, the schema refuses too. */
    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "design | \"tipDiameterMm\": 0.25 | \"tipDiameterMm\": \"0.25\"",
                "design | \"tipDiameterMm\": 0.25 | \"tipDiameterMm\": 25",
                "design | \"tipDiameterMm\": 0.25, | ``",
                "design | \"lengthMm\" | \"length\"",
                "design | \"clockwise\" | \"sunwise\"",
                "design | \"fromMm\": 4 | \"fromMm\": null",
                "alloy | \"kin\": \"niti-superelastic\" | \"kin\": 3",
                "alloy | \"poisson\": 0.33 | \"poisson\": 0.5",
                "alloy | \"day\": \"2027-03-31\" | \"day\": \"31.3.2027\"",
                "alloy | \"covariance\" | \"covariances\"",
                "design | \"version\": 1 | \"version\": 2",
                "design | taperwright/design | taperwright/motor",
                "design | \"id\": \"example-design\" | \"id\": \"an example\"",
                "design | \"coreDiameter\": 0.45 | \"coreDiameter\": true",
                "instrument | \"drive\": \"powered\" | \"drive\": \"steam\"",
                "instrument | \"usesAllowed\": 4 | \"usesAllowed\": 4.5",
                "motor | \"least\": 100, | ``",
                "canal | \"workingLengthMm\": 18.5 | \"workingLengthMm\": -18.5",
                "sequence | \"strokes\": 3 | \"strokes\": \"three\"",
                "sequence | \"kind\": \"patency\" | \"kind\": \"patent\"",
                "sequence | \"kind\": \"patency\", | ``",
                "sequence | \"beyondMm\" | \"strokes\"",
                "sequence | \"30G\" | \"30\"",
                "sequence | \"version\": 2 | \"version\": 1",
                "instrument | \"currency\": \"EUR\" | \"currency\": \"euro\"",
                "instrument | \"expiry\": \"2028-02-29\" | \"expiry\": \"February 2028\"",
                "instrument | \"stock\": 18 | \"stock\": -1",
                "instrument | \"picture\": \"iVBO | \"picture\": \"<svg>",
                "instrument | \"version\": 2 | \"version\": 1",
                "kit | \"broken flute\" | \"lost\"",
                "kit | \"canals\": 2 | \"canals\": -2",
                "kit | \"central\": 0.05, | ``",
                "comparison | \"datum\": \"example-design\" | \"datum\": 1",
                "comparison | \"weight\": 1.5 | \"weight\": -1.5",
                "comparison | \"hidden\" | \"hiden\"",
                "comparison | \"test\": \"bending\" | \"test\": \"bends\"",
                "comparison | \"radiusMm\": 5 | \"radiusMm\": -5",
                "comparison | \"version\": 3 | \"version\": 2",
                "filter | \"inStock\": true | \"inStock\": \"yes\"",
                "filter | \"least\": 15, | ``",
                "library | \"workingLengthMm\": 18.5 | \"workingLengthMm\": -18.5",
                "library | \"things\" | \"thing\"",
            })
    void aSpoiltFormIsRefusedByTheReaderAndByTheSchema(String form, String part, String by) throws IOException {
        assertThat(golden(form)).contains(part);
        String spoilt = golden(form).replace(part, by);
        assertThat(Schemas.of(form).validate(spoilt, InputFormat.JSON)).isNotEmpty();
        assertThat(JsonForms.read(spoilt, form)).isInstanceOf(ReadResult.Refused.class);
    }

    @Test
    void theFirstComparisonFormFollowsItsSchema() throws IOException {
        assertThat(Schemas.of("comparison", 1).validate(golden("comparison.1"), InputFormat.JSON))
                .isEmpty();
        assertThat(Schemas.of("comparison", 1).validate(golden("comparison"), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void theFirstSequenceFormFollowsItsSchema() throws IOException {
        assertThat(Schemas.of("sequence", 1).validate(golden("sequence.1"), InputFormat.JSON))
                .isEmpty();
        assertThat(Schemas.of("sequence", 1).validate(golden("sequence"), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void theFirstInstrumentFormFollowsItsSchema() throws IOException {
        assertThat(Schemas.of("instrument", 1).validate(golden("instrument.1"), InputFormat.JSON))
                .isEmpty();
        assertThat(Schemas.of("instrument", 1).validate(golden("instrument"), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void anEditorsHintMayStandInAForm() throws IOException {
        String hinted = golden("design").replaceFirst("\\{", "{ \"\\$schema\": \"design.1.schema.json\",");
        assertThat(Schemas.of("design").validate(hinted, InputFormat.JSON)).isEmpty();
        assertThat(JsonForms.read(hinted, "f")).isInstanceOf(ReadResult.Read.class);
    }

    private static String golden(String form) throws IOException {
        return Files.readString(PublishedFiles.GOLDEN.resolve(form + ".json"));
    }
}
