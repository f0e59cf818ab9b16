package org.taperwright.kit.ui;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.taperwright.mechanics.design.IsoSizes;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.Piece;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.SizeChip;
import org.taperwright.workbench.ui.Spacing;

/** The pieces of a kit, those in use first; what a discard rule has to say of one stands as a word. */
final class PiecesTable extends JTable {
    private static final int ROOM = 8;

    private final Rows rows;
    private final transient TableCellRenderer life = new LifeCell();
    private final transient TableCellRenderer words = new WordCell();

    /** A column: heading and what it says of a piece. */
    private enum Column {
        SIZE("Size", "Size, taper and colour by ISO 3630-1; from the catalogue", 90),
        PIECE("Piece", "What tells it from the kit's other pieces", 150),
        INSTRUMENT("Instrument", "Its entry in the catalogue", 190),
        LOT("Lot", "Its lot", 80),
        EXPIRY("Expiry", "Last day on which it may be used", 90),
        USES("Uses", "Uses logged and before the log, of those the maker allows", 64),
        CANALS("Canals", "Canals shaped in the logged uses", 64),
        STERILISED("Sterilised", "How many times it was sterilised", 76),
        LIFE("Life spent (estimate)", "Estimated share of its fatigue life spent, with its band", 190),
        SEEN("Seen", "Damage seen on it", 110),
        STATE("Status", "What the discard rules say of it", 190);

        private final String title;
        private final String explanation;
        private final int width;

        Column(String title, String explanation, int width) {
            this.title = title;
            this.explanation = explanation;
            this.width = width;
        }
    }

    PiecesTable() {
        super();
        rows = new Rows();
        setModel(rows);
        setName("kit.pieces");
        getAccessibleContext().setAccessibleName("Pieces of the kit");
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        if (getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(JLabel.LEADING);
        }
        for (Column column : Column.values()) {
            getColumnModel().getColumn(column.ordinal()).setPreferredWidth(column.width);
        }
        fitRows();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        fitRows();
    }

    private void fitRows() {
        setRowHeight(getFontMetrics(getFont()).getHeight() + ROOM);
    }

    /** Shows a reading, keeping the pieces selected. */
    void show(KitReading reading) {
        List<String> selected = selectedPieces();
        rows.show(reading);
        clearSelection();
        for (int row = 0; row < rows.pieces.size(); row++) {
            if (selected.contains(rows.pieces.get(row).id())) {
                addRowSelectionInterval(row, row);
            }
        }
    }

    /** The identifiers of the pieces selected. */
    List<String> selectedPieces() {
        List<String> ids = new ArrayList<>();
        for (int row : getSelectedRows()) {
            ids.add(rows.pieces.get(row).id());
        }
        return ids;
    }

    @Override
    public TableCellRenderer getCellRenderer(int row, int column) {
        return column == Column.LIFE.ordinal() ? life : words;
    }

    @Override
    protected javax.swing.table.JTableHeader createDefaultTableHeader() {
        return new javax.swing.table.JTableHeader(getColumnModel()) {
            @Override
            public String getToolTipText(java.awt.event.MouseEvent event) {
                int column = columnAtPoint(event.getPoint());
                return column < 0 ? "" : Column.values()[column].explanation;
            }
        };
    }

    /** The pieces, those in use first, as the table's rows. */
    private static final class Rows extends AbstractTableModel {
        private transient Optional<KitReading> reading = Optional.empty();
        private transient List<Piece> pieces = List.of();

        void show(KitReading shown) {
            reading = Optional.of(shown);
            pieces = shown.kit().pieces().stream()
                    .sorted(Comparator.comparing(piece -> piece.discarded().isPresent()))
                    .toList();
            fireTableDataChanged();
        }

        Optional<Instrument> entry(Piece piece) {
            return reading.map(read -> read.catalogue().get(piece.instrument()));
        }

        PieceState state(Piece piece) {
            return reading.map(read -> read.state(piece)).orElse(PieceState.IN_USE);
        }

        @Override
        public int getRowCount() {
            return pieces.size();
        }

        @Override
        public int getColumnCount() {
            return Column.values().length;
        }

