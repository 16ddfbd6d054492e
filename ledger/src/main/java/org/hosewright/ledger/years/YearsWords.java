package org.hosewright.ledger.years;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hosewright.evidence.pool.BatchLoss;
import org.hosewright.evidence.pool.NightShare;
import org.hosewright.evidence.pool.Pool;
import org.hosewright.evidence.pool.PoolNight;
import org.hosewright.evidence.pool.PooledTerm;
import org.hosewright.evidence.pool.TypeLoss;
import org.hosewright.evidence.pool.YearDrift;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Ratio;

/** What all nights together say, in the words of pages and papers. */
public final class YearsWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    /** A night worth less of a number is not named. */
    private static final double LEAST_SHARE = 0.005;

    private final YearsReport report;
    private final QuantityShown shown;

    public YearsWords(YearsReport report) {
        this.report = report;
        shown = QuantityShown.of(report.kit().units());
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** A share in words: "40 %", "2.5 %", "−1 %". */
    static String percent(double share) {
        double percent = 100 * share;
        boolean fine = Math.abs(percent) < 10 && Math.abs(percent - Math.rint(percent)) > 0.05;
        return Numbers.fixed(percent, fine ? 1 : 0).replace('-', '\u2212') + " %";
    }

    /** Of how many nights, from when to when. */
    public String title() {
        if (report.pool().nights() == 0) {
            return "No night says anything of the hose yet";
        }
        LocalDate first = report.nights().get(0).date();
        LocalDate last = report.nights().get(report.nights().size() - 1).date();
        int count = report.pool().nights();
        String span = first.equals(last) ? day(last) : day(first) + " to " + day(last);
        return (count == 1 ? "1 night" : count + " nights together") + ", " + span;
    }

    /** The loss of a type, and how well another batch of it would be known. */
    public String type(TypeLoss type) {
        if (type.loss().isEmpty()) {
            return "not told by these nights";
        }
        return shown.withBand(type.loss().get());
    }

    /** What a batch that nobody flew yet is known by. */
    public Optional<String> findAnother(TypeLoss type) {
        return type.anotherBatch().map(known -> "A batch that was not flown: " + shown.withBand(known) + ".");
    }

    public String batch(BatchLoss batch) {
        return batch.loss().map(shown::withBand).orElse("not told by these nights");
    }

    /** The nights that flew a batch: "12 May 2026, 3 June 2027". */
    public String flownOn(BatchLoss batch) {
        return String.join(
                ", ",
                batch.nights().stream().map(id -> day(report.night(id).date())).toList());
    }

    /** What each night is worth to a type's number, as sentences; those worth next to nothing left out. */
    public List<String> listWorth(TypeLoss type) {
        List<String> worth = new ArrayList<>();
        for (NightShare share : type.worth()) {
            if (share.share() >= LEAST_SHARE) {
                NightFlown night = report.night(share.night());
                worth.add("The night of " + day(night.date()) + " (" + night.name() + ") is worth "
                        + percent(share.share()) + " of this number.");
            }
        }
        if (type.beliefShare() >= LEAST_SHARE) {
            worth.add("What was believed beforehand is worth " + percent(type.beliefShare()) + " of it.");
        }
        return worth;
    }

    /** What the nights say of a change over the years; empty where they cannot tell. */
    public Optional<String> findDrift(TypeLoss type) {
        YearDrift drift = type.drift();
        double half = QuantityShown.HALF_WIDTH * drift.standardError();
        double low = drift.perYear() - half;
        double high = drift.perYear() + half;
        return switch (drift.standing()) {
            case SHOWN ->
                Optional.of(type.type() + " loses " + percent(Math.abs(drift.perYear()))
                        + (drift.perYear() > 0 ? " more" : " less") + " each year, between "
                        + percent(Math.min(Math.abs(low), Math.abs(high))) + " and "
                        + percent(Math.max(Math.abs(low), Math.abs(high))) + ".");
            case NOT_SHOWN ->
                Optional.of("No drift of " + type.type() + " is shown: its loss changes by no less than " + percent(low)
                        + " and no more than " + percent(high) + " a year.");
            case CANNOT_TELL -> Optional.empty();
        };
    }

    /** What these nights cannot tell, and what would settle it. */
    public List<String> listWithheld() {
        List<String> withheld = new ArrayList<>();
        for (TypeLoss type : report.pool().types()) {
            if (type.loss().isEmpty()) {
                withheld.add("Loss of " + type.type()
                        + ": the nights have not halved what was in doubt beforehand; fly it at two lengths.");
            }
            if (type.drift().standing() == YearDrift.Standing.CANNOT_TELL) {
                withheld.add("Drift of " + type.type() + ": " + driftWhy(type));
            }
        }
        return withheld;
    }

    private String driftWhy(TypeLoss type) {
        boolean again = type.batches().stream().anyMatch(batch -> days(batch) > 1);
        if (again) {
            return "the nights so far would not show " + percent(type.drift().standardError() * 2)
                    + " a year; fly the batch flown longest ago again.";
        }
        return type.batches().size() > 1
                ? "each batch was flown on one day only, so that a change in time and a difference between batches look the same; fly an old batch again."
                : "it was flown on one day only; fly it again in a year.";
    }

    private long days(BatchLoss batch) {
        return batch.nights().stream()
                .map(id -> report.night(id).date())
                .distinct()
                .count();
    }

    /** How much batches and nights differ. */
    public List<String> listSpreads() {
        Pool pool = report.pool();
        if (pool.types().isEmpty()) {
            return List.of();
        }
        boolean batches = pool.types().stream().anyMatch(type -> type.batches().size() > 1);
        boolean nights = pool.types().stream()
                .flatMap(type -> type.batches().stream())
                .anyMatch(batch -> batch.nights().size() > 1);
        return List.of(
                "Batches of a type differ by about "
                        + percent(pool.batchSpread().value())
                        + (batches ? "." : ": believed, not seen, since no type was flown in two batches."),
                "The same hose differs from night to night by about "
                        + percent(pool.nightSpread().value())
                        + (nights ? "." : ": believed, not seen, since no batch was flown on two nights."));
    }

    /** Gauges, meters, piping and nozzles, as all nights together have them: name and number. */
    public String term(PooledTerm term) {
        return switch (term.kind()) {
            case GAUGE ->
                "reads off by "
                        + shown.withBand(Known.of(new Pressure(term.value()), new Pressure(term.standardError())));
            case METER ->
                "reads " + shown.change(Known.of(new Ratio(term.value()), new Ratio(term.standardError())))
                        + " against the true flow";
            case DISCHARGE ->
                "loses " + shown.withBand(Known.of(new PointLoss(term.value()), new PointLoss(term.standardError())));
            case NOZZLE ->
                "flows " + shown.change(Known.of(new Ratio(term.value()), new Ratio(term.standardError())))
                        + " against its rating";
        };
    }

    /** The nights that do not count, and why. */
    public List<String> listLeftOut() {
        return report.pool().leftOut().stream().map(this::leftOut).toList();
    }

    private String leftOut(PoolNight night) {
        NightFlown flown = report.night(night.id());
        return "The night of " + day(flown.date()) + " (" + flown.name() + ") does not count: " + night.leftOut() + ".";
    }
}
