package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.Member;
import org.taperwright.library.store.Members;
import org.taperwright.mechanics.work.Fault;

/** Who of a server's users may look at a shared library and who may edit it, for its owner to change. */
public final class RightsPanel extends JPanel {
    private final TextTable list = new TextTable(
            "rights.members",
            "Users of the server",
            List.of("User of the server", "With this library"),
            List.of(300, 200));
    private final JButton edit = new JButton("Let edit");
    private final JButton look = new JButton("Let look only");
    private final JButton nothing = new JButton("Take the rights away");
    private final Prose told = new Prose("Asking the server…", Ink::text, false);
    private final transient Rights rights;
    private final transient Background background;
    private transient List<Member> members = List.of();
    private transient boolean mayGive;

    /** Asks and tells the server; all of it is called off the event thread and may take some seconds. */
    public interface Rights {
        /** Who may do what. */
        Members members();

        /** Lets a user look or edit; why not, or empty. */
        Optional<Fault> grant(String user, Access access);

        /** Takes a user's rights; why not, or empty. */
        Optional<Fault> revoke(String user);
    }

    /** What a change came to, and who may do what after it. */
    private record Changed(Optional<Fault> refusal, Members now) {}

    /**
     * @param where the library's place, in words
     * @param rights the server
     */
    public RightsPanel(String where, Rights rights, Background background) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.rights = rights;
        this.background = background;
        setName("rightsPanel");
        told.setName("rights.told");
        name(edit, "rights.edit", "The user may look at everything and edit it");
        name(look, "rights.look", "The user may look at everything and edit nothing");
        name(nothing, "rights.nothing", "The user cannot open the library any more");
        edit.addActionListener(event -> change(user -> rights.grant(user, Access.EDITOR), "is an editor now"));
        look.addActionListener(event -> change(user -> rights.grant(user, Access.READER), "is a reader now"));
        nothing.addActionListener(event -> change(rights::revoke, "has no rights any more"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getSelectionModel().addListSelectionListener(event -> wake());
        Prose about = new Prose(
                "The library " + where
                        + ". Its server holds everyone to these rights; new users are made by whoever runs the "
                        + "server. A change holds at once: the server refuses what is allowed no longer.",
                Ink::quiet,
                true);
        JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
        List.of(edit, look, nothing).forEach(buttons::add);
        JPanel below = new JPanel(new BorderLayout(0, Spacing.NEAR));
        below.add(buttons, BorderLayout.NORTH);
        below.add(told, BorderLayout.SOUTH);
        add(about, BorderLayout.NORTH);
        add(list.scrolled(), BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
        setPreferredSize(new Dimension(560, 360));
        wake();
        background.run(rights::members, now -> show(now, ""));
    }

    private static void name(JButton button, String name, String explanation) {
        button.setName(name);
        button.setToolTipText(explanation);
    }

    private Optional<Member> chosen() {
        int row = list.getSelectedRow();
        return row < 0 || row >= members.size() ? Optional.empty() : Optional.of(members.get(row));
    }

    /** The owner's own rights are not for this list to take, and nobody else gives or takes any. */
    private void wake() {
        Optional<Member.Rights> right =
                chosen().map(Member::rights).filter(held -> mayGive && held != Member.Rights.OWNER);
        edit.setEnabled(right.filter(held -> held != Member.Rights.EDITOR).isPresent());
        look.setEnabled(right.filter(held -> held != Member.Rights.READER).isPresent());
        nothing.setEnabled(right.filter(held -> held != Member.Rights.NONE).isPresent());
    }

    private void change(java.util.function.Function<String, Optional<Fault>> how, String done) {
        chosen().ifPresent(member -> {
            List.of(edit, look, nothing).forEach(button -> button.setEnabled(false));
            told.setText("Asking the server…");
            background.run(
                    () -> new Changed(how.apply(member.user()), rights.members()),
                    changed -> show(
                            changed.now(),
                            changed.refusal()
                                    .map(fault -> "Not changed: " + fault.sentence())
                                    .orElse(member.user() + " " + done + ".")));
        });
    }

    private void show(Members now, String words) {
        if (now instanceof Members.Refused refused) {
            told.setText("The server does not say who may use the library: "
                    + refused.fault().sentence());
            return;
        }
        Optional<String> user = chosen().map(Member::user);
        Members.Listed listed = (Members.Listed) now;
        members = listed.members();
        mayGive = listed.mayGive();
        list.show(members.stream()
                .map(each -> List.of(each.user(), each.rights().word()))
                .toList());
        for (int row = 0; row < members.size(); row++) {
            if (user.equals(Optional.of(members.get(row).user()))) {
                list.setRowSelectionInterval(row, row);
            }
        }
        String asked =
                mayGive ? "Select a user to give or take rights." : "Only the library's owner gives or takes rights.";
        told.setText(words.isEmpty() ? asked : words);
        wake();
    }
}
