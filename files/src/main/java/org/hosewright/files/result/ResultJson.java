package org.hosewright.files.result;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.calibration.Finding;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.LayWhatIf;
import org.hosewright.ledger.plan.PlanReport;
import org.hosewright.ledger.reach.PackageReach;
import org.hosewright.ledger.reach.ReachReport;
import org.hosewright.ledger.walk.WalkReport;
import org.hosewright.ledger.years.YearsReport;

/** Results as JSON: quantities in the kit's units with their standard errors; what does not exist is left out. */
public final class ResultJson {
    /** Strict both ways: a key given twice, an unknown one, a missing number or text behind the end is an error. */
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(StreamWriteFeature.STRICT_DUPLICATE_DETECTION)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private ResultJson() {}

    /** A test night's result. */
    public static String drill(DrillReport report) {
        return write(new DrillFields(report).map());
    }

    /** What the check of one typed row found. */
    public static String finding(Finding finding) {
        return write(DrillFields.finding(finding));
    }

    /** How far each package reaches. */
    public static String reach(ReachReport report) {
        UnitSystem units = report.kit().units();
        Map<String, Object> packages = new LinkedHashMap<>();
        report.packages().forEach(reach -> packages.put(reach.hosePackage().id(), pack(reach, units)));
        Fields fields = new Fields(units).put("units", units.word()).put("rise", report.rise());
        report.ceiling().ifPresent(ceiling -> fields.put("ceiling", ceiling));
        return write(fields.put("packages", packages)
                .put("assumed", report.assumed())
                .map());
    }

    /** A test night planned. */
    public static String plan(PlanReport report) {
        return write(new PlanFields(report).map());
    }

    /** What all nights together say. */
    public static String years(YearsReport report) {
        return write(new YearsFields(report).map());
    }

    /** A lay, solved. */
    public static String lay(LayReport report) {
        return write(new LayFields(report).map());
    }

    /** A lay, solved, with what may happen to it beside. */
    public static String lay(LayReport report, List<LayWhatIf> whatIf) {
        UnitSystem units = report.kit().units();
        Map<String, Object> fields = new LinkedHashMap<>(new LayFields(report).map());
        fields.put(
                "whatIf",
                whatIf.stream().map(one -> new WhatIfFields(one, units).map()).toList());
        return write(fields);
    }

    /** A way that was walked, with a mark at every section. */
    public static String walk(WalkReport report) {
        return write(new WalkFields(report).map());
    }

    /** Any object as one JSON document, with the settings that every document here has. */
    public static String write(Map<String, ?> object) {
        try {
            return MAPPER.writeValueAsString(object) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result that is no JSON", e);
        }
    }

    private static Map<String, Object> pack(PackageReach reach, UnitSystem units) {
        Fields fields = new Fields(units)
                .put("longest", reach.result().longest())
                .put("sections", reach.result().sections())
                .put("stoppedBy", reach.result().stoppedBy())
                .put("longestSafe", reach.result().longestSafe());
        reach.result().mostPump().ifPresent(pump -> fields.put("mostPump", pump));
        return fields.putAll("workings", DrillFields.workings(reach.workings()))
                .put("cautions", reach.cautions())
                .map();
    }
}
