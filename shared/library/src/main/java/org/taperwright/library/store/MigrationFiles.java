package org.taperwright.library.store;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.resource.LoadableResource;

/**
 * The migrations by name instead of by searching the class path, which is slow and fails where a class loader does not
 * list what its jars hold.
 */
final class MigrationFiles implements ResourceProvider {
    private final ClassLoader loader;
    private final String folder;
    private final List<String> files;

    MigrationFiles(ClassLoader loader, String folder, List<String> files) {
        this.loader = loader;
        this.folder = folder;
        this.files = files;
    }

    @Override
    @SuppressWarnings("NullAway")
    public LoadableResource getResource(String name) {
        return files.stream()
                .filter(name::endsWith)
                .findFirst()
                .<LoadableResource>map(File::new)
                .orElse(null);
    }

    @Override
    public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
        return files.stream()
                .map(File::new)
                .filter(file -> file.getFilename().startsWith(prefix))
                .filter(file -> Arrays.stream(suffixes).anyMatch(file.getFilename()::endsWith))
                .<LoadableResource>map(file -> file)
                .toList();
    }

    private final class File extends LoadableResource {
        private final String path;

        private File(String path) {
            this.path = path;
        }

        @Override
        public Reader read() {
            InputStream in = Objects.requireNonNull(loader.getResourceAsStream(folder + path), path);
            return new InputStreamReader(in, StandardCharsets.UTF_8);
        }

        @Override
        public String getAbsolutePath() {
            return folder + path;
        }

        @Override
        public String getAbsolutePathOnDisk() {
            return folder + path;
        }

        @Override
        public String getFilename() {
            return path.substring(path.lastIndexOf('/') + 1);
        }

        @Override
        public String getRelativePath() {
            return path;
        }
    }
}
