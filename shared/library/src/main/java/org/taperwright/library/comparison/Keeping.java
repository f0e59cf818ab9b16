package org.taperwright.library.comparison;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.KeptResults.KeptDesign;
import org.taperwright.library.store.KeptResults.KeptRow;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.ModelVersion;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;

/** Keeps results, and sets kept ones beside those of now. */
public final class Keeping {
    private static final int FINGERPRINT_BYTES = 8;
    /** Two numbers closer than this share are the same: what another machine's last digits may do. */
    private static final double SAME = 1e-6;

    private Keeping() {}

    /**
     * The results of a comparison, to be kept.
     *
     * @param ids identifiers of the columns
     */
    public static KeptResults of(Comparison comparison, List<ThingId> ids) {
        List<KeptDesign> designs = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            designs.add(
                    new KeptDesign(ids.get(i), fingerprint(comparison.columns().get(i))));
        }
        List<KeptRow> rows = comparison.rows().stream()
                .map(row -> new KeptRow(
                        row.metric().id(),
                        row.cells().stream().map(cell -> cell.reading().value()).toList()))
                .toList();
        return new KeptResults(ModelVersion.CURRENT, designs, rows);
    }

    /** Sets kept results beside a comparison; designs and metrics that are only in one of them are left out. */
    public static KeptCheck check(KeptResults kept, Comparison comparison, List<ThingId> ids) {
        List<ResultChange> changes = new ArrayList<>();
        int compared = 0;
        for (int i = 0; i < ids.size(); i++) {
            int column = column(kept, ids.get(i));
            if (column < 0) {
                continue;
            }
            Design design = comparison.columns().get(i).design();
            boolean edited = !kept.designs()
                    .get(column)
                    .fingerprint()
                    .equals(fingerprint(comparison.columns().get(i)));
            for (ComparisonRow row : comparison.rows()) {
                for (KeptRow before : kept.rows()) {
                    if (before.metric().equals(row.metric().id())) {
                        compared++;
                        double then = before.values().get(column);
                        double now = row.cells().get(i).reading().value();
                        if (Math.abs(now - then) > SAME * Math.max(Math.abs(then), Math.abs(now))) {
                            changes.add(new ResultChange(row.metric(), design, edited, then, now));
                        }
                    }
                }
            }
        }
        return new KeptCheck(kept.model(), compared, changes);
    }

    private static int column(KeptResults kept, ThingId id) {
        return kept.designs().stream().map(KeptDesign::id).toList().indexOf(id);
    }

    /**
     * The first bytes of SHA-256 of a design's JSON form, but for its name and note, which enter no number; with the numbers of its
     * alloy where that is a library's own.
     */
    static String fingerprint(Assessment assessment) {
        return fingerprint(assessment.design(), numbers(assessment.alloy()));
    }

    private static String numbers(Alloy alloy) {
        return Alloys.find(alloy.id()).isPresent()
                ? ""
                : String.valueOf(List.of(
                        alloy.youngMpa(),
                        alloy.youngBand(),
                        alloy.poisson(),
                        alloy.yieldMpa(),
                        alloy.yieldBand(),
                        alloy.ultimateMpa(),
                        alloy.constants(),
                        alloy.kin(),
                        alloy.life()));
    }

    private static String fingerprint(Design design, String alloy) {
        Design bare = Designs.with(design).name("-").note("").design();
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest((JsonForms.write(new ThingId("design"), bare) + alloy).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, FINGERPRINT_BYTES);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}
