package org.taperwright.mechanics.alloy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The alloys that a design can name: those that come with the program, and after them a library's own. An own one never takes
 * the place of one that comes with the program.
 *
 * @param own the library's, each under its identifier
 */
public record KnownAlloys(List<Alloy> own) {
    /** Those that come with the program alone. */
    public static final KnownAlloys SHIPPED = new KnownAlloys(List.of());

    public KnownAlloys {
        own = List.copyOf(own);
    }

    /** All of them, those that come with the program first. */
    public List<Alloy> all() {
        return Stream.concat(
                        Alloys.all().stream(),
                        own.stream().filter(alloy -> Alloys.find(alloy.id()).isEmpty()))
                .toList();
    }

    /** The alloy with an identifier. */
    public Optional<Alloy> find(String id) {
        return all().stream().filter(alloy -> alloy.id().equals(id)).findFirst();
    }

    /** What people call the alloy with an identifier; the identifier where there is none. */
    public String label(String id) {
        return find(id).map(Alloy::label).orElse(id);
    }

    /** Their identifiers, for a fault's sentence. */
    public String ids() {
        return all().stream().map(Alloy::id).collect(Collectors.joining(", "));
    }
}
