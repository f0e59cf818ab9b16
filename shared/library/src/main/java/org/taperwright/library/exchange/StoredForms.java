package org.taperwright.library.exchange;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonText;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.Limits;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.ThingForms;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/** The exchange forms are what the store keeps. */
final class StoredForms implements ThingForms {
    @Override
    public List<Fault> faults(ThingId id, Record thing) {
        return JsonForms.faults(id, thing);
    }

    @Override
    public String write(ThingId id, Record thing) {
        return JsonForms.write(id, thing);
    }

    @Override
    public Content read(ThingKind kind, String text) {
        Optional<? extends Record> thing =
                JsonTokens.read(text, Limits.USUAL, in -> ThingForm.of(kind).straight(in));
        return thing.<Content>map(Content.Present::new).orElseGet(() -> readCarefully(kind, text));
    }

    /** Reads a text of which something is wrong, or that another program wrote in an order of its own. */
    private static Content readCarefully(ThingKind kind, String text) {
        FormReader reader = new FormReader("library", EnumSet.of(kind));
        List<ReadThing> things = reader.read(JsonText.parseWithoutPlaces(text, Limits.USUAL));
        List<Fault> faults = reader.faults().stream().map(FileFault::fault).toList();
        if (faults.isEmpty() && things.size() == 1) {
            return new Content.Present(things.get(0).thing());
        }
        return new Content.Unreadable(
                faults.isEmpty() ? List.of(Fault.impossible("file", "holds no thing", "expected one")) : faults);
    }
}
