package org.taperwright.catalogue.ui.entry;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.instrument.Picture;
import org.taperwright.shaping.instrument.PictureResult;
import org.taperwright.shaping.instrument.Pictures;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/** An instrument's picture, with buttons to take another from a file and to remove it. Files are read off the event thread. */
final class PictureField extends JPanel {
    private static final int HEIGHT = 96;

    private final transient Desk desk;
    private final Shown shown = new Shown();
    private final Prose fault = new Prose("", Ink::fault, true);
    private final JButton remove = new JButton("Remove");
    private transient Optional<Picture> picture = Optional.empty();
    private transient Consumer<Optional<Picture>> commit = value -> {};

    PictureField(Desk desk) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.desk = desk;
        setName("instrument.picture");
        setOpaque(false);
        JButton choose = new JButton("From file…");
        choose.setName("instrument.picture.choose");
        choose.setToolTipText("A PNG or JPEG file of at most 64 KiB");
        choose.addActionListener(event -> choose());
        remove.setName("instrument.picture.remove");
        remove.addActionListener(event -> commit.accept(Optional.empty()));
        fault.setName("instrument.picture.fault");
        fault.setVisible(false);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        buttons.setOpaque(false);
        buttons.add(choose);
        buttons.add(javax.swing.Box.createHorizontalStrut(Spacing.NEAR));
        buttons.add(remove);
        JPanel below = new JPanel(new BorderLayout(0, Spacing.TIGHT));
        below.setOpaque(false);
        below.add(fault, BorderLayout.NORTH);
        below.add(buttons, BorderLayout.CENTER);
        add(shown, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
        show(Optional.empty());
    }

    /** Receives the picture chosen, or none when it was removed. */
    PictureField onCommit(Consumer<Optional<Picture>> listener) {
        commit = listener;
        return this;
    }

    /** Shows a picture. */
    void show(Optional<Picture> now) {
        remove.setEnabled(now.isPresent());
        if (now.equals(picture) && shown.image.isPresent() == now.isPresent()) {
            return;
        }
        picture = now;
        shown.show(Optional.empty());
        say("");
        now.ifPresent(each -> desk.compute(shown, "Reading the picture", progress -> decoded(each), outcome -> {
            if (outcome instanceof Outcome.Current<Optional<BufferedImage>> current) {
                shown.show(current.value());
                say(current.value().isPresent() ? "" : "The picture is damaged; take another");
            }
        }));
    }

    private static Optional<BufferedImage> decoded(Picture picture) {
        try {
            return Optional.ofNullable(ImageIO.read(new ByteArrayInputStream(picture.file())));
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException damaged) {
            return Optional.empty();
        }
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter("Pictures (PNG, JPEG)", "png", "jpg", "jpeg"));
        if (chooser.showOpenDialog(this) == JFileChooser.APPROVE_OPTION) {
            take(chooser.getSelectedFile().toPath());
        }
    }

    /** Takes a file as the picture, or says why not. */
    void take(Path file) {
        desk.compute(this, "Reading the picture", progress -> read(file), outcome -> {
            if (outcome instanceof Outcome.Current<PictureResult> current) {
                if (current.value() instanceof PictureResult.Taken taken) {
                    commit.accept(Optional.of(taken.picture()));
                } else if (current.value() instanceof PictureResult.Refused refused) {
                    Fault why = refused.fault();
                    say(file.getFileName() + " " + why.what() + "; " + why.expected());
                }
            }
        });
    }

    private static PictureResult read(Path file) {
        try {
            long size = Files.size(file);
            return size > Pictures.MOST_BYTES
                    ? new PictureResult.Refused(Fault.impossible(
                            "picture", "has " + size + " bytes", "expected at most " + Pictures.MOST_BYTES))
                    : Pictures.of(Files.readAllBytes(file), "picture");
        } catch (IOException unreadable) {
            return new PictureResult.Refused(Fault.impossible("picture", "cannot be read", "expected a readable file"));
        }
    }

    private void say(String words) {
        fault.setText(words);
        fault.setVisible(!words.isEmpty());
        revalidate();
    }

    /** The picture itself, fitted in. */
    private static final class Shown extends JComponent {
        private transient Optional<BufferedImage> image = Optional.empty();

        void show(Optional<BufferedImage> now) {
            image = now;
            setVisible(now.isPresent());
            revalidate();
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(HEIGHT, HEIGHT);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            image.ifPresent(drawn -> {
                double fit = Math.min(
                        1, Math.min((double) getWidth() / drawn.getWidth(), (double) getHeight() / drawn.getHeight()));
                Graphics2D g = (Graphics2D) graphics.create();
                g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
                g.drawImage(
                        drawn,
                        0,
                        0,
                        (int) Math.round(drawn.getWidth() * fit),
                        (int) Math.round(drawn.getHeight() * fit),
                        null);
                g.dispose();
            });
        }
    }
}
