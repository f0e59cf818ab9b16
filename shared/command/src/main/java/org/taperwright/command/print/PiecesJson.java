package org.taperwright.command.print;

import java.util.Optional;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.kit.CarriedLife;
import org.taperwright.shaping.kit.CarriedPiece;
import org.taperwright.shaping.kit.LifeSpent;

/** The pieces of a kit that a sequence takes and their fatigue life, as a list of a result. */
final class PiecesJson {
    private final JsonWriter out;

    PiecesJson(JsonWriter out) {
        this.out = out;
    }

    void write(CarriedLife life) {
        out.name("pieces").beginList(life.pieces().isEmpty());
        life.pieces().forEach(this::piece);
        out.endList();
        out.name("stepsWithoutPiece").beginList(true);
        life.without().forEach(place -> out.number(place + 1));
        out.endList();
    }

    private void piece(CarriedPiece carried) {
        out.beginObject(false);
        out.name("piece").text(carried.piece().id());
        out.name("steps").beginList(true);
        carried.places().forEach(place -> out.number(place + 1));
        out.endList();
        out.name("uses").number(carried.piece().uses());
        out.name("usesWithoutEstimate").number(carried.piece().usesWithoutEstimate());
        out.name("limit").number(carried.limit());
        out.name(Standing.INDEX.word()).beginObject(false);
        spent("lifeSpentBefore", carried.piece().lifeSpent());
        spent("lifeSpentInThisCanal", Optional.of(carried.inOneCanal()));
        spent("lifeSpentAfter", Optional.of(carried.after()));
        out.endObject();
        carried.canalsLeft(false).ifPresent(left -> out.name("canalsLeft").number(left));
        carried.canalsLeft(true)
                .ifPresent(left -> out.name("canalsLeftAtTheUpperEnd").number(left));
        carried.passesIn().ifPresent(place -> out.name("passesLimitInStep").number(place + 1));
        String remark = PiecesText.remark(carried);
        if (!remark.isEmpty()) {
            out.name("remark").text(remark);
        }
        out.endObject();
    }

    private void spent(String name, Optional<LifeSpent> spent) {
        spent.ifPresent(share -> Banded.write(out, name, share.central(), new Band(share.low(), share.high())));
    }
}
