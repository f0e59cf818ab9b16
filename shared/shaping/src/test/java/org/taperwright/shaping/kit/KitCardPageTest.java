package org.taperwright.shaping.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.taperwright.shaping.kit.GivenKit.GONE;
import static org.taperwright.shaping.kit.GivenKit.HAND;
import static org.taperwright.shaping.kit.GivenKit.ROTARY;
import static org.taperwright.shaping.kit.GivenKit.TODAY;
import static org.taperwright.shaping.kit.GivenKit.piece;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class KitCardPageTest {
    private static final ThingId MOTOR = new ThingId("motor");

    private static Kit kit() {
        Piece worn = piece("b", ROTARY)
                .draft()
                .designation("Fen <30> & \"co\"")
                .lot("L7")
                .usesBefore(4)
                .sterilisations(3)
                .lifeSpentBefore(Optional.of(new LifeSpent(0.1, 0.2, 0.7)))
                .damage(List.of(Damage.BENT))
                .piece();
        Piece gone = piece("c", HAND)
                .draft()
                .discarded(Optional.of(new Discarding(TODAY, "blunt", false)))
                .piece();
        return new Kit(
                "Bench <kit>",
                "For & by us.",
                Optional.of(MOTOR),
                List.of(piece("a", HAND), worn, gone, piece("d", GONE)),
                "N.");
    }

    private static KitCard card(Kit kit) {
        Step step = new InstrumentStep(HAND, 20, Motion.FILING, Optional.empty(), Optional.empty(), 1, "");
        Step missing =
                new InstrumentStep(new ThingId("else"), 20, Motion.FILING, Optional.empty(), Optional.empty(), 1, "");
        Map<ThingId, Sequence> sequences = Map.of(
                new ThingId("s"), new Sequence("Both", Optional.empty(), Optional.empty(), List.of(step, missing), ""));
        return KitCards.of(
                kit,
                GivenKit.catalogue(),
                Map.of(MOTOR, Given.motor()),
                sequences,
                DiscardRules.all(DiscardRules.USUAL_LIFE_SHARE),
                TODAY);
    }

    /** Parsed by the Java library's XML parser: every element is closed and every sign escaped. */
    private static Document parsed(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static List<String> texts(Document page, String element) {
        NodeList nodes = page.getElementsByTagName(element);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }

    @Test
    void theCardHoldsThePiecesInUseWithWhatTheCatalogueSays() {
        KitCard card = card(kit());
        assertThat(card.motor()).contains("motor");
        assertThat(card.pieces()).extracting(line -> line.piece().id()).containsExactly("a", "b", "d");
        assertThat(card.pieces()).extracting(KitCard.Line::uses).containsExactly("0", "4 of 4", "0");
        assertThat(card.pieces()
                        .get(1)
                        .entry()
                        .orElseThrow()
                        .fit()
                        .orElseThrow()
                        .drives())
                .isTrue();
        assertThat(card.pieces().get(0).entry().orElseThrow().fit()).isEmpty();
        assertThat(card.pieces().get(2).entry()).isEmpty();
        assertThat(card.discarded()).extracting(Piece::id).containsExactly("c");
    }

    @Test
    void thePageIsWellFormedAndShowsWhatNamesHoldAsTheyAre() throws Exception {
        Document page = parsed(KitCardPage.of(card(kit())));
        assertThat(texts(page, "h1")).containsExactly("Bench <kit>");
        assertThat(texts(page, "p")).contains("For & by us.", "As of 2026-06-15. Motor: motor.", "N.");
        assertThat(texts(page, "td"))
                .containsSubsequence(
                        "a", "hand-25", "25/.02 red", "25 mm", "–", "–", "0", "0", "0 times", "not estimated", "–", "–")
                .containsSubsequence(
                        "b",
                        "Fen <30> & \"co\"",
                        "30/.06 blue",
                        "25 mm",
                        "L7",
                        "–",
                        "4 of 4",
                        "0",
                        "3 times",
                        "20 % (10 to 70 %)",
                        "bent",
                        "250 rpm to 350 rpm, 1 N·cm to 2.5 N·cm")
                .containsSubsequence("b", "discard", "Used 4 times; its maker allows 4.", "–")
                .containsSubsequence("b", "consider", "estimate", "common practice, no source")
                .containsSubsequence("c", "hand-25", "2026-06-15", "blunt")
                .containsSubsequence("Both", "else");
    }

    @Test
    void thePageShowsTheCautions() throws Exception {
        Document page = parsed(KitCardPage.of(card(kit())));
        assertThat(texts(page, "p")).containsAll(KitCard.CAUTIONS);
        assertThat(KitCard.CAUTIONS.get(0))
                .contains("do not replace the manufacturer's instructions, local rules or licensed clinical judgement");
        assertThat(KitCardPage.of(card(kit()))).doesNotContainPattern("(?i)\\bsafe");
    }

    @Test
    void thePageNeedsNothingBesideItAndRunsNothing() {
        assertThat(KitCardPage.of(card(kit()))).doesNotContainPattern("(?i)<script|<img|<link|href=|src=|url\\(|http");
    }

    @Test
    void anEmptyKitHasACardToo() throws Exception {
        Kit empty = new Kit("Empty", "", Optional.empty(), List.of(), "");
        Document page = parsed(KitCardPage.of(card(empty)));
        assertThat(texts(page, "p"))
                .contains("None.", "No rule would have a piece discarded.", "As of 2026-06-15. Motor: none chosen.");
    }
}
