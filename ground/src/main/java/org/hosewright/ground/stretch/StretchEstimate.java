package org.hosewright.ground.stretch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** The hose to take for a stretch: whole sections, and a range.
 *
 * @param plan what it is made of
 * @param parts every part with its hose, stairs and slack included, the reserve last
 * @param needed hose that the stretch takes at the company's factor, without the reserve
 * @param sections to take, reserve included
 * @param fewest sections that do where all goes well, reserve included
 * @param most sections that do in 39 of 40 stretches, reserve included
 * @param assumed what the result rests on without evidence, as sentences
 */
public record StretchEstimate(
        StretchPlan plan,
        List<StretchPart> parts,
        Known<Length> needed,
        int sections,
        int fewest,
        int most,
        List<String> assumed) {
    /** A length this much shorter than whole sections counts as whole [1]: the last digits of a conversion. */
    private static final double WHOLE = 1e-9;

    public StretchEstimate {
        parts = List.copyOf(parts);
        assumed = List.copyOf(assumed);
    }

    /** The estimate of a plan.
     *
     * @param factor hose used over hose planned, as the company has learnt it; absent where it has no stretch yet
     */
    public static StretchEstimate of(StretchPlan plan, Optional<StretchFactor> factor) {
        List<StretchPart> parts = parts(plan);
        double sum_m = 0;
        double variance_m2 = 0;
        for (StretchPart part : parts) {
            sum_m += part.length().value().metres();
            variance_m2 += part.length().standardErrorSi() * part.length().standardErrorSi();
        }
        StretchFactor known = factor.orElse(StretchFactor.UNLEARNT);
        double share = sum_m > 0 ? variance_m2 / (sum_m * sum_m) : 0;
        double logError = Math.sqrt(known.logSpread() * known.logSpread() + share);
        double needed_m = sum_m * known.median();
        double low_m = needed_m * Math.exp(-QuantityShown.HALF_WIDTH * logError);
        double high_m = needed_m * Math.exp(QuantityShown.HALF_WIDTH * logError);
        if (plan.reserveSections() > 0) {
            Length kept = new Length(plan.reserveSections() * plan.section().metres());
            parts.add(StretchPart.of(PartKind.RESERVE, kept));
        }
        return new StretchEstimate(
                plan,
                parts,
                Known.of(new Length(needed_m), new Length(needed_m * logError)),
                whole(plan, needed_m),
                whole(plan, low_m),
                whole(plan, high_m),
                assumed(plan, factor));
    }

    /** Whole length of hose to take. */
    public Length hose() {
        return new Length(sections * plan.section().metres());
    }

    private static int whole(StretchPlan plan, double needed_m) {
        double sections = needed_m / plan.section().metres();
        return (int) Math.ceil(sections * (1 - WHOLE)) + plan.reserveSections();
    }

    private static List<StretchPart> parts(StretchPlan plan) {
        List<StretchPart> parts = new ArrayList<>(plan.parts());
        plan.stairs().ifPresent(stairs -> {
            Length hose = stairs.hose(plan.section());
            parts.add(new StretchPart(
                    PartKind.STAIRS, Known.of(hose), stairs.rule().says()));
        });
        if (plan.slack().length().metres() > 0) {
            parts.add(StretchPart.of(PartKind.SLACK, plan.slack().length()));
        }
        return parts;
    }

    private static List<String> assumed(StretchPlan plan, Optional<StretchFactor> factor) {
        List<String> assumed = new ArrayList<>();
        if (factor.isEmpty()) {
            assumed.add("No stretch of the company has been recorded as planned and used: the range is that of"
                    + " any company, from common practice.");
        }
        if (plan.reserveSections() == 0) {
            assumed.add("No section is kept in reserve.");
        }
        if (plan.parts().stream().noneMatch(part -> part.kind() == PartKind.WORKING)) {
            assumed.add("No working length at the fire is counted.");
        }
        return assumed;
    }
}
