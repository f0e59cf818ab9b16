package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestServer;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.mechanics.design.ThingId;

class ConnectionTestsTest {
    private TestServer server;
    private ServerSettings settings;

    @BeforeEach
    void begin() {
        server = TestServer.get();
        settings = server.freshDatabase();
    }

    private static ConnectionTest test(ServerSettings settings) {
        return ConnectionTests.of(settings, TestServer.password());
    }

    private static String fault(ConnectionTest test) {
        assertThat(test).isInstanceOf(ConnectionTest.Failed.class);
        return ((ConnectionTest.Failed) test).fault().sentence();
    }

    private LibraryStore open() {
        return ((OpenResult.Opened) LibraryStore.open(settings, TestServer.password(), JsonForms.forStore())).store();
    }

    @Test
    void aDatabaseThatHoldsNoLibraryYetWillDoForItsOwner() {
        assertThat(test(settings)).isInstanceOfSatisfying(ConnectionTest.Passed.class, passed -> {
            assertThat(passed.made()).isFalse();
            assertThat(passed.server()).startsWith("PostgreSQL 1");
        });
    }

    @Test
    void aLibraryIsFoundWithItsThings() {
        try (LibraryStore store = open()) {
            store.append(
                    "Add",
                    "someone",
                    Instant.EPOCH,
                    List.of(new Draft(new ThingId("a"), ThingKind.MOTOR, Optional.of(Examples.motor()), 0)));
        }
        assertThat(test(settings)).isInstanceOfSatisfying(ConnectionTest.Passed.class, passed -> {
            assertThat(passed.made()).isTrue();
            assertThat(passed.access()).isEqualTo(Access.EDITOR);
            assertThat(passed.things()).isEqualTo(1);
        });
    }

    /** Names that end so are known nowhere (RFC 2606, section 2). */
    @Test
    void anUnknownHostIsNamed() {
        ServerSettings unknown =
                new ServerSettings("nowhere.invalid", 5432, "library", "owner", ServerSettings.Encryption.VERIFIED);
        assertThat(fault(test(unknown)))
                .isEqualTo("host: found \"nowhere.invalid\"; expected a server that is known by it");
    }

    @Test
    void aPortWhereNothingListensIsNamed() {
        ServerSettings closed =
                new ServerSettings("127.0.0.1", 1, settings.database(), "owner", ServerSettings.Encryption.NONE);
        assertThat(fault(test(closed)))
                .isEqualTo("port: nothing answers at 1; expected the port the server listens on");
    }

    @Test
    void aWrongPasswordIsNamed() {
        assertThat(fault(ConnectionTests.of(settings, "wrong"::toCharArray)))
                .isEqualTo("password: was not accepted; expected that of the user \"owner\"");
        assertThat(fault(ConnectionTests.of(settings, () -> new char[0]))).startsWith("password: ");
    }

    @Test
    void aMissingDatabaseIsNamed() {
        assertThat(fault(test(server.of("nothing", TestServer.OWNER))))
                .isEqualTo("database: found \"nothing\"; expected one the server holds");
    }

    @Test
    void encryptionThatTheServerDoesNotOfferIsNamed() {
        ServerSettings encrypted = new ServerSettings(
                settings.host(),
                settings.port(),
                settings.database(),
                settings.user(),
                ServerSettings.Encryption.VERIFIED);
        assertThat(fault(test(encrypted))).startsWith("encryption: is not offered by the server");
    }

    @Test
    void aUserWithoutRightsIsNamed() {
        server.makeUser("guest of " + settings.database());
        ServerSettings guest = server.of(settings.database(), "guest of " + settings.database());
        assertThat(fault(test(guest)))
                .isEqualTo("database: holds no library yet; expected one, or the right to make one there");
        assertThat(LibraryStore.open(guest, TestServer.password(), JsonForms.forStore()))
                .isInstanceOf(OpenResult.Refused.class);
        open().close();
        assertThat(fault(test(guest)))
                .isEqualTo("user: may not read the library; expected its owner to let you read or edit it");
    }

    @Test
    void settingsThatMakeNoSenseAreToldBeforeAnythingIsTried() {
        ServerSettings odd =
                new ServerSettings("a host/with?marks", 0, " ", "\u0000", ServerSettings.Encryption.VERIFIED);
        assertThat(odd.faults()).extracting(each -> each.where()).containsExactly("host", "port", "database", "user");
        assertThat(fault(test(odd))).startsWith("host: is no name of a server");
    }

    @Test
    void settingsAreKeptAsWordsWithoutAPassword() {
        assertThat(ServerSettings.of(settings.words())).isEqualTo(settings);
        assertThat(settings.words()).containsOnlyKeys("host", "port", "database", "user", "encryption");
        assertThat(ServerSettings.of(Map.of()).encryption()).isEqualTo(ServerSettings.Encryption.VERIFIED);
        assertThat(ServerSettings.of(Map.of("port", "99999999999")).port()).isEqualTo(5432);
    }
}
