package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each example's kit and lay written in psi, feet and gallons and again in kPa, metres and litres: one answer. */
class UnitsOfLaysTest {
    /** Sixteen digits of each converted number, through a solve that ends at its last digits [1]. */
    private static final double SAME = 1e-9;

    /** SI units with the exact factor of each. @source NIST Special Publication 811, appendix B */
    private static final Map<String, String> FACTORS = Map.of(
            "psi", "6.894757293168361 kPa",
            "ft", "0.3048 m",
            "gpm", "3.785411784 L/min",
            "gal", "3.785411784 L",
            "lbf", "4.4482216152605 N",
            "in", "25.4 mm");

    private static final Pattern QUANTITY = Pattern.compile(
            "(?<![\\w-])(\\d+ \\d+/\\d+|\\d+/\\d+|-?\\d+(?:\\.\\d+)?)( ± ([\\d.]+))? (psi|ft|gpm|gal|lbf|in|F)\\b");

    private static final Pattern US_UNIT = Pattern.compile("\\d (psi|ft|gpm|gal|lbf|in|F|ft/s)\\b");

    private static final Pattern WHOLE = Pattern.compile("(\\d+) (\\d+)/(\\d+)|(\\d+)/(\\d+)");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "garden-court.two-lines",
                "hill-road.relay",
                "hill-road.siamese",
                "hill-road.standpipe",
                "hill-road.foam",
                "hill-road.draft"
            })
    void unitsOfTheFileAgree(String name) {
        String kit = Examples.text(name.substring(0, name.indexOf('.')) + ".kit.yaml");
        String lay = Examples.text(name + ".lay.yaml");
        String metricLay = metric(lay);
        assertThat(metricLay).doesNotContain(" psi").doesNotContain(" ft").doesNotContain(" gpm");
        LayReport us = report(kit, lay);
        LayReport si = report(metric(kit).replace("units: us", "units: si"), metricLay);
        same(us.pump().value().si(), si.pump().value().si());
        same(us.pump().standardErrorSi(), si.pump().standardErrorSi());
        same(us.state().flow().si(), si.state().flow().si());
        assertThat(si.intake().isPresent()).isEqualTo(us.intake().isPresent());
        us.intake()
                .ifPresent(intake -> same(intake.si(), si.intake().orElseThrow().si()));
        tips(us, si);
        limits(us.limits(), si.limits());
        pieces(us.state().parts().pieces(), si.state().parts().pieces());
        assertThat(sentences(si)).noneMatch(says -> US_UNIT.matcher(says).find());
        assertThat(ResultJson.lay(si))
                .contains("kPa")
                .contains("L/min")
                .doesNotContain("\"unit\" : \"psi")
                .doesNotContain("\"unit\" : \"gpm");
    }

    private static List<String> sentences(LayReport report) {
        List<String> all = new ArrayList<>(report.outside());
        all.addAll(report.secondSays());
        all.addAll(report.cautions());
        all.addAll(report.assumed());
        report.limits().forEach(limit -> all.add(limit.rule(report.kit().units())));
        return all;
    }

    private static LayReport report(String kit, String lay) {
        Kit read = KitDocument.of(kit, "kit.yaml").kit();
        return LayReport.of(read, LayFile.readLaid(lay, read, "lay.yaml"), Optional.empty());
    }

    private static void tips(LayReport us, LayReport si) {
        assertThat(si.state().tips()).hasSameSizeAs(us.state().tips());
        for (AtTip tip : us.state().tips()) {
            AtTip other = si.state().getTip(tip.outlet().id());
            same(tip.state().tip().si(), other.state().tip().si());
            same(us.flowOf(tip).value().si(), si.flowOf(other).value().si());
            same(us.flowOf(tip).standardErrorSi(), si.flowOf(other).standardErrorSi());
            same(tip.state().reaction().si(), other.state().reaction().si());
        }
    }

    private static void limits(List<Limit> us, List<Limit> si) {
        assertThat(si).hasSameSizeAs(us);
        for (Limit limit : us) {
            assertThat(si).as(limit.what()).anySatisfy(other -> {
                assertThat(other.what()).isEqualTo(limit.what());
                same(limit.used(), other.used());
            });
        }
    }

    private static void pieces(List<Piece> us, List<Piece> si) {
        assertThat(si).hasSameSizeAs(us);
        for (int i = 0; i < us.size(); i++) {
            same(us.get(i).before().si(), si.get(i).before().si());
            same(us.get(i).still().si(), si.get(i).still().si());
        }
    }

    private static void same(double us, double si) {
        assertThat(si).isCloseTo(us, within(SAME * Math.max(1e-12, Math.abs(us))));
    }

    /** Each quantity of a text, in SI. */
    private static String metric(String text) {
        return QUANTITY.matcher(text).replaceAll(UnitsOfLaysTest::metric);
    }

    private static String metric(MatchResult found) {
        BigDecimal value = number(found.group(1));
        if (found.group(4).equals("F")) {
            return value.subtract(BigDecimal.valueOf(32))
                            .multiply(BigDecimal.valueOf(5))
                            .divide(BigDecimal.valueOf(9), MathContext.DECIMAL64)
                            .toPlainString()
                    + " C";
        }
        String[] to = FACTORS.get(found.group(4)).split(" ", -1);
        BigDecimal factor = new BigDecimal(to[0]);
        String error = found.group(3) == null
                ? ""
                : " ± "
                        + new BigDecimal(found.group(3))
                                .multiply(factor)
                                .round(MathContext.DECIMAL64)
                                .toPlainString();
        return value.multiply(factor).round(MathContext.DECIMAL64).toPlainString() + error + " " + to[1];
    }

    private static BigDecimal number(String text) {
        var fraction = WHOLE.matcher(text);
        if (!fraction.matches()) {
            return new BigDecimal(text);
        }
        boolean mixed = fraction.group(1) != null;
        BigDecimal over = new BigDecimal(fraction.group(mixed ? 2 : 4));
        BigDecimal part = over.divide(new BigDecimal(fraction.group(mixed ? 3 : 5)), MathContext.DECIMAL64);
        return mixed ? part.add(new BigDecimal(fraction.group(1))) : part;
    }
}
