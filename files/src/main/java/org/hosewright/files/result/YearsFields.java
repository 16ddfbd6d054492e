package org.hosewright.files.result;

import java.util.Map;
import org.hosewright.evidence.pool.BatchLoss;
import org.hosewright.evidence.pool.NightShare;
import org.hosewright.evidence.pool.Pool;
import org.hosewright.evidence.pool.PooledTerm;
import org.hosewright.evidence.pool.Told;
import org.hosewright.evidence.pool.TypeLoss;
import org.hosewright.evidence.pool.YearDrift;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.years.NightFlown;
import org.hosewright.ledger.years.YearsReport;
import org.hosewright.ledger.years.YearsWords;

/** The keys of what all nights together say. */
final class YearsFields {
    private final YearsReport report;
    private final YearsWords words;
    private final UnitSystem units;

    YearsFields(YearsReport report) {
        this.report = report;
        this.words = new YearsWords(report);
        this.units = report.kit().units();
    }

    Map<String, Object> map() {
        Pool pool = report.pool();
        Fields fields = new Fields(units)
                .put("units", units.word())
                .put("title", words.title())
                .putAll("nights", report.nights().stream().map(this::night).toList())
                .putAll("types", pool.types().stream().map(this::type).toList())
                .putAll("shared", pool.terms().stream().map(this::term).toList());
        if (!pool.types().isEmpty()) {
            fields.put("batchSpread", told(pool.batchSpread())).put("nightSpread", told(pool.nightSpread()));
        }
        return fields.put("spreads", words.listSpreads())
                .put("withheld", words.listWithheld())
                .put("leftOut", words.listLeftOut())
                .put("assumed", report.assumed())
                .map();
    }

    private Map<String, Object> night(NightFlown night) {
        return new Fields(units)
                .put("night", night.id())
                .put("name", night.name())
                .put("date", night.date().toString())
                .put("readings", night.readings().size())
                .map();
    }

    private Map<String, Object> type(TypeLoss type) {
        Fields fields = new Fields(units)
                .put("type", type.type())
                .put("says", words.type(type))
                .put("loss", type.loss())
                .put("anotherBatch", type.anotherBatch());
        words.findAnother(type).ifPresent(says -> fields.put("anotherSays", says));
        fields.putAll("batches", type.batches().stream().map(this::batch).toList())
                .putAll("worth", type.worth().stream().map(this::worth).toList())
                .put("beliefShare", Fields.number(type.beliefShare()))
                .put("worthSays", words.listWorth(type));
        if (type.drift().standing() != YearDrift.Standing.CANNOT_TELL) {
            fields.put("drift", drift(type.drift()));
        }
        words.findDrift(type).ifPresent(says -> fields.put("driftSays", says));
        return fields.map();
    }

    private Map<String, Object> drift(YearDrift drift) {
        return new Fields(units)
                .put("shown", drift.standing() == YearDrift.Standing.SHOWN)
                .put("perYear", Fields.number(drift.perYear()))
                .put("standardError", Fields.number(drift.standardError()))
                .map();
    }

    private Map<String, Object> batch(BatchLoss batch) {
        return new Fields(units)
                .put("batch", batch.batch())
                .put("says", words.batch(batch))
                .put("loss", batch.loss())
                .put("nights", batch.nights())
                .put("flownOn", words.flownOn(batch))
                .map();
    }

    private Map<String, Object> worth(NightShare share) {
        return new Fields(units)
                .put("night", share.night())
                .put("share", Fields.number(share.share()))
                .map();
    }

    private Map<String, Object> told(Told told) {
        return new Fields(units)
                .put("value", Fields.number(told.value()))
                .put("standardError", Fields.number(told.deviation()))
                .map();
    }

    private Map<String, Object> term(PooledTerm term) {
        Fields fields = new Fields(units)
                .put("name", term.id())
                .put("nights", term.nights())
                .put("says", words.term(term));
        return switch (term.kind()) {
            case GAUGE -> known(fields, "offset", new Pressure(term.value()), new Pressure(term.standardError()));
            case METER -> known(fields, "factor", new Ratio(term.value()), new Ratio(term.standardError()));
            case DISCHARGE -> known(fields, "piping", new PointLoss(term.value()), new PointLoss(term.standardError()));
            case NOZZLE -> known(fields, "flowFactor", new Ratio(term.value()), new Ratio(term.standardError()));
        };
    }

    private static <Q extends Quantity> Map<String, Object> known(Fields fields, String key, Q value, Q error) {
        return fields.put(key, Known.of(value, error)).map();
    }
}
