package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.score.LogRatios;
import org.taperwright.mechanics.comparison.score.Purpose;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.FormPane;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/**
 * The score: a slider for each metric that can count, purposes to begin with, and beneath what each design's score is made of and
 * how far the weights can move. The weights belong to the comparison and are saved with it.
 */
final class ScorePane extends JPanel {
    private final transient Desk desk;
    private final transient BiConsumer<String, Weights> weigh;
    private final Map<Metric, WeightSlider> sliders = new HashMap<>();
    private final ScoreTable table = new ScoreTable();
    private final Prose words = new Prose("", Ink::text, false);
    private transient Optional<Comparison> comparison = Optional.empty();
    private transient Optional<LogRatios> ratios = Optional.empty();
    private transient List<String> names = List.of();
    private transient Weights weights = Weights.NONE;

    /**
     * @param weigh receives the name of an edit and the weights after it
     */
    ScorePane(Desk desk, BiConsumer<String, Weights> weigh) {
        super(new BorderLayout());
        this.desk = desk;
        this.weigh = weigh;
        setName("comparison.score");
        setOpaque(false);
        words.setName("comparison.score.words");
        JPanel result = new JPanel(new BorderLayout(0, Spacing.NEAR));
        result.setOpaque(false);
        result.setBorder(Spacing.around(Spacing.NEAR, Spacing.NEAR));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        result.add(scroll, BorderLayout.CENTER);
        result.add(words, BorderLayout.SOUTH);
        JScrollPane form = new JScrollPane(sliders());
        form.setBorder(BorderFactory.createEmptyBorder());
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, form, result);
        split.setResizeWeight(0.45);
        split.setBorder(BorderFactory.createEmptyBorder());
        add(purposes(), BorderLayout.NORTH);
        add(split, BorderLayout.CENTER);
        say();
    }

    private JPanel purposes() {
        ChoiceField<Purpose> purpose = new ChoiceField<>(
                "comparison.score.purpose", "Purpose to take weights from", Purpose.all(), Purpose::label);
        purpose.onCommit(chosen -> {
            purpose.setToolTipText(chosen.reason());
            weigh.accept("Weights for " + chosen.label(), chosen.weights());
        });
        JButton none = new JButton("No score");
        none.setName("comparison.score.none");
        none.addActionListener(event -> {
            purpose.setSelectedIndex(-1);
            weigh.accept("No weights", Weights.NONE);
        });
        JLabel label = new JLabel("Begin with");
        label.setLabelFor(purpose);
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, Spacing.NEAR, Spacing.NEAR));
        row.setOpaque(false);
        purpose.setPreferredSize(new Dimension(190, purpose.getPreferredSize().height));
        row.add(label);
        row.add(purpose);
        row.add(none);
        return row;
    }

    private FormPane sliders() {
        FormPane form = new FormPane("comparison.score.weights");
        for (Metric metric : Metrics.all()) {
            if (ScoreBoard.canCount(metric)) {
                WeightSlider slider = new WeightSlider(metric, this::weigh);
                sliders.put(metric, slider);
                form.row(metric.label(), slider, metric.explanation());
            }
        }
        return form;
    }

    private void weigh(Metric metric, double weight) {
        if (weight != weights.of(metric.id())) {
            weigh.accept("Weight of " + metric.label(), weights.with(metric.id(), weight));
        }
    }

    /** Shows a comparison's score by its weights. */
    void show(Optional<Comparison> newComparison, List<String> newNames, Weights newWeights) {
        comparison = newComparison;
        names = List.copyOf(newNames);
        weights = newWeights;
        sliders.forEach((metric, slider) -> slider.setWeight(weights.of(metric.id())));
        if (comparison.isEmpty() || weights.isEmpty()) {
            table.clear();
            say();
            return;
        }
        Comparison scored = comparison.get();
        LogRatios sampled = ratios.filter(known -> known.comparison() == scored).orElseGet(() -> new LogRatios(scored));
        ratios = Optional.of(sampled);
        Weights by = weights;
        desk.compute(this, "Score", progress -> ScoreBoard.of(sampled, by), outcome -> {
            if (outcome instanceof Outcome.Current<ScoreBoard> current && by.equals(weights)) {
                table.show(current.value(), names);
                words.setText(ScoreWords.of(current.value(), names));
                revalidate();
            }
        });
    }

    private void say() {
        words.setText(
                "Weigh some metrics to add up one score: weight × logarithm of the ratio to the datum, turned so that more is "
                        + "better. The weights are yours; purposes are only a beginning (common practice, no source).");
    }
}
