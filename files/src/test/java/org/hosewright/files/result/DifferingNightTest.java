package org.hosewright.files.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitAcceptance;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillReport;
import org.junit.jupiter.api.Test;

/** A night held against what the kit had before it. */
final class DifferingNightTest {
    /** What a night's number may move when the kit has taken it over [psi per 100 ft at 100 gpm]; its error is 0.3. */
    private static final double MOVED = 0.06;

    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);

    private static DrillReport report(String name, LocalDate day, KitDocument kit, String csv) throws Exception {
        List<Reading> readings = ReadingParser.parse(ReadingsFile.read(csv, name), kit.kit(), name);
        return DrillAnalysis.of(name, Optional.of(day), kit.kit(), readings, Map.of());
    }

    /** Steady readings on the example's line: so many psi per 100 ft, 1.5 psi of piping, each at 100 gpm, a true 7/8 in tip. */
    private static String steady(double loss, double scale) {
        StringBuilder rows = new StringBuilder(
                "reading,discharge,hose,length [ft],rise [ft],nozzle,pump [psi],tip [psi],flow [gpm],pump gauge,tip gauge,meter\n");
        int number = 0;
        for (int length_ft : new int[] {200, 350, 550, 750}) {
            for (int tip_psi : new int[] {35, 45, 50}) {
                number++;
                double hundreds = 29.7 * 49 / 64 * Math.sqrt(tip_psi) / 100;
                double pump_psi = tip_psi + (loss * length_ft / 100 + 1.5) * hundreds * hundreds;
                rows.append(number + ",crosslay-1,attack-175," + length_ft * scale + ",0,seven-eighths," + pump_psi
                        + "," + tip_psi + "," + 100 * hundreds + ",gauge-a,gauge-b,meter-1\n");
            }
        }
        return rows.toString();
    }

    private static KitDocument accepted() throws Exception {
        KitDocument kit = Examples.kit("drill-night.kit.yaml");
        DrillReport first = report("first", DAY, kit, steady(9.2, 1));
        assertThat(first.differing()).isEmpty();
        return KitAcceptance.of(kit, first).document();
    }

    @Test
    void anotherNightThatAgreesSaysNothingHolds() throws Exception {
        assertThat(report("second", DAY.plusMonths(2), accepted(), steady(9.4, 1))
                        .differing())
                .isEmpty();
    }

    @Test
    void anotherNightThatDiffersIsAFindingHolds() throws Exception {
        DrillReport night = report("second", DAY.plusMonths(2), accepted(), steady(12.4, 1));
        JsonNode found = new JsonMapper().readTree(ResultJson.drill(night)).at("/differing/0");
        assertThat(found.at("/what").asText()).isEqualTo("the loss of attack-175");
        assertThat(found.at("/kind").asText()).isEqualTo("cannot-tell");
        assertThat(found.at("/also").toString()).contains("night", "hose").doesNotContain("drift");
        assertThat(found.at("/says").asText())
                .contains(
                        "by the night first",
                        "32 % more",
                        "cannot tell whether the hose or this night's instruments or nozzle are behind it");
        assertThat(night.cautions().get(0)).startsWith("attack-175 loses").contains("Fly another hose");
    }

    @Test
    void theSameNightOnceMoreDoesNotDifferFromItselfHolds() throws Exception {
        KitDocument kit = accepted();
        DrillReport again = report("first", DAY, kit, steady(9.2, 1));
        assertThat(again.differing()).isEmpty();
        var before = report("first", DAY, Examples.kit("drill-night.kit.yaml"), steady(9.2, 1));
        var one = before.calibration().terms().hoses().get("attack-175");
        var other = again.calibration().terms().hoses().get("attack-175");
        assertThat(other.value().us()).isCloseTo(one.value().us(), within(MOVED));
        assertThat(again.assumed()).anyMatch(text -> text.contains("attack-175") && text.contains("within about 35 %"));
    }

    /** Lengths paced in metres under a head of feet: no physics forbids it, but the book does not go with it. */
    @Test
    void aLossFarFromItsBookAsksForTheUnitOfTheLengthsHolds() throws Exception {
        KitDocument kit = Examples.kit("drill-night.kit.yaml");
        DrillReport night = report("metres", DAY, kit, steady(9.2, 1 / 3.28084));
        assertThat(night.differing()).singleElement().satisfies(one -> {
            assertThat(one.kind()).isEqualTo("book");
            assertThat(one.says()).contains("more by this night than its book says");
            assertThat(one.check()).contains("lengths are in the unit that their column names");
        });
    }
}
