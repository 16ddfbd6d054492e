package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hosewright.documents.PublishedLine.Known;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardSet;
import org.junit.jupiter.api.Test;

/** Every number that people act on, read out of the printed sheets and worked out anew by the published formulas. */
final class PrintedNumbersTest {
    /** Half of the last digit printed, and what rounding a flow leaves in a pressure worked out from it. */
    private static final double HALF_A_DIGIT = 0.51;

    private static final double KPA_PSI = 6.894757;
    private static final double LMIN_GPM = 3.785412;
    private static final double N_LBF = 4.448222;
    private static final double M_FT = 0.3048;

    /** 0.433 psi a foot of water: textbook, as 1 psi for 2.31 ft. */
    private static final double PSI_A_FOOT = 1 / 2.31;

    private static final Known EXACT = new Known(0, 0);

    /** The sheets' numbers, in the units of the set. */
    private record Units(String pressure, String flow, String force, String length, boolean si) {
        private static final Units US = new Units("psi", "gpm", "lbf", "ft", false);
        private static final Units SI = new Units("kPa", "L/min", "N", "m", true);

        double psi(double printed) {
            return si ? printed / KPA_PSI : printed;
        }

        double feet(double printed) {
            return si ? printed / M_FT : printed;
        }

        double flow(double gpm) {
            return si ? gpm * LMIN_GPM : gpm;
        }

        double pressure(double psi) {
            return si ? psi * KPA_PSI : psi;
        }

        double force(double lbf) {
            return si ? lbf * N_LBF : lbf;
        }

        /** A pattern in which P, Q, F and L stand for a number with the unit of pressure, flow, force and length. */
        Pattern pattern(String form) {
            return Pattern.compile(form.replace("{P}", "(\\d+) " + pressure)
                    .replace("{Q}", "(\\d+) " + flow)
                    .replace("{F}", "(\\d+) " + force)
                    .replace("{L}", "(\\d+) " + length));
        }
    }

    @Test
    void companyAfterItsNightAgrees() {
        var crosslay = new Known(9.25, 0.12);
        var piping = new Known(1.7, 0.7);
        check(
                Samples.brindleFalls(),
                Units.US,
                List.of(
                        new PublishedLine(crosslay, piping, -0.8, 0.875, 50, 250, 50),
                        new PublishedLine(crosslay, piping, -0.8, 0, 75, 200, 50),
                        new PublishedLine(new Known(1.6, 0.1), EXACT, 0, 0.9375, 50, 250, 50)));
    }

    /** The demonstration's card: its hose is the book's, its piping unknown and counted as none. */
    @Test
    void demonstrationAgrees() {
        var book = new Known(15.5, Double.NaN);
        check(
                Samples.cards(Samples.example("brindle-falls.kit.yaml")),
                Units.US,
                List.of(
                        new PublishedLine(book, EXACT, 0, 0.875, 50, 250, 50),
                        new PublishedLine(book, EXACT, 0, 0, 75, 200, 50),
                        new PublishedLine(new Known(2, Double.NaN), EXACT, 0, 1.125, 50, 250, 50)));
    }

    @Test
    void brigadeInItsOwnUnitsAgrees() {
        // 14.5 kPa / 100 m @ 100 L/min and 0.7 kPa @ 100 L/min, in psi at 100 gpm.
        double at100 = LMIN_GPM * LMIN_GPM / KPA_PSI;
        var hose = new Known(14.5 * M_FT * at100, 0.3 * M_FT * at100);
        check(
                Samples.aldwickVale(),
                Units.SI,
                List.of(new PublishedLine(
                        hose, new Known(0.7 * at100, 0), 0, 19 / 25.4, 350 / KPA_PSI, 1000 / KPA_PSI, 25 / M_FT)));
    }