        @Override
        public String getColumnName(int column) {
            return Column.values()[column].title;
        }

        @Override
        public Object getValueAt(int row, int column) {
            Piece piece = pieces.get(row);
            return switch (Column.values()[column]) {
                case SIZE ->
                    entry(piece).map(each -> Designation.of(each).text()).orElse("not in the catalogue");
                case PIECE -> piece.id();
                case INSTRUMENT -> piece.designation();
                case LOT -> piece.lot();
                case EXPIRY -> piece.expiry().map(Object::toString).orElse("");
                case USES -> uses(piece);
                case CANALS -> Integer.toString(piece.canals());
                case STERILISED -> Integer.toString(piece.sterilisations());
                case LIFE -> piece.lifeSpent().map(LifeSpent::text).orElse("not estimated");
                case SEEN -> piece.damage().stream().map(Damage::word).collect(Collectors.joining(", "));
                case STATE ->
                    piece.discarded()
                            .map(gone -> PieceState.DISCARDED.word() + " " + gone.date())
                            .orElse(state(piece).word());
            };
        }

        private String uses(Piece piece) {
            int allowed = entry(piece).map(Instrument::usesAllowed).orElse(0);
            return allowed > 0 ? piece.uses() + " of " + allowed : Integer.toString(piece.uses());
        }
    }

    /** Words, with the chip before a size and the state in a colour that only repeats its word. */
    private final class WordCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            Piece piece = rows.pieces.get(row);
            PieceState state = rows.state(piece);
            setBorder(Spacing.around(0, Spacing.TIGHT));
            setIcon(null);
            setToolTipText(String.valueOf(value));
            if (column == Column.SIZE.ordinal()) {
                rows.entry(piece).map(Designation::of).ifPresent(read -> {
                    String colour = read.colour().map(SizeColour::word).orElse("no colour in the standard");
                    setIcon(new SizeChip(colour));
                    getAccessibleContext().setAccessibleName("size " + IsoSizes.text(read.size()) + ", " + colour);
                });
            }
            if (column == Column.STATE.ordinal()) {
                setToolTipText(reasons(piece));
            }
            if (!selected) {
                setForeground(colour(state, column));
            }
            return this;
        }

        private Color colour(PieceState state, int column) {
            boolean stated = column == Column.STATE.ordinal();
            return switch (state) {
                case IN_USE -> getTableForeground();
                case CONSIDER -> stated ? Ink.unusual() : getTableForeground();
                case DUE -> stated ? Ink.fault() : getTableForeground();
                case DISCARDED -> Ink.quiet();
            };
        }

        private Color getTableForeground() {
            return PiecesTable.this.getForeground();
        }

        private String reasons(Piece piece) {
            return piece.discarded()
                    .map(gone -> gone.reason())
                    .orElseGet(() -> rows.reading.stream()
                            .flatMap(read -> read.card().discard().items().stream())
                            .filter(item -> item.piece().id().equals(piece.id()))
                            .flatMap(item -> item.reasons().stream())
                            .map(reason -> reason.sentence())
                            .collect(Collectors.joining(" ")));
        }
    }

    /** The estimated share as text over a small bar: the band translucent, the estimate as a line. */
    private final class LifeCell extends DefaultTableCellRenderer {
        private transient Optional<LifeSpent> spent = Optional.empty();

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            Piece piece = rows.pieces.get(row);
            spent = piece.lifeSpent();
            setBorder(Spacing.around(0, Spacing.TIGHT));
            int without = piece.usesWithoutEstimate();
            setToolTipText("Estimate with its band; an instrument may break with any share of it left."
                    + (without == 0 ? "" : " " + without + " of " + piece.uses() + " uses are not in it."));
            if (!selected) {
                setForeground(spent.isPresent() ? PiecesTable.this.getForeground() : Ink.quiet());
            }
            return this;
        }

        @Override
        protected void paintComponent(java.awt.Graphics graphics) {
            super.paintComponent(graphics);
            spent.ifPresent(share -> LifeBar.paint(graphics, share, getWidth(), getHeight()));
        }
    }
}
