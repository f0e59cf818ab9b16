package org.taperwright.comparer.ui;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.mechanics.comparison.sweep.DesignParameter;
import org.taperwright.mechanics.comparison.sweep.Setting;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;

/**
 * A design with one parameter moved to see what comes of it; nothing of it is in the library.
 *
 * @param id the design's identifier
 * @param original the design as it is
 * @param parameter what is moved
 * @param setting where to
 */
record Trial(ThingId id, Design original, DesignParameter parameter, Setting setting) {
    /** The design as tried, marked by its name. */
    Design design() {
        return Designs.with(setting.design()).name(original.name() + " (trial)").design();
    }

    /** The design as a new one of the library, named for what was moved. */
    Design kept() {
        String unit = parameter.unit().isEmpty() ? "" : " " + parameter.unit();
        String what = parameter.label().toLowerCase(Locale.ROOT) + " " + setting.words() + unit;
        return Designs.with(setting.design())
                .name(original.name() + ", " + what)
                .design();
    }

    /** Whether it moves the same parameter of the same design. */
    boolean continues(Trial other) {
        return id.equals(other.id())
                && original.equals(other.original())
                && parameter.id().equals(other.parameter().id());
    }

    /** Members with the design tried in its place; empty when the design was edited or removed since. */
    static Optional<List<Member>> in(List<Member> members, Trial trial) {
        boolean there = members.stream()
                .anyMatch(member ->
                        member.id().equals(trial.id()) && member.design().equals(Optional.of(trial.original())));
        return there
                ? Optional.of(members.stream()
                        .map(member -> member.id().equals(trial.id())
                                ? new Member(member.id(), Optional.of(trial.design()), member.alloys())
                                : member)
                        .toList())
                : Optional.empty();
    }
}
