package org.taperwright.designer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.AlloyConstant;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.measured.FitAccount;
import org.taperwright.mechanics.measured.FitConstants;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;

/** What is known of an alloy of the library's own, in lines. */
final class AlloyWords {
    private static final int MOST_NAMES = 12;

    private AlloyWords() {}

    static String constants(OwnAlloy alloy) {
        List<String> lines = new ArrayList<>();
        lines.add("Of the kind of " + kin(alloy).label() + ", whose laws it follows");
        for (AlloyConstant known : FitConstants.inOrder(kin(alloy))) {
            Optional.ofNullable(alloy.constants().get(known.name()))
                    .ifPresent(each -> lines.add(
                            known.label() + ": " + words(each) + (known.unit().isEmpty() ? "" : " " + known.unit())));
        }
        lines.add("Poisson's ratio: " + Shown.number(alloy.poisson()));
        lines.add("Tensile strength: " + Shown.number(alloy.ultimateMpa()) + " MPa");
        return String.join("\n", lines);
    }

    private static String words(Reading reading) {
        return Shown.number(reading.value())
                + reading.band().map(band -> " (" + Shown.band(band) + ")").orElse("");
    }

    static String fit(OwnAlloy alloy) {
        if (alloy.fit().isEmpty()) {
            return "No fit is recorded.";
        }
        FitAccount fit = alloy.fit().get();
        List<String> lines = new ArrayList<>();
        lines.add("Fitted on " + fit.day() + " to measurements of " + fit.design());
        for (FitAccount.Constant each : fit.constants()) {
            lines.add(FitConstants.described(kin(alloy), each.name()).label() + ": from " + Shown.number(each.before())
                    + " to " + Shown.number(each.value())
                    + (each.atEdge()
                            ? ", held at the edge of its band: the measurements would have it beyond"
                            : " ± " + Shown.number(each.standardError()) + " (one standard error)"));
        }
        for (int i = 0; i < fit.constants().size(); i++) {
            for (int j = i + 1; j < fit.constants().size(); j++) {
                double both = Math.sqrt(
                        fit.covariance().get(i).get(i) * fit.covariance().get(j).get(j));
                if (both > 0) {
                    lines.add("Correlation of " + label(alloy, fit, i) + " and " + label(alloy, fit, j) + ": "
                            + Shown.number(fit.covariance().get(i).get(j) / both, 2, 2));
                }
            }
        }
        for (FitAccount.Residual each : fit.residuals()) {
            lines.add(each.label() + ": " + each.points() + " points used, " + each.left()
                    + " not; root mean square of the differences " + Shown.percent(each.share())
                    + " (of a curve's greatest value, or of lives in natural logarithms)");
        }
        return String.join("\n", lines);
    }

    static String use(ThingId id, Snapshot library) {
        List<String> names = library.ofKind(ThingKind.DESIGN).stream()
                .filter(entry ->
                        entry.thing() instanceof Design design && design.alloy().equals(id.value()))
                .map(Entry::name)
                .toList();
        if (names.isEmpty()) {
            return "None yet: choose it as a design's alloy, or as what is moved in a comparison.";
        }
        String few = names.stream().limit(MOST_NAMES).collect(Collectors.joining("\n"));
        return names.size() > MOST_NAMES ? few + "\nand " + (names.size() - MOST_NAMES) + " more" : few;
    }

    private static String label(OwnAlloy alloy, FitAccount fit, int place) {
        return FitConstants.described(kin(alloy), fit.constants().get(place).name())
                .label();
    }

    private static Alloy kin(OwnAlloy alloy) {
        return Alloys.find(alloy.kin()).orElseThrow();
    }
}
