package org.hosewright.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.pool.BatchLoss;
import org.hosewright.evidence.pool.TypeLoss;
import org.hosewright.ledger.years.YearsReport;
import org.hosewright.ledger.years.YearsWords;

/** What all nights together say, in plain text. */
public final class YearsText {
    private YearsText() {}

    public static List<String> of(YearsReport years) {
        YearsWords words = new YearsWords(years);
        Report report = new Report();
        report.title(years.kit().company() + ": " + words.title());
        report.table("Hose, as of the last night", hoses(years, words));
        List<String> drifts = new ArrayList<>();
        for (TypeLoss type : years.pool().types()) {
            List<String> worth = new ArrayList<>(words.listWorth(type));
            words.findAnother(type).ifPresent(worth::add);
            report.list("What " + type.type() + " rests on", type.loss().isPresent() ? worth : List.of());
            words.findDrift(type).ifPresent(drifts::add);
        }
        report.list("Over the years", drifts);
        report.list("What differs", words.listSpreads());
        Columns terms = new Columns("", "", "nights");
        years.pool().terms().forEach(term -> terms.add(term.id(), words.term(term), String.valueOf(term.nights())));
        report.table("Gauges, meters, piping and nozzles, all nights together", terms);
        report.list("What these nights cannot tell", words.listWithheld());
        report.list("Left out", words.listLeftOut());
        report.list("Assumed", years.assumed());
        return report.lines();
    }

    private static Columns hoses(YearsReport years, YearsWords words) {
        Columns hoses = new Columns("hose", "loses", "flown on");
        for (TypeLoss type : years.pool().types()) {
            hoses.add(type.type(), words.type(type), "all of it");
            for (BatchLoss batch : type.batches()) {
                hoses.add("  " + batch.batch(), words.batch(batch), words.flownOn(batch));
            }
        }
        return hoses;
    }
}
