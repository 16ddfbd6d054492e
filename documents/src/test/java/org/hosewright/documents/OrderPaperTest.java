package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderedLine;
import org.junit.jupiter.api.Test;

/** The order on paper says what the order says. */
final class OrderPaperTest {
    /** Printed flows are whole gallons [gpm]. */
    private static final double WHOLE_GPM = 0.6;

    private static final Pattern ROW = Pattern.compile("(\\d+) ft none (\\d+) psi (\\d+) gpm (\\d+) psi (\\d+) lbf");

    private static final OrderInFull ORDER = Samples.order();

    // Smooth bore Q = 29.7 d^2 sqrt(p); loss = C (Q/100)^2 (L/100): the trade's coefficient form.
    @Test
    void everyPrintedPressureGivesThePrintedFlowAgrees() {
        OrderedLine line = ORDER.set().lines().stream()
                .filter(one -> one.hosePackage().equals("crosslay-1-200"))
                .findFirst()
                .orElseThrow();
        var kit = ORDER.kit();
        double c = kit.hoses().get("attack-175").hose().loss().value().us();
        double k = kit.engines()
                .get("engine-41")
                .engine()
                .getDischarge("crosslay-1")
                .lossOrNone()
                .us();
        String text = new Pdf(Papers.order(ORDER, Stamp.UNSIGNED)).text();
        int from = text.indexOf("Each floor up", text.indexOf("Crosslay 1 200"));
        Matcher row = ROW.matcher(text.substring(from, text.indexOf("Each floor up", from + 1)));
        int rows = 0;
        while (row.find()) {
            double length_ft = Double.parseDouble(row.group(1));
            double pump_psi = Double.parseDouble(row.group(2));
            double tip = 1e4 / Math.pow(29.7 * 0.875 * 0.875, 2);
            double flow_gpm = 100 * Math.sqrt(pump_psi / (tip + k + c * length_ft / 100));
            assertThat(Double.parseDouble(row.group(3))).as(row.group()).isEqualTo(flow_gpm, within(WHOLE_GPM));
            rows++;
        }
        assertThat(rows).isEqualTo((int)
                line.pressures().stream().filter(pressure -> pressure.stands()).count());
    }

    @Test
    void orderInForceBearsItsSignatureAndNothingAcrossHolds() {
        String text = new Pdf(Papers.order(ORDER, Stamp.inForce(1, "Chief Arden", "14 May 2026"))).text();
        assertThat(text)
                .contains("ORDER 1, SIGNED", "Signed by Chief Arden on 14 May 2026")
                .doesNotContain("NOT FOR USE");
    }

    @Test
    void safety03StaleAndWithdrawnOrdersSayIt() {
        assertThat(new Pdf(Papers.order(ORDER, Stamp.stale(1, "The hose attack-175 changed."))).text())
                .contains("ORDER 1, STALE", "The hose attack-175 changed.");
        for (String standing : List.of("superseded", "withdrawn")) {
            assertThat(new Pdf(Papers.order(ORDER, Stamp.past(1, standing))).text())
                    .contains("ORDER 1, " + standing.toUpperCase(Locale.ROOT), "do not pump by it");
        }
    }

    @Test
    void squareCodeOfEveryPageReadsBackHolds() throws IOException {
        var code = new SheetCode(12, "engine-41+engine-42", "3f2a90c1");
        byte[] sheet = Papers.order(
                ORDER, Stamp.inForce(12, "Chief Arden", "14 May 2026").bearing(code));
        Pdf pdf = new Pdf(sheet);
        for (int page = 0; page < 2; page++) {
            var photograph = new ByteArrayOutputStream();
            ImageIO.write(pdf.picture(page, 300), "png", photograph);
            assertThat(SheetCode.find(photograph.toByteArray())).contains(code);
        }
        assertThat(pdf.faults("3a")).isEmpty();
        assertThat(pdf.faults("ua1")).isEmpty();
        assertThat(code.text()).doesNotContain("http").doesNotContain("/");
    }

    @Test
    void codeOfACountysSheetNamesAllItsEnginesAndStaysSmallHolds() {
        List<String> engines =
                IntStream.rangeClosed(1, 50).mapToObj(i -> "engine-" + i).toList();
        SheetCode county = SheetCode.ofEngines(12, engines, "3f2a90c1");
        assertThat(county.text()).hasSizeLessThan(100);
        assertThat(engines).allMatch(SheetCode.parse(county.text())::isOf);
        SheetCode two = SheetCode.parse(
                SheetCode.ofEngines(12, engines.subList(0, 2), "3f2a90c1").text());
        assertThat(engines).filteredOn(two::isOf).containsExactly("engine-1", "engine-2");
    }

    @Test
    void somethingElseThanAnOrdersCodeRefused() {
        for (String text : List.of("", "https://example.org", "HOSEWRIGHT 1;order=;engine=a;check=3f2a90c1")) {
            assertThatThrownBy(() -> SheetCode.parse(text)).isInstanceOf(InvalidInput.class);
        }
        assertThatThrownBy(() -> SheetCode.find(new byte[] {1, 2, 3})).isInstanceOf(InvalidInput.class);
    }
}
