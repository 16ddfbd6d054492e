package org.hosewright.files.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.trial.TrialKey;

/** The key of a blind trial as text: canonical JSON (RFC 8785). */
public final class TrialKeyText {
    private static final int FORMAT = 1;

    private TrialKeyText() {}

    public static String write(TrialKey key) {
        return CanonicalJson.text(Map.of("format", FORMAT, "key", tree(key.kinds()), "code", key.codeHash()));
    }

    /** The key that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a key of this edition
     */
    public static TrialKey read(String text) {
        JsonObject json =
                JsonObject.of(text, "key").only(Set.of("format", "key", "code")).edition(FORMAT);
        return new TrialKey(kinds(json), json.text("code"));
    }

    static List<Map<String, String>> tree(Map<String, String> kinds) {
        return kinds.entrySet().stream()
                .map(one -> Map.of("label", one.getKey(), "kind", one.getValue()))
                .toList();
    }

    static Map<String, String> kinds(JsonObject json) {
        Map<String, String> kinds = new LinkedHashMap<>();
        json.objects("key").stream()
                .map(one -> one.only(Set.of("label", "kind")))
                .forEach(one -> kinds.put(one.text("label"), one.text("kind")));
        return kinds;
    }
}
