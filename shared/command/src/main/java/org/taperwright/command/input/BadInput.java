package org.taperwright.command.input;

import java.util.List;
import org.taperwright.library.exchange.FileFault;

/** The input of a command is not usable; carries the sentences for the person who gave it. Ends with exit code 2. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> sentences;

    public BadInput(List<String> sentences) {
        super(String.join("; ", sentences), null, false, false);
        this.sentences = List.copyOf(sentences);
    }

    /** One thing wrong: what is there, and what was expected. */
    public static BadInput of(String what, String expected) {
        return new BadInput(List.of(what + "; " + expected));
    }

    /** What is wrong in files, each with its file, line, column and field. */
    public static BadInput in(List<FileFault> faults) {
        return new BadInput(faults.stream().map(FileFault::sentence).toList());
    }

    /** What is wrong, a sentence a line. */
    public List<String> sentences() {
        return sentences;
    }
}
