package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.taperwright.library.comparison.Keeping;
import org.taperwright.library.comparison.KeptCheck;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.GivesAndTakes;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/** The comparison in words: what each design gives and takes, with the caution; and whether kept results would differ now. */
final class WordsPane extends JPanel {
    private final transient Consumer<KeptResults> keepResults;
    private final JPanel sentences = new JPanel(new BorderLayout());
    private final Prose kept = new Prose("", Ink::text, false);
    private final JButton keep = new JButton("Keep these results");
    private transient Optional<KeptResults> keepable = Optional.empty();

    /**
     * @param keepResults receives the results to keep with the comparison
     */
    WordsPane(Consumer<KeptResults> keepResults) {
        super(new BorderLayout());
        this.keepResults = keepResults;
        setName("comparison.words");
        setOpaque(false);
        sentences.setOpaque(false);
        kept.setName("comparison.kept");
        keep.setName("comparison.keep");
        keep.setToolTipText(
                "Keeps the numbers and the model's version with the comparison, to be told later whether they would "
                        + "differ");
        keep.addActionListener(event -> keepable.ifPresent(this.keepResults));
        JScrollPane scroll = new JScrollPane(sentences);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        JPanel foot = new JPanel(new BorderLayout(Spacing.NEAR, Spacing.NEAR));
        foot.setOpaque(false);
        foot.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        foot.add(kept, BorderLayout.CENTER);
        foot.add(keep, BorderLayout.LINE_END);
        add(scroll, BorderLayout.CENTER);
        add(foot, BorderLayout.SOUTH);
    }

    /** Shows a result; without one, nothing. */
    void show(Compared compared, SavedComparison saved, boolean trial) {
        FormPane form = new FormPane("comparison.sentences");
        compared.comparison()
                .filter(table -> compared.datumMember().isPresent())
                .ifPresent(table -> {
                    for (int column = 0; column < table.columns().size(); column++) {
                        GivesAndTakes.of(table, column).ifPresent(each -> {
                            form.heading(each.design());
                            Prose prose = new Prose(String.join("\n", each.sentences()), Ink::text, false);
                            prose.setName("comparison.sentence");
                            form.wide(prose);
                        });
                    }
                });
        form.wide(new CautionLine());
        sentences.removeAll();
        sentences.add(form, BorderLayout.CENTER);
        List<ThingId> ids = ids(compared);
        keepable = trial ? Optional.empty() : compared.comparison().map(table -> Keeping.of(table, ids));
        keep.setEnabled(keepable.isPresent());
        kept.setText(keptWords(compared.comparison(), saved, ids));
        revalidate();
        repaint();
    }

    private static String keptWords(Optional<Comparison> table, SavedComparison saved, List<ThingId> ids) {
        return saved.kept()
                .flatMap(results -> table.map(now -> Keeping.check(results, now, ids)))
                .map(KeptCheck::words)
                .orElse("No results are kept with this comparison.");
    }

    private static List<ThingId> ids(Compared compared) {
        List<ThingId> ids = new ArrayList<>();
        for (int i = 0; i < compared.members().size(); i++) {
            if (compared.assessment(i).isPresent()) {
                ids.add(compared.members().get(i).id());
            }
        }
        return ids;
    }
}
