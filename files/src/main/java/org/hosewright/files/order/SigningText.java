package org.hosewright.files.order;

import java.util.Map;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.order.SigningRule;

/** How many people an order takes, as text: canonical JSON (RFC 8785). */
public final class SigningText {
    private static final int FORMAT = 1;

    private SigningText() {}

    public static String write(SigningRule rule) {
        return CanonicalJson.text(Map.of("format", FORMAT, "signers", rule.signers()));
    }

    /** The rule that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a rule of this edition
     */
    public static SigningRule read(String text) {
        JsonObject json =
                JsonObject.of(text, "signing").only(Set.of("format", "signers")).edition(FORMAT);
        return new SigningRule(json.number("signers"));
    }
}
