package org.taperwright.library.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.taperwright.library.Examples;
import org.taperwright.library.TestDatabase;
import org.taperwright.mechanics.design.ThingId;

/** What every search finds, whatever database it is on. */
abstract class SearchContract {
    private static final ThingId PLAIN = new ThingId("plain");

    private LibraryStore store;

    /** A place for a new library. */
    abstract TestDatabase database();

    @BeforeEach
    void fill() {
        store = database().open();
        Examples.bundle().items().forEach(item -> put(item.id(), item.thing()));
        put(PLAIN, Examples.plainDesign("100%_plain! ÉTUDE"));
    }

    private void put(ThingId id, Record thing) {
        store.append(
                "Add", "someone", Instant.EPOCH, List.of(new Draft(id, ThingKind.of(thing), Optional.of(thing), 0)));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void everythingIsFoundByName() {
        assertThat(store.find(Search.all()))
                .hasSize(Examples.bundle().items().size() + 1)
                .first()
                .isEqualTo(PLAIN);
    }

    @Test
    void kindAlloyFamilyMotionAndSizeNarrowTheSearch() {
        assertThat(store.find(Search.all().ofKind(ThingKind.DESIGN))).containsExactly(PLAIN, Examples.DESIGN_ID);
        assertThat(store.find(Search.all().withAlloy("stainless-steel"))).containsExactly(PLAIN);
        assertThat(store.find(Search.all().withFamily("scalloped")))
                .containsExactly(Examples.DESIGN_ID, Examples.INSTRUMENT_ID);
        assertThat(store.find(Search.all().withMotion("reaming"))).containsExactly(PLAIN);
        assertThat(store.find(Search.all().withSizes(25, 25))).hasSize(3);
        assertThat(store.find(Search.all().withSizes(26, 140))).isEmpty();
    }

    @Test
    void allWordsMustStandInTheText() {
        assertThat(store.find(Search.all().withText("marshlight rotary"))).containsExactly(Examples.INSTRUMENT_ID);
        assertThat(store.find(Search.all().withText("marshlight nowhere"))).isEmpty();
        assertThat(store.find(Search.all().withText("étude"))).containsExactly(PLAIN);
        assertThat(store.find(Search.all().withText("tern light"))).containsExactly(Examples.MOTOR_ID);
        assertThat(store.find(Search.all().withText("common ranges"))).containsExactly(Examples.CANAL_ID);
        assertThat(store.find(Search.all().withText("every kind invented"))).containsExactly(Examples.SEQUENCE_ID);
        assertThat(store.find(Search.all().withText("by itself"))).containsExactly(Examples.COMPARISON_ID);
    }

    @Test
    void signsThatTheDatabaseTakesAsWildcardsAreSoughtAsTheyAre() {
        assertThat(store.find(Search.all().withText("0%_p"))).containsExactly(PLAIN);
        assertThat(store.find(Search.all().withText("n!"))).containsExactly(PLAIN);
        assertThat(store.find(Search.all().withText("' or 1=1 --"))).isEmpty();
        assertThat(store.find(Search.all().withText("0__p"))).isEmpty();
    }

    @Test
    void whatWasTakenOutIsNotFound() {
        store.append(
                "Take out",
                "someone",
                Instant.EPOCH,
                List.of(new Draft(
                        PLAIN,
                        ThingKind.DESIGN,
                        Optional.empty(),
                        Examples.bundle().items().size() + 1)));
        assertThat(store.find(Search.all().withText("plain"))).isEmpty();
    }
}
