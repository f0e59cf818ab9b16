package org.taperwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.taperwright.library.store.Password;
import org.taperwright.library.store.ServerSettings;

/**
 * A real PostgreSQL server for tests, from the machine's own package, started once and stopped when the tests end. Where
 * there is none the tests that ask for it are skipped and say so. The server refuses to run as the superuser of the machine;
 * tests that do so run it as the package's user.
 */
public final class TestServer {
    /** The owner of every database, and the password of every user. */
    public static final String OWNER = "owner";

    private static final String PASSWORD = "for tests only";
    private static final Optional<Path> PROGRAMS = programs();
    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static Optional<TestServer> running = Optional.empty();

    private final Path folder;
    private final int port;

    private TestServer(Path folder, int port) {
        this.folder = folder;
        this.port = port;
    }

    /** The server, started if it is not; skips the test where there is none. */
    public static synchronized TestServer get() {
        Assumptions.assumeTrue(PROGRAMS.isPresent(), "skipped: this machine has no PostgreSQL (initdb was not found)");
        if (running.isEmpty()) {
            try {
                running = Optional.of(begin());
            } catch (IOException | InterruptedException failure) {
                throw new AssertionError("PostgreSQL did not start", failure);
            }
        }
        return running.get();
    }

    private static Optional<Path> programs() {
        List<Path> folders = new ArrayList<>();
        Path packaged = Path.of("/usr/lib/postgresql");
        if (Files.isDirectory(packaged)) {
            try (Stream<Path> versions = Files.list(packaged)) {
                versions.map(version -> version.resolve("bin"))
                        .sorted(Comparator.reverseOrder())
                        .forEach(folders::add);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        for (String folder : System.getenv().getOrDefault("PATH", "").split(":")) {
            folders.add(Path.of(folder));
        }
        return folders.stream()
                .filter(each -> Files.isExecutable(each.resolve("initdb")))
                .findFirst();
    }

    private static TestServer begin() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("taperwright-server");
        Files.writeString(folder.resolve("password"), PASSWORD);
        if (superuser()) {
            run(folder, List.of("chown", "-R", "postgres", folder.toString()));
        }
        TestServer server = new TestServer(folder, freePort());
        server.run(
                "initdb",
                "-D",
                server.data(),
                "-U",
                OWNER,
                "--auth=scram-sha-256",
                "--pwfile=" + folder.resolve("password"),
                "--encoding=UTF8",
                "--locale=C",
                "--no-sync");
        server.start();
        Runtime.getRuntime().addShutdownHook(new Thread(server::remove));
        return server;
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    /** Starts it again after {@link #stop}. */
    public void start() {
        String options = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c fsync="
                + System.getProperty("server.fsync", "off");
        run("pg_ctl", "-D", data(), "-w", "-l", folder.resolve("log").toString(), "-o", options, "start");
    }

    /** Stops it at once, as a power cut would. */
    public void stop() {
        run("pg_ctl", "-D", data(), "-w", "-m", "immediate", "stop");
    }

    private void remove() {
        stop();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void run(String program, String... words) {
        List<String> command = new ArrayList<>();
        if (superuser()) {
            command.addAll(List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--init-groups"));
        }
        command.add(PROGRAMS.orElseThrow().resolve(program).toString());
        command.addAll(List.of(words));
        try {
            run(folder, command);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("stopped while waiting for " + program, stopped);
        }
    }

    private static void run(Path folder, List<String> command) throws IOException, InterruptedException {
        Path said = Files.createTempFile("taperwright-said", ".txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS))
                .as(String.join(" ", command))
                .isTrue();
        String words = Files.readString(said);
        Files.delete(said);
        assertThat(process.exitValue()).as(words).isZero();
    }

    private static boolean superuser() {
        return System.getProperty("user.name", "").equals("root");
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    /** The port it listens on. */
    public int port() {
        return port;
    }

    /** A new database that holds nothing. */
    public ServerSettings freshDatabase() {
        String name = "library " + DATABASES.incrementAndGet();
        execute(of("postgres", OWNER), "create database \"" + name + '"');
        return of(name, OWNER);
    }

    /** A user who may do nothing yet. */
    public void makeUser(String user) {
        execute(of("postgres", OWNER), "create user \"" + user + "\" password '" + PASSWORD + "'");
    }

    /** Settings for one of its databases. */
    public ServerSettings of(String database, String user) {
        return new ServerSettings("127.0.0.1", port, database, user, ServerSettings.Encryption.NONE);
    }

    /** The password of every user. */
    public static Password password() {
        return PASSWORD::toCharArray;
    }

    /** Breaks every link to a database but the one that breaks them; says how many. */
    public int breakLinks(ServerSettings settings) {
        try (Connection connection = connect(of("postgres", OWNER));
                var statement = connection.prepareStatement(
                        "select count(pg_terminate_backend(pid)) from pg_stat_activity where datname = ?")) {
            statement.setString(1, settings.database());
            try (var rows = statement.executeQuery()) {
                rows.next();
                return rows.getInt(1);
            }
        } catch (SQLException failure) {
            throw new AssertionError(failure);
        }
    }

    /** Does something that no program of ours would. */
    public static void execute(ServerSettings settings, String sql) {
        try (Connection connection = connect(settings);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException failure) {
            throw new AssertionError(failure.getMessage(), failure);
        }
    }

    /** A connection of its own. */
    public static Connection connect(ServerSettings settings) throws SQLException {
        return DriverManager.getConnection(
                "jdbc:postgresql://" + settings.host() + ':' + settings.port() + '/'
                        + settings.database().replace(" ", "%20") + "?currentSchema=taperwright",
                settings.user(),
                PASSWORD);
    }
}
