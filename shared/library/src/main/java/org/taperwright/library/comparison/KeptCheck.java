package org.taperwright.library.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.taperwright.mechanics.comparison.ModelVersion;
import org.taperwright.mechanics.quantity.Shown;

/**
 * Kept results beside those of now.
 *
 * @param model version of the model that computed the kept ones
 * @param compared how many numbers stand in both
 * @param changes those that differ, the furthest first
 */
public record KeptCheck(String model, int compared, List<ResultChange> changes) {
    public KeptCheck {
        changes = changes.stream()
                .sorted(Comparator.comparingDouble(change -> -change.share()))
                .toList();
    }

    /** One or two sentences for people. */
    public String words() {
        String kept = "Kept with model " + model
                + (model.equals(ModelVersion.CURRENT)
                        ? ", the present one. "
                        : "; the present one is " + ModelVersion.CURRENT + ". ");
        if (changes.isEmpty()) {
            return kept + "All " + compared + " numbers are what they were.";
        }
        long edited = changes.stream().filter(ResultChange::designChanged).count();
        ResultChange most = changes.get(0);
        return kept + changes.size() + " of " + compared + " numbers differ now, most of all "
                + most.metric().label().toLowerCase(Locale.ROOT) + " of "
                + most.design().name() + " (then "
                + Shown.number(most.then()) + ", now " + Shown.number(most.now()) + "). " + reason(edited);
    }

    private String reason(long edited) {
        if (edited == changes.size()) {
            return "Their designs were edited since.";
        }
        return edited == 0
                ? "The designs are the same: the model was changed."
                : edited + " of them belong to designs edited since, the rest to a changed model.";
    }
}
