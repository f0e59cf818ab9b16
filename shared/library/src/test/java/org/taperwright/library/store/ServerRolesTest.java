package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestServer;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.history.StoringEvent;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

class ServerRolesTest {
    private static final ThingId A = new ThingId("a");
    private static final Fault ONLY_LOOKED_AT =
            Fault.impossible("library", "may only be looked at by you", "expected its owner to let you edit it");

    private ServerSettings owner;
    private ServerSettings member;

    @BeforeEach
    void begin() {
        TestServer server = TestServer.get();
        owner = server.freshDatabase();
        String name = "O'Hara \"the member\" of " + owner.database();
        server.makeUser(name.replace("\"", "\"\""));
        member = server.of(owner.database(), name);
        try (LibraryStore store = open(owner)) {
            store.append("Add a", "owner", Instant.EPOCH, List.of(draft("Alpha", 0)));
        }
    }

    private static LibraryStore open(ServerSettings settings) {
        OpenResult result = LibraryStore.open(settings, TestServer.password(), JsonForms.forStore());
        assertThat(result).isInstanceOf(OpenResult.Opened.class);
        return ((OpenResult.Opened) result).store();
    }

    private static Draft draft(String name, long basedOn) {
        return new Draft(A, ThingKind.DESIGN, Optional.of(Examples.plainDesign(name)), basedOn);
    }

    private void grant(Access access) {
        assertThat(ServerRoles.grant(owner, TestServer.password(), member.user(), access))
                .isEmpty();
    }

    private void refuses(String sql) {
        assertThatThrownBy(() -> TestServer.execute(member, sql))
                .hasMessageMatching("(?s).*(permission denied|must be owner).*");
    }

    @Test
    void whoWasGivenNothingCannotOpenTheLibrary() {
        assertThat(LibraryStore.open(member, TestServer.password(), JsonForms.forStore()))
                .isInstanceOf(OpenResult.Refused.class);
    }

    @Test
    void aReaderSeesEverythingAndIsToldThatEditingIsNotAllowed() {
        grant(Access.READER);
        try (LibraryStore store = open(member)) {
            assertThat(store.access()).isEqualTo(Access.READER);
            assertThat(store.contents().snapshot().entries()).containsOnlyKeys(A);
            assertThat(store.pastOf(A)).hasSize(1);
            assertThatThrownBy(() -> store.append("Rename", "member", Instant.EPOCH, List.of(draft("Omega", 1))))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessage("the library may not be changed by you: its owner has let you read only");
        }
        refuses("insert into head (thing, revision) values ('b', 1)");
    }

    @Test
    void aReadersWindowsCanAskBeforehand() {
        grant(Access.READER);
        try (EditHistory history = new EditHistory(open(member), "member", Runnable::run, Clock.systemUTC())) {
            List<Change> rename = List.of(new Change.Put(A, Examples.plainDesign("Omega")));
            assertThat(history.faults(rename))
                    .extracting(fault -> fault.sentence())
                    .containsExactly("library: may only be looked at by you; expected its owner to let you edit it");
        }
    }

    @Test
    void aReadersEditIsNotMadeAndItIsSaid() {
        grant(Access.READER);
        try (EditHistory history = new EditHistory(open(member), "member", Runnable::run, Clock.systemUTC())) {
            Snapshot before = history.snapshot();
            List<Change> rename = List.of(new Change.Put(A, Examples.plainDesign("Omega")));
            assertThat(history.tryEdit("Rename", rename)).containsExactly(ONLY_LOOKED_AT);
            assertThat(history.tryEditFrom(before, "Rename", rename, Progress.NONE))
                    .contains(List.of(ONLY_LOOKED_AT));
            assertThat(history.bringBack(history.pastOf(A).get(0))).containsExactly(ONLY_LOOKED_AT);
            assertThat(history.undo()).isSameAs(before);
            assertThat(history.snapshot()).isSameAs(before);
        }
    }

