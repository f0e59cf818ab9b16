package org.taperwright.library.exchange;

import java.util.Optional;
import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.json.Node;

/** Checks the version of a form. */
final class Versions {
    private Versions() {}

    /** The object's version, if it is one that can be read; if not, why is among the findings. */
    static Optional<Integer> read(Node.ObjectNode node, String path, int newest, Findings findings) {
        String where = path.isEmpty() ? "version" : path + ".version";
        Node.Member member = node.members().get("version");
        if (member == null) {
            findings.refuse(node.place(), where, "is missing", "expected " + newest);
            return Optional.empty();
        }
        Optional<Integer> version = Forms.whole(1, Integer.MAX_VALUE).read(member.value(), where, findings);
        if (version.isPresent() && version.get() > newest) {
            findings.refuse(
                    member.value().place(),
                    where,
                    "found " + version.get() + ", written by a newer program",
                    "expected at most " + newest);
            return Optional.empty();
        }
        return version;
    }
}
