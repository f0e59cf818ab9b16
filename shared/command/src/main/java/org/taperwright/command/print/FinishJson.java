package org.taperwright.command.print;

import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.shaping.finish.ConeFit;
import org.taperwright.shaping.finish.Finish;
import org.taperwright.shaping.finish.NeedleReach;
import org.taperwright.shaping.finish.StiffNeedle.Assumed;

/** What a shaped canal lets in, as an object of a result. */
final class FinishJson {
    private final JsonWriter out;

    private final Banded banded;

    FinishJson(JsonWriter out, Banded banded) {
        this.out = out;
        this.banded = banded;
    }

    /** How deep one needle reaches. */
    static void needle(NeedleReach reach, JsonWriter out, Banded banded) {
        out.beginObject(false);
        out.name("gauge").text(reach.gauge().word());
        out.name("outerMm").number(reach.gauge().outerMm());
        out.name(Standing.COMPUTED.word()).beginObject(true);
        out.name("flexibleMm").number(reach.flexibleMm());
        out.name("besideMm").number(reach.besideMm()).endObject();
        if (banded.shown()) {
            out.name(Standing.INDEX.word()).beginObject(false);
            Banded.write(out, "stiffMm", reach.stiffMm(), reach.stiffBand());
            out.name("stoppedBy").text(reach.stop().word()).endObject();
        }
        out.endObject();
    }

    void write(Finish finish) {
        out.name("finish").beginObject(false);
        out.name(Standing.COMPUTED.word()).beginObject(false);
        out.name("endMm").number(finish.endMm());
        out.name("volumeBeforeMm3").number(finish.beforeMm3());
        out.name("volumeAfterMm3").number(finish.afterMm3());
        out.endObject();
        out.name("assumed").beginObject(false);
        Assumed usual = Assumed.USUAL;
        Assumed least = Assumed.LEAST;
        Assumed most = Assumed.MOST;
        Banded.write(out, "forceN", usual.forceN(), new Band(least.forceN(), most.forceN()));
        Banded.write(out, "strain", usual.strain(), new Band(least.strain(), most.strain()));
        Banded.write(out, "friction", usual.friction(), new Band(most.friction(), least.friction()));
        out.endObject();
        out.name("needles").beginList(finish.needles().isEmpty());
        finish.needles().forEach(reach -> needle(reach, out, banded));
        out.endList();
        out.name("cones").beginList(finish.cones().isEmpty());
        for (ConeFit fit : finish.cones()) {
            out.beginObject(false);
            out.name("size").number(fit.cone().size());
            out.name("taper").number(fit.cone().taper());
            out.name("toleranceMm").number(fit.cone().toleranceMm());
            out.name(Standing.COMPUTED.word()).beginObject(false);
            out.name("endGapMm").number(fit.endGapMm());
            out.name("roomAtTipMm").number(fit.nominal().gapMm());
            out.name("shareFilled").number(fit.shareFilled());
            out.name("widestDepthMm").number(fit.wide().depthMm());
            if (fit.wide().binds()) {
                out.name("widestHeldAtMm").number(fit.wide().bindDepthMm());
            }
            out.name("thinnestRoomAtTipMm").number(fit.thin().gapMm());
            out.endObject();
            out.endObject();
        }
        out.endList();
        out.endObject();
    }
}
