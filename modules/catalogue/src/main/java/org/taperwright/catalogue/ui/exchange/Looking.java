package org.taperwright.catalogue.ui.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.csv.CsvFormat;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.ColumnMappings;
import org.taperwright.library.exchange.table.Known;
import org.taperwright.library.exchange.table.RowSink;
import org.taperwright.library.exchange.table.TablePreview;
import org.taperwright.library.exchange.table.TableReading;
import org.taperwright.library.exchange.table.TableRow;
import org.taperwright.library.exchange.text.TextSource;
import org.taperwright.library.exchange.transfer.ImportPlan;
import org.taperwright.library.exchange.transfer.Offer;
import org.taperwright.library.exchange.transfer.PlannedThing;
import org.taperwright.library.exchange.transfer.Standing;
import org.taperwright.library.exchange.transfer.TableOffer;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/**
 * Looks through a whole file, off the event thread, and plans what it would bring into a library.
 *
 * @param incoming the file
 * @param kept mappings kept from other tables
 * @param library the library as it stands
 */
record Looking(Incoming incoming, ColumnMappings kept, Snapshot library) implements Work<IncomingView> {
    private static final int ROWS_SAMPLED = 3;
    private static final int MOST_REJECTED = 2000;

    @Override
    public IncomingView run(Progress progress) {
        TextSource source = TextSource.of(incoming.file());
        if (incoming.forms()) {
            return planned(Offer.ofForms(source), Optional.empty(), Optional.empty(), List.of(), List.of(), progress);
        }
        Known known = Known.of(library);
        TablePreview preview = preview(source, known);
        if (preview instanceof TablePreview.Refused refused) {
            return IncomingView.refused(incoming, List.of(refused.fault()));
        }
        TablePreview.Shown shown = (TablePreview.Shown) preview;
        List<FileFault> rejected = new ArrayList<>();
        TableOffer offer =
                new TableOffer(new TableReading(source, shown.format(), known), shown.mapping(), collecting(rejected));
        List<String> samples = Samples.of(source, shown.format()).of(shown.mapping());
        return planned(offer, Optional.of(shown.format()), Optional.of(shown.mapping()), samples, rejected, progress);
    }

    private TablePreview preview(TextSource source, Known known) {
        Optional<CsvFormat> format = incoming.format();
        Optional<ColumnMapping> mapping = incoming.mapping();
        if (format.isPresent() && mapping.isPresent()) {
            return TablePreview.of(source, format.get(), mapping.get(), known, ROWS_SAMPLED);
        }
        TablePreview guessed = TablePreview.of(source, incoming.kind(), incoming.charset(), kept, known, ROWS_SAMPLED);
        if (format.isEmpty() || guessed instanceof TablePreview.Refused) {
            return guessed;
        }
        List<String> headings = Samples.of(source, format.get()).headings();
        ColumnMapping fitting =
                kept.find(incoming.kind(), headings).orElseGet(() -> ColumnMapping.guessed(incoming.kind(), headings));
        return TablePreview.of(source, format.get(), fitting, known, ROWS_SAMPLED);
    }

    private IncomingView planned(
            Offer offer,
            Optional<CsvFormat> format,
            Optional<ColumnMapping> mapping,
            List<String> samples,
            List<FileFault> rejected,
            Progress progress) {
        ImportPlan.Result result = ImportPlan.of(offer, library, progress);
        if (result instanceof ImportPlan.Refused refused) {
            return new IncomingView(incoming, format, mapping, samples, refused.faults(), List.of(), Optional.empty());
        }
        ImportPlan plan = ((ImportPlan.Planned) result).plan();
        return new IncomingView(incoming, format, mapping, samples, rejected, order(plan), Optional.of(plan));
    }

    private static List<ThingId> order(ImportPlan plan) {
        return plan.things().values().stream()
                .sorted(Comparator.comparingInt(Looking::rank))
                .map(PlannedThing::id)
                .toList();
    }

    private static int rank(PlannedThing thing) {
        return thing.contested() ? 0 : thing.standing() instanceof Standing.New ? 1 : 2;
    }

    private static RowSink collecting(List<FileFault> rejected) {
        return new RowSink() {
            @Override
            public void begin(String header) {
                rejected.clear();
            }

            @Override
            public void row(TableRow row) {
                if (row instanceof TableRow.Bad bad && rejected.size() < MOST_REJECTED) {
                    rejected.addAll(bad.faults());
                }
            }
        };
    }
}
