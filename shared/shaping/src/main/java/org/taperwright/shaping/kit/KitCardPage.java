package org.taperwright.shaping.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.MotorFit;

/** A kit card as one HTML text that needs nothing beside it: no script, no picture, no address. */
public final class KitCardPage {
    private static final String NONE = "–";
    private static final String STYLE = "body { font: 10pt/1.4 sans-serif; margin: 16mm; color: #1a1a1a }\n"
            + "h1 { font-size: 16pt; margin: 0 0 4px } h2 { font-size: 12pt; margin: 16px 0 4px }\n"
            + "table { border-collapse: collapse; width: 100% }\n"
            + "th, td { border-bottom: 1px solid #999; padding: 4px 8px 4px 0; text-align: left; vertical-align: top }\n"
            + "tr { break-inside: avoid }\n"
            + ".cautions { border: 1px solid #1a1a1a; padding: 8px 16px; margin-top: 16px; break-inside: avoid }\n"
            + "@media print { body { margin: 0 } }";

    private final KitCard card;
    private final Html html = new Html();

    private KitCardPage(KitCard card) {
        this.card = card;
    }

    /** The page of a card. */
    public static String of(KitCard card) {
        return new KitCardPage(card).page();
    }

    private String page() {
        html.raw("<!DOCTYPE html>").raw("<html lang=\"en\"><head><meta charset=\"utf-8\"/>");
        html.element("title", card.name()).raw("<style>\n" + STYLE + "\n</style></head><body>");
        html.element("h1", card.name());
        paragraph(card.purpose());
        html.element("p", "As of " + card.date() + ". Motor: " + card.motor().orElse("none chosen") + ".");
        pieces();
        discards();
        coverage();
        paragraph(card.note());
        html.raw("<div class=\"cautions\">");
        KitCard.CAUTIONS.forEach(caution -> html.element("p", caution));
        return html.raw("</div>").raw("</body></html>").finished();
    }

    private void paragraph(String words) {
        if (!words.isBlank()) {
            html.element("p", words);
        }
    }

    private void pieces() {
        html.element("h2", "Pieces in use");
        if (card.pieces().isEmpty()) {
            html.element("p", "None.");
            return;
        }
        html.raw("<table>");
        html.row(
                "th",
                List.of(
                        "Piece",
                        "Instrument",
                        "Size and taper",
                        "Length",
                        "Lot",
                        "Use by",
                        "Uses",
                        "Canals",
                        "Sterilised",
                        "Life spent (estimate)",
                        "Seen",
                        "Motor"));
        card.pieces().forEach(line -> html.row("td", cells(line)));
        html.raw("</table>");
    }

    private static List<String> cells(KitCard.Line line) {
        Piece piece = line.piece();
        return List.of(
                piece.id(),
                piece.designation(),
                line.entry()
                        .map(entry -> entry.designation()
                                + entry.colour()
                                        .map(SizeColour::word)
                                        .map(word -> " " + word)
                                        .orElse(""))
                        .orElse(NONE),
                line.entry().map(entry -> Shown.mm(entry.lengthMm())).orElse(NONE),
                piece.lot().isEmpty() ? NONE : piece.lot(),
                piece.expiry().map(LocalDate::toString).orElse(NONE),
                line.uses(),
                String.valueOf(piece.canals()),
                Counted.times(piece.sterilisations()),
                piece.lifeSpent().map(LifeSpent::text).orElse("not estimated"),
                piece.damage().isEmpty()
                        ? NONE
                        : piece.damage().stream().map(Damage::word).collect(Collectors.joining(", ")),
                line.entry()
                        .flatMap(KitCard.FromCatalogue::fit)
                        .map(KitCardPage::settings)
                        .orElse(NONE));
    }

    private static String settings(MotorFit fit) {
        if (!fit.drives()) {
            return fit.reasons().stream().map(Fault::what).collect(Collectors.joining("; "));
        }
        return fit.settings().orElse("not stated");
    }

    private void discards() {
        html.element("h2", "To discard, and why");
        if (card.discard().items().isEmpty()) {
            html.element("p", "No rule would have a piece discarded.");
        } else {
            html.raw("<table>").row("th", List.of("Piece", "", "Why", "Standing", "Source"));
            for (DiscardList.Item item : card.discard().items()) {
                for (DiscardReason reason : item.reasons()) {
                    html.row(
                            "td",
                            List.of(
                                    item.piece().id(),
                                    reason.weight().word(),
                                    reason.sentence(),
                                    reason.standing().map(each -> each.word()).orElse(NONE),
                                    reason.source()));
                }
            }
            html.raw("</table>");
        }
        card.discard().remarks().forEach(remark -> html.element("p", remark.what() + "."));
        if (!card.discarded().isEmpty()) {
            html.element("h2", "Discarded");
            html.raw("<table>").row("th", List.of("Piece", "Instrument", "When", "Why"));
            card.discarded()
                    .forEach(piece -> piece.discarded()
                            .ifPresent(gone -> html.row(
                                    "td",
                                    List.of(
                                            piece.id(),
                                            piece.designation(),
                                            gone.date().toString(),
                                            gone.reason()))));
            html.raw("</table>");
        }
    }

    private void coverage() {
        if (card.coverage().isEmpty()) {
            return;
        }
        html.element("h2", "Sequences it can serve");
        html.raw("<table>").row("th", List.of("Sequence", "Missing"));
        card.coverage()
                .forEach(each -> html.row(
                        "td", List.of(each.name(), each.complete() ? "nothing" : String.join("; ", each.missing()))));
        html.raw("</table>");
    }
}
