package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.FormDifference;
import org.taperwright.library.store.Clash;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Names;
import org.taperwright.library.store.Revision;

/** Both versions of what two programs changed, field by field, for a person to choose between. */
public final class ConflictPanel extends JPanel {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
    private final TextTable fields = new TextTable(
            "conflict.fields",
            "Both versions",
            List.of("Thing", "Field", "Mine", "Theirs"),
            List.of(160, 160, 180, 180));

    /**
     * @param edit the edit that is not stored yet
     * @param clashes both versions of each thing
     */
    public ConflictPanel(String edit, List<Clash> clashes) {
        super(new BorderLayout(0, Spacing.NEAR));
        setName("conflictPanel");
        Prose told = new Prose(
                "Before “" + edit + "” was stored, " + authors(clashes)
                        + ". Choose which version stands. Yours would be stored after theirs, which stays in the thing's past; if "
                        + "you take theirs, yours is dropped. Until you choose nothing more is stored, and neither is lost.",
                Ink::text,
                false);
        told.setName("conflict.told");
        List<List<String>> rows = new ArrayList<>();
        clashes.forEach(clash -> rows.addAll(rows(clash)));
        fields.show(rows);
        add(told, BorderLayout.NORTH);
        add(fields.scrolled(), BorderLayout.CENTER);
        setPreferredSize(new Dimension(700, 300));
    }

    private static String authors(List<Clash> clashes) {
        return clashes.stream()
                .map(Clash::theirs)
                .map(theirs -> (theirs.who().isBlank() ? "another program" : theirs.who()) + " made “" + theirs.edit()
                        + "” (" + WHEN.format(theirs.at().atZone(ZoneId.systemDefault())) + ")")
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static List<List<String>> rows(Clash clash) {
        Optional<Record> mine = clash.mine().thing();
        Optional<Record> theirs = thing(clash.theirs());
        String name =
                mine.or(() -> theirs).map(Names::of).orElse(clash.theirs().id().value());
        if (mine.isEmpty() || theirs.isEmpty()) {
            return List.of(List.of(name, "", words(mine), words(theirs)));
        }
        return FormDifference.between(mine.get(), theirs.get()).stream()
                .map(change -> row(name, change))
                .toList();
    }

    private static Optional<Record> thing(Revision revision) {
        return revision.content() instanceof Content.Present present ? Optional.of(present.thing()) : Optional.empty();
    }

    private static String words(Optional<Record> thing) {
        return thing.isPresent() ? "in the library" : "taken out";
    }

    private static List<String> row(String name, FieldChange change) {
        return List.of(
                name,
                change.field(),
                change.before().orElse("left out"),
                change.after().orElse("left out"));
    }
}
