package org.taperwright.shaping.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;

/**
 * Which pieces of a kit a sequence takes, and what it spends of their fatigue life. One piece makes all steps of its entry. Unless one
 * is chosen, that piece in use is taken of which least is spent, and among those alike the one with the fewest uses: of the very entry
 * where there is one, else one alike.
 */
public final class CarriedLives {
    private CarriedLives() {}

    /**
     * A sequence with the pieces of a kit.
     *
     * @param catalogue the entries of the kit's pieces and of the steps
     * @param chosen identifiers of pieces by the entry that a step names, where one is chosen; one that is not in use is passed over
     * @param spent share of life that each step spends, by its place from 0, as of {@link UseEstimates}
     * @param limit share of life at which a piece is discarded
     */
    public static CarriedLife of(
            Kit kit,
            ArrangedSequence arranged,
            Map<ThingId, Instrument> catalogue,
            Map<ThingId, String> chosen,
            Map<Integer, LifeSpent> spent,
            double limit) {
        Map<ThingId, List<Integer>> places = new LinkedHashMap<>();
        for (int i = 0; i < arranged.instruments().size(); i++) {
            int place = i;
            arranged.step(i)
                    .uses()
                    .ifPresent(id ->
                            places.computeIfAbsent(id, any -> new ArrayList<>()).add(place));
        }
        List<Coverage.Step> found = Coverages.of(kit, catalogue, Map.of(new ThingId("sequence"), arranged.sequence()))
                .get(0)
                .steps();
        Map<Integer, List<String>> fitting = new LinkedHashMap<>();
        found.forEach(step -> fitting.put(step.place() - 1, step.pieces()));
        List<CarriedPiece> pieces = new ArrayList<>();
        List<Integer> without = new ArrayList<>();
        places.forEach((id, at) -> piece(
                        kit, fitting.getOrDefault(at.get(0), List.of()), Optional.ofNullable(chosen.get(id)))
                .ifPresentOrElse(
                        piece -> pieces.add(new CarriedPiece(
                                piece,
                                at,
                                at.stream()
                                        .map(place -> Optional.ofNullable(spent.get(place)))
                                        .toList(),
                                limit)),
                        () -> without.addAll(at)));
        return new CarriedLife(pieces, without);
    }

    private static Optional<Piece> piece(Kit kit, List<String> fitting, Optional<String> chosen) {
        return chosen.flatMap(kit::piece)
                .filter(piece -> piece.discarded().isEmpty())
                .or(() -> fitting.stream()
                        .flatMap(id -> kit.piece(id).stream())
                        .min(Comparator.comparingDouble(CarriedLives::spent).thenComparingInt(Piece::uses)));
    }

    private static double spent(Piece piece) {
        return piece.lifeSpent().map(LifeSpent::central).orElse(0.0);
    }
}
