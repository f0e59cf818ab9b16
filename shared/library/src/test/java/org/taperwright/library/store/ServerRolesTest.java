package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestServer;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.EditHistory;
import org.taperwright.mechanics.design.ThingId;

class ServerRolesTest {
    private static final ThingId A = new ThingId("a");

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
            assertThatThrownBy(() -> history.edit("Rename", rename)).isInstanceOf(IllegalArgumentException.class);
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
    void theOwnerSeesWhoMayEditAndWhoMayLookAndWhoNothing() {
        assertThat(right()).isEqualTo(Member.Right.NONE);
        assertThat(members()).contains(new Member(owner.user(), Member.Right.OWNER));

        grant(Access.READER);
        assertThat(right()).isEqualTo(Member.Right.READER);
        grant(Access.EDITOR);
        assertThat(right()).isEqualTo(Member.Right.EDITOR);
        assertThat(members()).isSortedAccordingTo(Comparator.comparing(Member::right));
    }

    @Test
    void whoseRightsAreTakenCannotOpenTheLibraryAnyMore() {
        grant(Access.EDITOR);
        assertThat(ServerRoles.revoke(owner, TestServer.password(), member.user()))
                .isEmpty();

        assertThat(right()).isEqualTo(Member.Right.NONE);
        assertThat(LibraryStore.open(member, TestServer.password(), JsonForms.forStore()))
                .isInstanceOf(OpenResult.Refused.class);
        refuses("select * from taperwright.head");
    }

    @Test
    void onlyTheOwnerIsToldWhoMayUseItAndTakesRights() {
        grant(Access.EDITOR);
        assertThat(ServerRoles.members(member, TestServer.password()))
                .isInstanceOfSatisfying(
                        MembersResult.Refused.class,
                        refused -> assertThat(refused.fault().what()).isEqualTo("does not own the library"));
        assertThat(ServerRoles.revoke(member, TestServer.password(), owner.user()))
                .hasValueSatisfying(fault -> assertThat(fault.what()).isEqualTo("does not own the library"));
    }

    private List<Member> members() {
        return ((MembersResult.Listed) ServerRoles.members(owner, TestServer.password())).members();
    }

    private Member.Right right() {
        return members().stream()
                .filter(each -> each.user().equals(member.user()))
                .map(Member::right)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aUserTheServerDoesNotKnowIsNamed() {
        assertThat(ServerRoles.grant(owner, TestServer.password(), "nobody; drop table x", Access.EDITOR))
                .hasValueSatisfying(fault -> assertThat(fault.sentence())
                        .isEqualTo("user: found \"nobody; drop table x\"; expected a user the server knows"));
    }

    @Test
    void onlyTheOwnerGivesRights() {
        grant(Access.EDITOR);
        assertThat(ServerRoles.grant(member, TestServer.password(), member.user(), Access.EDITOR))
                .hasValueSatisfying(fault -> assertThat(fault.what()).isEqualTo("does not own the library"));
    }
}
