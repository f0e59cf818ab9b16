package org.taperwright.shaping.kit;

import java.util.List;

/** HTML text as it grows; whatever it is given as text is escaped, so no name can become markup. */
final class Html {
    private final StringBuilder text = new StringBuilder();

    /** Markup of our own. */
    Html raw(String markup) {
        text.append(markup).append('\n');
        return this;
    }

    /** An element that holds text. */
    Html element(String name, String content) {
        return raw('<' + name + '>' + escaped(content) + "</" + name + '>');
    }

    /** A table row of cells that hold text. */
    Html row(String cell, List<String> contents) {
        text.append("<tr>");
        contents.forEach(content -> text.append('<')
                .append(cell)
                .append('>')
                .append(escaped(content))
                .append("</")
                .append(cell)
                .append('>'));
        return raw("</tr>");
    }

    String finished() {
        return text.toString();
    }

    static String escaped(String content) {
        return content.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
