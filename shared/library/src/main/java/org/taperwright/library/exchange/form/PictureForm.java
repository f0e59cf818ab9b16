package org.taperwright.library.exchange.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.JsonTokens;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.library.exchange.json.Node;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.instrument.Picture;
import org.taperwright.shaping.instrument.PictureResult;
import org.taperwright.shaping.instrument.Pictures;

/** A PNG or JPEG file in Base64 (RFC 4648, section 4), within the limits of {@link Pictures}. */
record PictureForm() implements Form<Picture> {
    private static final int LONGEST = (Pictures.MOST_BYTES + 2) / 3 * 4;

    @Override
    public Optional<Picture> read(Node node, String path, Findings findings) {
        if (!(node instanceof Node.TextNode text)) {
            findings.refuse(node, path, "expected a picture in Base64, in double quotes");
            return Optional.empty();
        }
        PictureResult result = Pictures.ofBase64(text.value(), path);
        if (result instanceof PictureResult.Taken taken) {
            return Optional.of(taken.picture());
        }
        Fault fault = ((PictureResult.Refused) result).fault();
        findings.note(node.place(), fault);
        return Optional.empty();
    }

    @Override
    public Optional<Picture> straight(JsonTokens in) {
        return in.atText() && Pictures.ofBase64(in.text(), "") instanceof PictureResult.Taken taken
                ? Optional.of(taken.picture())
                : Optional.empty();
    }

    @Override
    public void write(Picture value, JsonWriter out) {
        out.text(value.base64());
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("contentEncoding", "base64");
        schema.put("pattern", "^[A-Za-z0-9+/]+={0,2}$");
        schema.put("maxLength", LONGEST);
        return schema;
    }
}
