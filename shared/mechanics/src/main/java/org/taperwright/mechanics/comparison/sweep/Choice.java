package org.taperwright.mechanics.comparison.sweep;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.taperwright.mechanics.design.Design;

/**
 * One of a few options.
 *
 * @param id see {@link DesignParameter#id}
 * @param label see {@link DesignParameter#label}
 * @param options the options
 * @param chosen identifier of the option in a design
 * @param change the design with the option of an identifier
 */
public record Choice(
        String id,
        String label,
        List<Option> options,
        Function<Design, String> chosen,
        BiFunction<Design, String, Design> change)
        implements DesignParameter {
    public Choice {
        options = List.copyOf(options);
    }

    /** An option: its identifier and its name for people. */
    public record Option(String id, String label) {}

    @Override
    public String unit() {
        return "";
    }

    @Override
    public String words(Design design) {
        String here = chosen.apply(design);
        return options.stream()
                .filter(option -> option.id().equals(here))
                .map(Option::label)
                .findFirst()
                .orElse(here);
    }

    @Override
    public List<Setting> settings(Design design, int count) {
        return IntStream.range(0, options.size())
                .mapToObj(i -> new Setting(
                        i,
                        options.get(i).label(),
                        change.apply(design, options.get(i).id())))
                .toList();
    }

    @Override
    public List<Setting> nearby(Design design) {
        String here = chosen.apply(design);
        return settings(design, options.size()).stream()
                .filter(setting -> !options.get((int) setting.place()).id().equals(here))
                .toList();
    }
}
