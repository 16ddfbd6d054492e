package org.hosewright.files.practice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.practice.KeptPractice;
import org.hosewright.ledger.practice.Problem;

/** A practice sheet as text: canonical JSON (RFC 8785), each length with its unit. The answers are not in it. */
public final class PracticeText {
    private static final int FORMAT = 1;
    private static final Set<String> KEYS = Set.of("format", "engine", "order", "problems");
    private static final Set<String> PROBLEM = Set.of("package", "length", "floors");

    private PracticeText() {}

    /** The text of a sheet.
     *
     * @param units that its lengths are written in
     */
    public static String write(KeptPractice practice, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("engine", practice.engine());
        tree.put("order", practice.order());
        tree.put(
                "problems",
                practice.problems().stream().map(one -> tree(one, units)).toList());
        return CanonicalJson.text(tree);
    }

    /** The sheet that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a practice sheet of this edition
     */
    public static KeptPractice read(String text) {
        JsonObject json = JsonObject.of(text, "practice").only(KEYS).edition(FORMAT);
        List<Problem> problems = json.objects("problems").stream()
                .map(one -> one.only(PROBLEM))
                .map(one ->
                        new Problem(one.text("package"), QuantityText.length(one.text("length")), one.number("floors")))
                .toList();
        return new KeptPractice(json.text("engine"), json.number("order"), problems);
    }

    private static Map<String, Object> tree(Problem problem, UnitSystem units) {
        return Map.of(
                "package",
                problem.hosePackage(),
                "length",
                QuantityShown.of(units).file(problem.length(), units.length()),
                "floors",
                problem.floors());
    }
}