    @Test
    void rightsTakenAndGivenWhileALibraryIsOpenAreNoticedAndTheEditIsKept() {
        grant(Access.EDITOR);
        try (EditHistory history = new EditHistory(open(member), "member", Runnable::run, Clock.systemUTC())) {
            List<StoringEvent> events = new ArrayList<>();
            history.onStoring(events::add);
            grant(Access.READER);
            history.edit("Rename", List.of(new Change.Put(A, Examples.plainDesign("Omega"))));
            assertThat(events)
                    .singleElement()
                    .isEqualTo(new StoringEvent.Failed(
                            "the library may not be changed by you: its owner has let you read only", 1));
            assertThat(history.access()).isEqualTo(Access.READER);
            assertThat(history.tryEdit("Rename again", List.of(new Change.Put(A, Examples.plainDesign("Psi")))))
                    .containsExactly(ONLY_LOOKED_AT);
            grant(Access.EDITOR);
            assertThat(history.flush(Duration.ofSeconds(20))).isTrue();
            assertThat(history.access()).isEqualTo(Access.EDITOR);
            assertThat(history.pastOf(A)).extracting(Revision::edit).containsExactly("Add a", "Rename");
        }
    }

    @Test
    void anEditorEditsButCannotTouchThePastOrTheTables() {
        grant(Access.EDITOR);
        try (LibraryStore store = open(member)) {
            assertThat(store.access()).isEqualTo(Access.EDITOR);
            assertThat(store.append("Rename", "member", Instant.EPOCH, List.of(draft("Omega", 1))))
                    .isInstanceOf(AppendResult.Appended.class);
            assertThat(store.pastOf(A)).extracting(Revision::who).containsExactly("owner", "member");
        }
        refuses("update revision set name = 'x'");
        refuses("delete from revision");
        refuses("delete from head");
        refuses("truncate edit cascade");
        refuses("drop trigger revision_stays on revision");
        refuses("create table other (name text)");
    }

    @Test
    void anEditorMadeAReaderAgainCannotEdit() {
        grant(Access.EDITOR);
        grant(Access.READER);
        try (LibraryStore store = open(member)) {
            assertThat(store.access()).isEqualTo(Access.READER);
        }
        refuses("insert into edit (edit, name, made_at, made_by) values (9, '', '', '')");
    }

    @Test
    void aUserTheServerDoesNotKnowIsNamed() {
        assertThat(ServerRoles.grant(owner, TestServer.password(), "nobody; drop table x", Access.EDITOR))
                .hasValueSatisfying(fault -> assertThat(fault.sentence())
                        .isEqualTo("user: found \"nobody; drop table x\"; expected a user the server knows"));
    }

    @Test
    void onlyTheOwnerGivesAndTakesRights() {
        grant(Access.EDITOR);
        assertThat(ServerRoles.grant(member, TestServer.password(), member.user(), Access.EDITOR))
                .hasValueSatisfying(fault -> assertThat(fault.sentence())
                        .isEqualTo("user: does not own the library; expected the one who made it to give rights"));
        assertThat(ServerRoles.revoke(member, TestServer.password(), member.user()))
                .hasValueSatisfying(fault -> assertThat(fault.what()).isEqualTo("does not own the library"));
    }

    private Optional<Member.Rights> rights() {
        Members members = ServerRoles.members(owner, TestServer.password());
        return ((Members.Listed) members)
                .members().stream()
                        .filter(each -> each.user().equals(member.user()))
                        .map(Member::rights)
                        .findFirst();
    }

    @Test
    void everyUserIsListedWithItsRights() {
        assertThat(rights()).contains(Member.Rights.NONE);
        grant(Access.READER);
        assertThat(rights()).contains(Member.Rights.READER);
        grant(Access.EDITOR);
        assertThat(rights()).contains(Member.Rights.EDITOR);
        Members.Listed asked = (Members.Listed) ServerRoles.members(owner, TestServer.password());
        assertThat(asked.mayGive()).isTrue();
        assertThat(asked.members()).first().isEqualTo(new Member(TestServer.OWNER, Member.Rights.OWNER));
        assertThat(asked.members()).extracting(Member::rights).isSorted();
    }

