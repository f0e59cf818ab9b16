package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPasswordField;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import org.taperwright.library.store.ConnectionTest;
import org.taperwright.library.store.Password;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.library.store.ServerSettings.Encryption;
import org.taperwright.mechanics.work.Fault;

/** Where the library lies: in a file of one's own, or on a server that a lab shares; with a test of the connection. */
public final class ConnectionPanel extends JPanel {
    private final JRadioButton own = new JRadioButton("A file of my own on this computer");
    private final JRadioButton shared =
            new JRadioButton("A library that we share on a server (PostgreSQL 15 or newer)");
    private final JTextField host = new JTextField();
    private final JTextField port = new JTextField();
    private final JTextField database = new JTextField();
    private final JTextField user = new JTextField();
    private final JPasswordField password = new JPasswordField();
    private final ChoiceField<Encryption> encryption = new ChoiceField<>(
            "connection.encryption", "Encryption", List.of(Encryption.values()), ConnectionPanel::words);
    private final JButton test = new JButton("Test the connection");
    private final Prose told = new Prose("", Ink::text, false);
    private final transient BiFunction<ServerSettings, Password, ConnectionTest> tester;
    private final transient Background background;

    /**
     * @param initial the settings so far
     * @param onServer whether the shared library is chosen
     * @param tester tries a connection; called off the event thread
     */
    public ConnectionPanel(
            ServerSettings initial,
            boolean onServer,
            BiFunction<ServerSettings, Password, ConnectionTest> tester,
            Background background) {
        super(new BorderLayout());
        this.tester = tester;
        this.background = background;
        setName("connectionPanel");
        name(own, "connection.own");
        name(shared, "connection.shared");
        name(host, "connection.host");
        name(port, "connection.port");
        name(database, "connection.database");
        name(user, "connection.user");
        name(password, "connection.password");
        name(test, "connection.test");
        name(told, "connection.told");
        ButtonGroup group = new ButtonGroup();
        group.add(own);
        group.add(shared);
        own.setSelected(!onServer);
        shared.setSelected(onServer);
        own.addActionListener(event -> wake());
        shared.addActionListener(event -> wake());
        host.setText(initial.host());
        port.setText(Integer.toString(initial.port()));
        database.setText(initial.database());
        user.setText(initial.user());
        encryption.setValue(initial.encryption());
        password.putClientProperty("JTextField.placeholderText", initial.user().isEmpty() ? "" : "left empty: as kept");
        test.addActionListener(event -> test());
        add(form());
        setPreferredSize(new Dimension(520, 400));
        wake();
    }

    private static void name(JComponent component, String name) {
        component.setName(name);
        component.setOpaque(!(component instanceof JRadioButton || component instanceof Prose));
    }

    private FormPane form() {
        FormPane form = new FormPane("connection.fields");
        form.wide(own)
                .wide(shared)
                .row("Server", host, "Its name or address, without port")
                .row("Port", port, "Usually " + ServerSettings.USUAL_PORT)
                .row("Database", database, "Name of the database")
                .row("User", user, "Your user's name on the server")
                .row(
                        "Password",
                        password,
                        "Left empty, the one kept for this user stays. Kept by the keyring of this computer; where it has none, encrypted "
                                + "under a master password that you choose. Never in a file in the clear")
                .row("Encryption", encryption, "How the link to the server is encrypted");
        JPanel button = new JPanel(new BorderLayout());
        button.setOpaque(false);
        button.add(test, BorderLayout.LINE_START);
        form.wide(button).wide(told);
        return form;
    }

    private static String words(Encryption encryption) {
        return switch (encryption) {
            case VERIFIED -> "encrypted, server verified";
            case REQUIRED -> "encrypted, server not verified";
            case NONE -> "none: only on this computer or a network of its own";
        };
    }

    private void wake() {
        boolean server = shared.isSelected();
        List.of(host, port, database, user, password, encryption, test).forEach(each -> each.setEnabled(server));
    }

    /** Whether the shared library is chosen. */
    public boolean onServer() {
        return shared.isSelected();
    }

    /** The settings as entered; a port that is no number is 0, which {@link ServerSettings#faults} tells of. */
    public ServerSettings settings() {
        String number = port.getText().strip();
        return new ServerSettings(
                host.getText().strip(),
                number.matches("[0-9]{1,5}") ? Integer.parseInt(number) : 0,
                database.getText().strip(),
                user.getText().strip(),
                encryption.getItemAt(Math.max(0, encryption.getSelectedIndex())));
    }

    /** The password as entered; empty when none was. */
    public char[] password() {
        return password.getPassword();
    }

    /** What is wrong with the settings; empty when they can be kept. */
    public List<Fault> faults() {
        return onServer() ? settings().faults() : List.of();
    }

    /** Says beneath the form why it is shown. */
    public void remark(String words) {
        told.setText(words);
    }

    /** Says something beneath the form. */
    public void say(List<Fault> faults) {
        told.setText(faults.stream()
                .map(fault -> fault.where() + ": " + fault.what() + "; " + fault.expected() + ".")
                .collect(Collectors.joining("\n")));
        revalidate();
    }

    private void test() {
        if (!faults().isEmpty()) {
            say(faults());
            return;
        }
        told.setText("Trying…");
        test.setEnabled(false);
        ServerSettings settings = settings();
        char[] letters = password();
        background.run(() -> tester.apply(settings, () -> letters), this::tell);
    }

    private void tell(ConnectionTest result) {
        test.setEnabled(shared.isSelected());
        if (result instanceof ConnectionTest.Passed passed) {
            told.setText(
                    "Connected to " + passed.server() + " as " + passed.access().word() + ". "
                            + (passed.made()
                                    ? "The library there holds " + passed.things() + " things."
                                    : "There is no library yet; opening it makes one."));
        } else if (result instanceof ConnectionTest.Failed failed) {
            say(List.of(failed.fault()));
        }
        revalidate();
    }
}