    private static void check(CardSet set, Units units, List<PublishedLine> lines) {
        String card = new Pdf(Papers.pumpCard(set, Stamp.UNSIGNED)).text();
        String pocket = new Pdf(Papers.pocketCard(set, Stamp.UNSIGNED)).text();
        String tags = new Pdf(Papers.tags(set, Stamp.UNSIGNED)).text();
        String[] tables = card.split("most reaction verdict", -1);
        assertThat(tables).hasSize(lines.size() + 1);
        List<double[]> rows = new ArrayList<>();
        List<double[]> boxes = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            List<double[]> its = grounds(tables[i + 1], units, lines.get(i));
            rows.addAll(its);
            its.forEach(row -> boxes.add(new double[] {row[1], row[2], row[4], row[6]}));
            tag(tags.split("What do I pump on this discharge\\?|Company\\.|Brigade\\.", -1)[i + 1], units, its);
        }
        panel(card, units, boxes);
        pocket(pocket, units, rows);
        floors(card, pocket, units, lines);
        if (lines.stream().noneMatch(line -> Double.isNaN(line.loss().deviation()))) {
            stops(card, pocket, units, lines);
        }
    }

    /** The table behind the card: length, figure, flow, least flow, tip, most at the tip, reaction, most reaction. */
    private static List<double[]> grounds(String table, Units units, PublishedLine line) {
        List<double[]> rows = all(units.pattern("{L} {P} {Q} {Q} {P} {P} {F} {F}"), table);
        for (double[] row : rows) {
            double flow_gpm = line.flow_gpm(units.psi(row[1]), units.feet(row[0]));
            double tip_psi = line.tip_psi(flow_gpm);
            assertThat(row[2]).as("flow").isEqualTo(units.flow(flow_gpm), within(HALF_A_DIGIT));
            assertThat(row[4]).as("tip").isEqualTo(units.pressure(tip_psi), within(HALF_A_DIGIT));
            assertThat(row[6]).as("reaction").isEqualTo(units.force(line.reaction_lbf(tip_psi)), within(HALF_A_DIGIT));
            double most_lbf = line.reaction_lbf(units.psi(row[5]));
            assertThat(row[7]).as("most reaction").isEqualTo(units.force(most_lbf), within(2 * HALF_A_DIGIT));
            assertThat(row[3]).as("least flow").isBetween(row[2] * 0.9, row[2]);
            assertThat(row[5]).as("most at the tip").isBetween(row[4], row[4] * 1.2);
        }
        return rows;
    }

    /** A tag bears the line as it lies: the first row, or its refusal. */
    private static void tag(String tag, Units units, List<double[]> rows) {
        List<double[]> printed = all(units.pattern("{P} {Q} tip {P} {F} read on .*? {L} of "), tag);
        if (tag.contains("refused Fails")) {
            assertThat(printed).isEmpty();
            return;
        }
        double[] first = rows.get(0);
        assertThat(printed).hasSize(1);
        assertThat(printed.get(0)).containsExactly(first[1], first[2], first[4], first[6], first[0]);
    }

    private static void panel(String card, Units units, List<double[]> boxes) {
        List<double[]> printed = all(units.pattern("{P} {Q} tip {P} {F}"), card);
        assertThat(printed).isNotEmpty();
        assertThat(printed).usingRecursiveComparison().isEqualTo(boxes);
    }

    private static void pocket(String pocket, Units units, List<double[]> rows) {
        List<double[]> printed = all(units.pattern("{P} {L}(?! of)"), pocket);
        List<double[]> expected =
                rows.stream().map(row -> new double[] {row[1], row[0]}).toList();
        assertThat(printed).usingRecursiveComparison().isEqualTo(expected);
    }

    /** What floors add and what the gauge must never show, on card and pocket card alike. */
    private static void floors(String card, String pocket, Units units, List<PublishedLine> lines) {
        List<double[]> onCard = all(units.pattern("Each floor up, {L}: add {P}, never above {P}"), card);
        List<double[]> inPocket = all(units.pattern("Each floor up add {P}, never above {P}"), pocket);
        assertThat(onCard).hasSameSizeAs(lines);
        assertThat(inPocket).hasSameSizeAs(lines);
        for (int i = 0; i < lines.size(); i++) {
            double[] row = onCard.get(i);
            assertThat(inPocket.get(i)).containsExactly(row[1], row[2]);
            double water = units.pressure(units.feet(row[0]) * PSI_A_FOOT);
            assertThat(row[1]).as("a floor").isBetween(water, water * 1.2);
            double most = units.pressure(lines.get(i).most_psi());
            assertThat(row[2]).as("never above").isEqualTo(most, within(HALF_A_DIGIT));
        }
    }

    /** Where each line stops: there the duty fits below the limit, one section farther it does not. */
    private static void stops(String card, String pocket, Units units, List<PublishedLine> lines) {
        List<double[]> onCard = all(units.pattern("Longest safe stretch, level: {L}\\."), card);
        List<double[]> inPocket = all(units.pattern("Stops at {L}:"), pocket);
        assertThat(inPocket).usingRecursiveComparison().isEqualTo(onCard);
        assertThat(onCard).hasSameSizeAs(lines);
        for (int i = 0; i < lines.size(); i++) {
            PublishedLine line = lines.get(i);
            double longest_ft = units.feet(onCard.get(i)[0]);
            assertThat(line.fits(longest_ft)).as("fits").isTrue();
            assertThat(line.fits(longest_ft + line.section_ft()))
                    .as("a section more")
                    .isFalse();
        }
    }

    private static List<double[]> all(Pattern pattern, String text) {
        List<double[]> all = new ArrayList<>();
        for (MatchResult found : pattern.matcher(text).results().toList()) {
            double[] numbers = new double[found.groupCount()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = Double.parseDouble(found.group(i + 1));
            }
            all.add(numbers);
        }
        return all;
    }
}