    @Test
    void whoMayReadMayAskWhoElseMayAndIsToldThatGivingIsNotAllowed() {
        grant(Access.READER);
        Members.Listed asked = (Members.Listed) ServerRoles.members(member, TestServer.password());
        assertThat(asked.mayGive()).isFalse();
        assertThat(asked.members()).contains(new Member(member.user(), Member.Rights.READER));
    }

    @Test
    void fromWhomAllIsTakenNothingIsLeftButThePast() {
        grant(Access.EDITOR);
        try (LibraryStore store = open(member)) {
            store.append("Rename", "member", Instant.EPOCH, List.of(draft("Omega", 1)));
        }
        assertThat(ServerRoles.revoke(owner, TestServer.password(), member.user()))
                .isEmpty();
        assertThat(rights()).contains(Member.Rights.NONE);
        assertThat(LibraryStore.open(member, TestServer.password(), JsonForms.forStore()))
                .isInstanceOfSatisfying(
                        OpenResult.Refused.class,
                        refused -> assertThat(refused.fault().sentence())
                                .isEqualTo(
                                        "user: may not read the library; expected its owner to let you read or edit it"));
        try (LibraryStore store = open(owner)) {
            assertThat(store.pastOf(A)).extracting(Revision::who).containsExactly("owner", "member");
        }
        TestServer.execute(owner, "drop owned by \"" + member.user().replace("\"", "\"\"") + '"');
    }

    @Test
    void theOwnersOwnRightsAreLeftAlone() {
        assertThat(ServerRoles.grant(owner, TestServer.password(), TestServer.OWNER, Access.READER))
                .hasValueSatisfying(fault -> assertThat(fault.sentence())
                        .isEqualTo("user: \"owner\" owns the library and may do everything; expected another user"));
        assertThat(ServerRoles.revoke(owner, TestServer.password(), TestServer.OWNER))
                .isPresent();
        try (LibraryStore store = open(owner)) {
            assertThat(store.access()).isEqualTo(Access.EDITOR);
        }
    }

    @Test
    void rightsThatComeFromAGroupAreNotTakenInVain() {
        String group = "group of " + owner.database();
        TestServer.execute(owner, "create role \"" + group + "\"");
        TestServer.execute(
                owner, "grant \"" + group + "\" to \"" + member.user().replace("\"", "\"\"") + '"');
        TestServer.execute(owner, "grant usage on schema taperwright to \"" + group + '"');
        TestServer.execute(owner, "grant select on all tables in schema taperwright to \"" + group + '"');
        assertThat(rights()).contains(Member.Rights.READER);
        assertThat(ServerRoles.revoke(owner, TestServer.password(), member.user()))
                .hasValueSatisfying(fault -> assertThat(fault.sentence())
                        .isEqualTo(
                                "user: \"" + member.user() + "\" would still be reader by a group that it belongs to;"
                                        + " expected whoever runs the server to take it out of the group"));
    }

    @Test
    void aDatabaseWithoutALibraryAndAServerOutOfReachAreSaid() {
        ServerSettings empty = TestServer.get().freshDatabase();
        assertThat(ServerRoles.members(empty, TestServer.password()))
                .isInstanceOfSatisfying(
                        Members.Refused.class,
                        refused -> assertThat(refused.fault().sentence())
                                .isEqualTo("database: holds no library; expected one"));
        assertThat(ServerRoles.revoke(empty, TestServer.password(), member.user()))
                .hasValueSatisfying(fault -> assertThat(fault.what()).isEqualTo("holds no library"));
        ServerSettings nowhere = new ServerSettings("127.0.0.1", 1, "library", "owner", ServerSettings.Encryption.NONE);
        assertThat(ServerRoles.members(nowhere, TestServer.password()))
                .isInstanceOfSatisfying(
                        Members.Refused.class,
                        refused -> assertThat(refused.fault().where()).isEqualTo("port"));
    }
}
