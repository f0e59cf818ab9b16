package org.taperwright.workbench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.Member;
import org.taperwright.library.store.Member.Rights;
import org.taperwright.library.store.Members;
import org.taperwright.mechanics.work.Fault;

class RightsPanelTest {
    private final Map<String, Rights> held =
            new TreeMap<>(Map.of("ada", Rights.OWNER, "berta", Rights.READER, "cleo", Rights.NONE));
    private Optional<Fault> refusal = Optional.empty();
    private boolean owner = true;
    private RightsPanel panel;

    @BeforeEach
    void open() {
        Shots.theme(false);
        panel = made();
    }

    @Test
    void the_owner_sees_who_may_edit_who_may_look_and_who_nothing() {
        assertThat(rows()).containsExactly("ada: owner", "berta: reader", "cleo: none");
        assertThat(enabled()).as("nobody is selected").isEmpty();
    }

    @Test
    void rights_are_given_and_taken_and_the_user_stays_selected() {
        select("cleo");
        assertThat(enabled()).containsExactly("rights.edit", "rights.look");
        press("rights.edit");

        assertThat(rows()).contains("cleo: editor");
        assertThat(said()).isEqualTo("cleo is an editor now.");
        assertThat(enabled()).containsExactly("rights.look", "rights.nothing");

        press("rights.nothing");
        assertThat(rows()).contains("cleo: none");
    }

    @Test
    void the_owners_own_rights_cannot_be_taken() {
        select("ada");

        assertThat(enabled()).isEmpty();
    }

    @Test
    void who_does_not_own_the_library_sees_the_rights_and_changes_none() {
        owner = false;
        panel = made();
        select("berta");

        assertThat(enabled()).isEmpty();
        assertThat(said()).isEqualTo("Only the library's owner gives or takes rights.");
    }

    @Test
    void a_refusal_of_the_server_is_said_and_the_list_shows_what_stands() {
        refusal = Optional.of(Fault.impossible("user", "does not own the library", "expected the one who made it"));
        select("berta");
        press("rights.edit");

        assertThat(said()).isEqualTo("Not changed: user: does not own the library; expected the one who made it");
        assertThat(rows()).contains("berta: reader");
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void it_draws_in_the_theme(boolean dark) {
        Shots.theme(dark);
        panel = made();
        select("berta");

        assertThat(Shots.take("rights-" + (dark ? "dark" : "light"), panel, 560, 320, 1)
                        .getWidth())
                .isEqualTo(560);
    }

    private RightsPanel made() {
        return Shots.onEventThread(
                () -> new RightsPanel("lies in clinic at heron.example", new Server(), new AtOnce()));
    }

    private void select(String user) {
        Shots.onEventThread(() -> {
            int row = rows().indexOf(user + ": " + held.get(user).word());
            table().setRowSelectionInterval(row, row);
            return row;
        });
    }

    private void press(String button) {
        Shots.onEventThread(() -> {
            Gestures.named(panel, button, AbstractButton.class).doClick();
            return button;
        });
    }

    private JTable table() {
        return Gestures.named(panel, "rights.members", JTable.class);
    }

    private List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < table().getRowCount(); row++) {
            rows.add(table().getValueAt(row, 0) + ": " + table().getValueAt(row, 1));
        }
        return rows;
    }

    private List<String> enabled() {
        return List.of("rights.edit", "rights.look", "rights.nothing").stream()
                .filter(each ->
                        Gestures.named(panel, each, AbstractButton.class).isEnabled())
                .toList();
    }

    private String said() {
        return Gestures.named(panel, "rights.told", Prose.class).getText();
    }

    /** A server in memory. */
    private final class Server implements RightsPanel.Rights {
        @Override
        public Members members() {
            return new Members.Listed(
                    held.entrySet().stream()
                            .map(each -> new Member(each.getKey(), each.getValue()))
                            .sorted(Comparator.comparing(Member::rights))
                            .toList(),
                    owner);
        }

        @Override
        public Optional<Fault> grant(String user, Access access) {
            if (refusal.isEmpty()) {
                held.put(user, access == Access.EDITOR ? Rights.EDITOR : Rights.READER);
            }
            return refusal;
        }

        @Override
        public Optional<Fault> revoke(String user) {
            held.put(user, Rights.NONE);
            return refusal;
        }
    }

    /** Does at once what otherwise runs beside. */
    private static final class AtOnce implements Background {
        @Override
        public <T> void run(Supplier<T> work, Consumer<T> deliver) {
            deliver.accept(work.get());
        }
    }
}
