package org.taperwright.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One copy of each jar, or else one record becomes two classes that cannot be cast to each other. */
class CarriedJarsTest {
    @Test
    void noJarStandsTwiceInTheWorkbench() throws IOException {
        List<String> names = BuiltJars.carried().stream()
                .map(jar -> jar.getFileName().toString())
                .toList();
        assertThat(names).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void noLibraryStandsInTwoVersions() throws IOException {
        List<String> libraries = BuiltJars.carried().stream()
                .map(jar -> jar.getFileName().toString().replaceFirst("-[0-9].*", ""))
                .toList();
        assertThat(libraries).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void onlyTheEngineCarriesJars() throws IOException {
        List<String> carriers = BuiltJars.carried().stream()
                .map(jar -> jar.getParent().getParent().getFileName().toString())
                .distinct()
                .toList();
        assertThat(carriers).containsExactly("org.taperwright.engine");
    }
}
