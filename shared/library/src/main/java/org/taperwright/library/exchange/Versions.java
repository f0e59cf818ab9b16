package org.taperwright.library.exchange;

import org.taperwright.library.exchange.form.Findings;
import org.taperwright.library.exchange.form.Forms;
import org.taperwright.library.exchange.json.Node;

/** Checks the version of a form. */
final class Versions {
    private Versions() {}

    /** Whether the object's version is one that can be read; if not, why is among the findings. */
    static boolean known(Node.ObjectNode node, String path, int newest, Findings findings) {
        String where = path.isEmpty() ? "version" : path + ".version";
        Node.Member member = node.members().get("version");
        if (member == null) {
            findings.refuse(node.place(), where, "is missing", "expected " + newest);
            return false;
        }
        var version = Forms.whole(1, Integer.MAX_VALUE).read(member.value(), where, findings);
        if (version.isPresent() && version.get() > newest) {
            findings.refuse(
                    member.value().place(),
                    where,
                    "found " + version.get() + ", written by a newer program",
                    "expected at most " + newest);
            return false;
        }
        return version.isPresent();
    }
}
