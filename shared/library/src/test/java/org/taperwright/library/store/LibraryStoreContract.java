package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestDatabase;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.exchange.LibraryBundle;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/** What every store does, whatever database it is on. */
abstract class LibraryStoreContract {
    private static final Instant NOON = Instant.parse("2031-05-06T12:00:00.123456Z");
    private static final ThingId ID = new ThingId("one");

    private TestDatabase database;
    private LibraryStore store;

    /** A place for a new library. */
    abstract TestDatabase database();

    @BeforeEach
    void openNew() {
        database = database();
        store = database.open();
    }

    @AfterEach
    void close() {
        store.close();
    }

    private AppendResult put(ThingId id, Record thing, long basedOn) {
        return store.append(
                "Put " + id, "someone", NOON, List.of(new Draft(id, ThingKind.of(thing), Optional.of(thing), basedOn)));
    }

    @Test
    void aNewLibraryIsEmpty() {
        assertThat(store.contents().snapshot()).isEqualTo(new Snapshot(0, Map.of()));
    }

    @Test
    void everyKindOfThingIsThereAfterReopening() {
        Examples.bundle().items().forEach(item -> put(item.id(), item.thing(), 0));
        store.close();
        store = database.open();
        Snapshot snapshot = store.contents().snapshot();
        assertThat(snapshot.revision()).isEqualTo(Examples.all().size());
        for (LibraryBundle.Item item : Examples.bundle().items()) {
            assertThat(snapshot.entry(item.id())).hasValueSatisfying(entry -> {
                assertThat(entry.thing()).isEqualTo(item.thing());
                assertThat(entry.edit()).isEqualTo("Put " + item.id());
                assertThat(entry.at()).isEqualTo(NOON);
            });
        }
    }

    @Test
    void theEarlierThingStaysInThePast() {
        put(ID, Examples.plainDesign("First"), 0);
        put(ID, Examples.plainDesign("Second"), 1);
        assertThat(store.pastOf(ID))
                .extracting(Revision::revision, Revision::content, Revision::who)
                .containsExactly(
                        tuple(1L, new Content.Present(Examples.plainDesign("First")), "someone"),
                        tuple(2L, new Content.Present(Examples.plainDesign("Second")), "someone"));
        assertThat(store.contents().snapshot().entry(ID).map(Entry::name)).contains("Second");
    }

    @Test
    void aThingTakenOutIsGoneFromThePresentButNotFromThePast() {
        put(ID, Examples.plainDesign("First"), 0);
        store.append("Take out", "someone", NOON, List.of(new Draft(ID, ThingKind.DESIGN, Optional.empty(), 1)));
        assertThat(store.contents().snapshot().entries()).isEmpty();
        assertThat(store.contents().heads()).containsEntry(ID, 2L);
        assertThat(store.pastOf(ID)).extracting(Revision::content).last().isEqualTo(new Content.TakenOut());
        assertThat(put(ID, Examples.plainDesign("Back"), 2)).isInstanceOf(AppendResult.Appended.class);
    }

    @Test
    void theLaterOfTwoWritersIsToldAndShownBoth() {
        put(ID, Examples.plainDesign("Theirs"), 0);
        AppendResult result = put(ID, Examples.plainDesign("Mine"), 0);
        assertThat(result).isInstanceOfSatisfying(AppendResult.Conflicting.class, conflicting -> {
            Clash clash = conflicting.clashes().get(0);
            assertThat(clash.mine().thing()).contains(Examples.plainDesign("Mine"));
            assertThat(clash.theirs().content()).isEqualTo(new Content.Present(Examples.plainDesign("Theirs")));
        });
        assertThat(store.pastOf(ID)).hasSize(1);
    }

    @Test
    void anEditOfManyThingsIsStoredWholeOrNotAtAll() {
        put(ID, Examples.plainDesign("Theirs"), 0);
        AppendResult result = store.append(
                "Both",
                "someone",
                NOON,
                List.of(
                        new Draft(new ThingId("other"), ThingKind.MOTOR, Optional.of(Examples.motor()), 0),
                        new Draft(ID, ThingKind.DESIGN, Optional.of(Examples.plainDesign("Mine")), 0)));
        assertThat(result).isInstanceOf(AppendResult.Conflicting.class);
        assertThat(store.contents().snapshot().entries()).containsOnlyKeys(ID);
    }

