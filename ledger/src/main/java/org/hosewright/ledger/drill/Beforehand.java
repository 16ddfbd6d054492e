package org.hosewright.ledger.drill;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.evidence.pool.Disagreement;
import org.hosewright.evidence.pool.Disagreement.Cause;
import org.hosewright.evidence.pool.Disagreement.Seen;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.line.KitLines;

/** Holds a night's hose losses against what the kit had of them: from another night, or from a book. */
final class Beforehand {
    /** A loss so many times its book's, or so many times less, is worth a second look: about 1.7 deviations of what books leave open. */
    private static final double FAR = 1.8;

    private static final double DAYS_A_YEAR = 365.25;

    private final String name;
    private final Optional<LocalDate> date;
    private final Kit kit;
    private final Map<String, Known<HoseLoss>> tonight;

    Beforehand(String name, Optional<LocalDate> date, Kit kit, Map<String, Known<HoseLoss>> tonight) {
        this.name = name;
        this.date = date;
        this.kit = kit;
        this.tonight = tonight;
    }

    List<Differing> list() {
        List<Differing> differing = new ArrayList<>();
        List<Seen> seen = new ArrayList<>();
        tonight.forEach((id, loss) -> {
            HoseRecord held = kit.hoses().get(id);
            if (held != null && held.basis().kind() != Basis.Kind.TEST) {
                findFar(id, held, loss).ifPresent(differing::add);
            } else if (held != null && !isOwn(held, name, date)) {
                seen.add(seen(id, held, loss));
            }
        });
        Disagreement.find(seen).ifPresent(found -> differing.add(0, differing(found)));
        return differing;
    }

    /** True where the kit took a hose's number over from this very night, under its name or with its date behind it. */
    static boolean isOwn(HoseRecord held, String name, Optional<LocalDate> date) {
        String night = held.basis().night();
        return held.basis().kind() == Basis.Kind.TEST
                && (night.equals(name)
                        || date.map(day -> night.equals(name + "-" + day)).orElse(false));
    }

    private Seen seen(String id, HoseRecord held, Known<HoseLoss> loss) {
        Known<HoseLoss> before = held.hose().loss();
        double change = change(before, loss);
        double one = before.standardErrorSi() / before.value().si();
        double other = loss.standardErrorSi() / loss.value().si();
        return new Seen(id, change, Math.sqrt(one * one + other * other), years(held.basis()));
    }

    private static double change(Known<HoseLoss> before, Known<HoseLoss> now) {
        return Math.log(now.value().si() / before.value().si());
    }

    private double years(Basis basis) {
        Optional<LocalDate> then =
                Optional.ofNullable(kit.evidence().get(basis.night())).flatMap(NightRecord::date);
        return date.isPresent() && then.isPresent() ? ChronoUnit.DAYS.between(then.get(), date.get()) / DAYS_A_YEAR : 0;
    }

    private Differing differing(Disagreement found) {
        String hose = found.hose().hose();
        HoseRecord held = KitLines.get(kit.hoses(), hose, "hose");
        QuantityShown shown = QuantityShown.of(kit.units());
        String says = hose + " loses " + shown.withBand(KitLines.get(tonight, hose, "hose")) + " by this night, "
                + shown.withBand(held.hose().loss()) + " by the night "
                + held.basis().night() + ": "
                + percent(found.hose().change()) + ", more than the errors of both nights explain; " + cause(found);
        String kind = found.told() ? word(found.cause()) : "cannot-tell";
        List<Cause> all = new ArrayList<>(found.also());
        if (!found.told()) {
            all.add(0, found.cause());
        }
        return new Differing(
                "the loss of " + hose, kind, all.stream().map(Beforehand::word).toList(), says, check(found));
    }

    private static String cause(Disagreement found) {
        if (!found.told()) {
            List<Cause> open = new ArrayList<>(found.also());
            open.add(found.cause());
            return "the readings cannot tell whether "
                    + String.join(
                            " or ",
                            Stream.of(Cause.HOSE, Cause.NIGHT, Cause.DRIFT)
                                    .filter(open::contains)
                                    .map(Beforehand::noun)
                                    .toList())
                    + " are behind it";
        }
        return switch (found.cause()) {
            case NIGHT -> "all hoses measured before are off alike, so it is rather the night than the hose";
            case HOSE -> "the other hoses are as they were, so it is rather this hose than the night";
            case DRIFT -> "a slow change over the years between explains it";
        };
    }

    private static String check(Disagreement found) {
        if (!found.told()) {
            return "Fly another hose that was measured before on the same night with the same instruments: off alike, it is the night.";
        }
        return switch (found.cause()) {
            case NIGHT ->
                "Look at the nozzle and its bore, and at the meter and the gauges, against another instrument.";
            case HOSE -> "See whether it is the hose that is written, and look at its liner; count its sections.";
            case DRIFT -> "Fly it again within the year; until then the number of this night is the one to use.";
        };
    }

    private Optional<Differing> findFar(String id, HoseRecord held, Known<HoseLoss> loss) {
        double change = change(held.hose().loss(), loss);
        if (Math.abs(change) < Math.log(FAR)) {
            return Optional.empty();
        }
        String says = id + " loses " + percent(change) + " by this night than its "
                + (held.basis().kind() == Basis.Kind.ESTIMATE
                        ? "estimate"
                        : held.basis().kind().word())
                + " says, which hardly any hose does";
        return Optional.of(
                new Differing(
                        "the loss of " + id,
                        "book",
                        List.of(),
                        says,
                        "See whether the lengths are in the unit that their column names, and whether it is the hose that is written."));
    }

    private static String percent(double change) {
        double percent = 100 * (Math.exp(Math.abs(change)) - 1);
        double less = 100 * (1 - Math.exp(-Math.abs(change)));
        return Numbers.plain(Numbers.toNearest(change > 0 ? percent : less, 1)) + " % "
                + (change > 0 ? "more" : "less");
    }

    private static String noun(Cause cause) {
        return switch (cause) {
            case NIGHT -> "this night's instruments or nozzle";
            case HOSE -> "the hose";
            case DRIFT -> "the years between";
        };
    }

    private static String word(Cause cause) {
        return switch (cause) {
            case NIGHT -> "night";
            case HOSE -> "hose";
            case DRIFT -> "drift";
        };
    }
}
