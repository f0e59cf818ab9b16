package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.taperwright.mechanics.design.ThingId;

/**
 * One piece of a kit.
 *
 * @param id what tells it from the kit's other pieces: letters, digits, dots and hyphens, at most 80
 * @param instrument its catalogue entry
 * @param designation a copy of the entry's name, kept so that the piece can be known without the entry
 * @param lot its lot
 * @param expiry last day on which it may be used
 * @param usesBefore uses before the log began
 * @param sterilisations how many times it was sterilised
 * @param lifeSpentBefore share of its fatigue life spent before the log began, where known
 * @param damage what was seen on it, worst or not; empty when nothing was
 * @param discarded when and why it was discarded; absent while it is in use
 * @param log its uses in order
 * @param note free text
 */
public record Piece(
        String id,
        ThingId instrument,
        String designation,
        String lot,
        Optional<LocalDate> expiry,
        int usesBefore,
        int sterilisations,
        Optional<LifeSpent> lifeSpentBefore,
        List<Damage> damage,
        Optional<Discarding> discarded,
        List<Use> log,
        String note) {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,79}");

    public Piece {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("has an identifier that is none: \"" + id + "\"");
        }
        if (usesBefore < 0 || sterilisations < 0) {
            throw new IllegalArgumentException("has fewer than no uses or sterilisations");
        }
        damage = damage.stream().distinct().sorted().toList();
        log = List.copyOf(log);
    }

    /** Uses in all: those before the log began and those in it. */
    public int uses() {
        return usesBefore + log.size();
    }

    /** Canals shaped in the logged uses. */
    public int canals() {
        return log.stream().mapToInt(Use::canals).sum();
    }

    /** Share of the fatigue life spent, as far as it was estimated; absent when no use was. */
    public Optional<LifeSpent> lifeSpent() {
        return Stream.concat(lifeSpentBefore.stream(), log.stream().flatMap(use -> use.lifeSpent().stream()))
                .reduce(LifeSpent::plus);
    }

    /** Uses that no estimate of the life spent covers. */
    public int usesWithoutEstimate() {
        long logged = log.stream().filter(use -> use.lifeSpent().isEmpty()).count();
        return (int) logged + (lifeSpentBefore.isPresent() ? 0 : usesBefore);
    }

    /** A draft that begins as this piece. */
    public PieceDraft draft() {
        return new PieceDraft(this);
    }
}
