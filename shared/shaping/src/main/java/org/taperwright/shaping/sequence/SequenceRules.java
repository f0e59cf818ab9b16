package org.taperwright.shaping.sequence;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.taperwright.mechanics.work.Fault;

/** The rules that check a sequence: every implementation registered by a service line, in the order of the lines. */
public final class SequenceRules {
    private static final List<SequenceRule> ALL =
            ServiceLoader.load(SequenceRule.class, SequenceRules.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .toList();

    private static final Pattern STEP = Pattern.compile("steps\\[(\\d{1,9})]");

    private SequenceRules() {}

    /** All rules. */
    public static List<SequenceRule> all() {
        return ALL;
    }

    /** What all rules remark, step by step, and for each step in the order of the rules. */
    public static List<Fault> check(ArrangedSequence arranged) {
        return ALL.stream()
                .flatMap(rule -> rule.check(arranged).stream())
                .sorted(Comparator.comparingInt(SequenceRules::step))
                .toList();
    }

    /** The step that a fault concerns; before all steps when it concerns none. */
    private static int step(Fault fault) {
        Matcher place = STEP.matcher(fault.where());
        return place.lookingAt() ? Integer.parseInt(place.group(1)) : -1;
    }
}
