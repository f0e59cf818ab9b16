package org.taperwright.comparer.ui;

import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import org.jspecify.annotations.Nullable;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.ThingTransfer;

/** Takes designs dropped or pasted; of an instrument, the library design it was taken from, or its own. */
final class DesignDrop extends TransferHandler {
    private final transient Desk desk;
    private final transient Consumer<List<Member>> take;
    private final transient Supplier<String> copied;

    /**
     * Makes a handler.
     *
     * @param take receives the designs
     * @param copied what copying from the component gives; empty for nothing
     */
    DesignDrop(Desk desk, Consumer<List<Member>> take, Supplier<String> copied) {
        this.desk = desk;
        this.take = take;
        this.copied = copied;
    }

    @Override
    public int getSourceActions(JComponent source) {
        return COPY;
    }

    @Override
    protected @Nullable Transferable createTransferable(JComponent source) {
        String text = copied.get();
        return text.isEmpty() ? null : new StringSelection(text);
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(ThingTransfer.FLAVOUR);
    }

    @Override
    public boolean importData(TransferSupport support) {
        List<Member> members =
                ThingTransfer.from(support.getTransferable()).map(ThingTransfer::ids).orElse(List.of()).stream()
                        .map(this::member)
                        .flatMap(Optional::stream)
                        .toList();
        if (members.isEmpty()) {
            return false;
        }
        take.accept(members);
        return true;
    }

    /** The library's design; of a catalogue entry the one it was taken from, or else a copy of its own, new to the library. */
    private Optional<Member> member(ThingId id) {
        Optional<Instrument> instrument = desk.snapshot().thing(id, Instrument.class);
        ThingId design = instrument.flatMap(Instrument::designId).orElse(id);
        return desk.snapshot()
                .thing(design, Design.class)
                .map(found -> new Member(design, Optional.of(found)))
                .or(() -> instrument.map(entry -> new Member(
                        ThingId.fresh(),
                        Optional.of(
                                Designs.with(entry.design()).name(entry.name()).design()))));
    }
}