    @Test
    void aFailureInTheMiddleLeavesNothingBehind() {
        Draft first = new Draft(ID, ThingKind.DESIGN, Optional.of(Examples.design()), 0);
        Draft second = new Draft(new ThingId("two"), ThingKind.DESIGN, Optional.of(Examples.design()), 0);
        ThingForms spoiling = new ThingForms() {
            @Override
            public List<Fault> faults(ThingId id, Record thing) {
                return List.of();
            }

            @Override
            public String write(ThingId id, Record thing) {
                return id.equals(ID) ? JsonForms.write(id, thing) : "no JSON at all";
            }

            @Override
            public Content read(ThingKind kind, String text) {
                return new Content.TakenOut();
            }
        };
        try (LibraryStore spoilt = ((OpenResult.Opened) database.open(spoiling)).store()) {
            assertThatThrownBy(() -> spoilt.append("Both", "someone", NOON, List.of(first, second)))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("a form must be JSON");
        }
        assertThat(store.contents().heads()).isEmpty();
        assertThat(store.pastOf(ID)).isEmpty();
    }

    @Test
    void whatWasStoredSinceARevisionIsFound() {
        put(ID, Examples.plainDesign("First"), 0);
        put(ID, Examples.plainDesign("Second"), 1);
        put(new ThingId("two"), Examples.motor(), 0);
        assertThat(store.since(1)).extracting(Revision::revision).containsExactly(2L, 3L);
    }

    @Test
    void thePastCannotBeChangedEvenByOtherPrograms() {
        put(ID, Examples.plainDesign("First"), 0);
        assertThatThrownBy(() -> database.execute("update revision set name = 'x'"))
                .hasMessageContaining("never changed");
        assertThatThrownBy(() -> database.execute("delete from revision")).hasMessageContaining("never deleted");
        assertThatThrownBy(() -> database.execute("update edit set name = 'x'")).hasMessageContaining("never changed");
        assertThatThrownBy(() -> database.execute("delete from edit")).hasMessageContaining("never deleted");
    }

    @Test
    void anEditSentAgainIsStoredOnce() {
        EditToken token = EditToken.fresh();
        List<Draft> drafts = List.of(
                new Draft(ID, ThingKind.DESIGN, Optional.of(Examples.design()), 0),
                new Draft(new ThingId("two"), ThingKind.MOTOR, Optional.of(Examples.motor()), 0));
        AppendResult first = store.append(token, "Both", "someone", NOON, drafts);
        assertThat(store.append(token, "Both", "someone", NOON, drafts))
                .isEqualTo(first)
                .isEqualTo(new AppendResult.Appended(List.of(1L, 2L)));
        assertThat(store.pastOf(ID)).hasSize(1);
    }

    @Test
    void anEditOfVeryManyThingsKeepsTheirOrder() {
        List<Draft> drafts = IntStream.range(0, 1300)
                .mapToObj(i -> new Draft(
                        new ThingId("t" + i), ThingKind.DESIGN, Optional.of(Examples.plainDesign("Name " + i)), 0))
                .toList();
        AppendResult.Appended result = (AppendResult.Appended) store.append("Many", "someone", NOON, drafts);
        assertThat(store.contents().heads())
                .hasSize(1300)
                .containsEntry(new ThingId("t777"), result.revisions().get(777));
        List<Draft> again = drafts.stream()
                .map(draft -> new Draft(draft.id(), draft.kind(), Optional.empty(), 0))
                .toList();
        assertThat(((AppendResult.Conflicting) store.append("Again", "someone", NOON, again)).clashes())
                .hasSize(1300);
    }

    @Test
    void whoOpensALibraryOfTheirOwnMayEdit() {
        assertThat(store.access()).isEqualTo(Access.EDITOR);
    }

    @Test
    void aThingWhoseFormIsSpoiltIsReportedAndTheRestOpens() {
        put(ID, Examples.plainDesign("First"), 0);
        database.execute("insert into revision (revision, edit, thing, kind, form, name, search_text)"
                + " values (2, 1, 'spoilt', 'design', '{}', '', '')");
        database.execute("insert into head (thing, revision) values ('spoilt', 2)");
        Contents contents = store.contents();
        assertThat(contents.snapshot().entries()).containsOnlyKeys(ID);
        assertThat(contents.unreadable()).singleElement().satisfies(revision -> {
            assertThat(revision.id()).isEqualTo(new ThingId("spoilt"));
            assertThat(((Content.Unreadable) revision.content()).faults().get(0).sentence())
                    .isEqualTo("form: is missing; expected \"taperwright/design\"");
        });
    }
}
