package org.taperwright.shaping.passage.remark;

import java.util.List;
import java.util.ServiceLoader;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** The rules that look at a sequence once it has been run, in the order of their service lines. */
public final class ShapedRules {
    private static final List<ShapedRule> ALL =
            ServiceLoader.load(ShapedRule.class, ShapedRules.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .toList();

    private ShapedRules() {}

    /** All rules. */
    public static List<ShapedRule> all() {
        return ALL;
    }

    /** What all rules remark. */
    public static List<Fault> check(ArrangedSequence arranged, ShapedSequence shaped) {
        return ALL.stream()
                .flatMap(rule -> rule.check(arranged, shaped).stream())
                .toList();
    }
}
