package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import org.hosewright.documents.stamp.Stamp;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.plan.PlanReport;
import org.junit.jupiter.api.Test;

/** The sheets of a planned night: all that the night's people must have in their hands. */
class NightPaperTest {
    private static final QuantityShown SHOWN = QuantityShown.us();
    private static final PlanReport NIGHT = Samples.plannedNight();
    private static final Pdf PAPER = Samples.PAPERS.get("night");
    private static final String TEXT = PAPER.text();

    @Test
    void everyReadingStandsInItsOrderHolds() {
        assertThat(NIGHT.plan().points()).isNotEmpty();
        int at = 0;
        int number = 0;
        for (TestPoint point : NIGHT.plan().points()) {
            number++;
            String never = number(SHOWN.text(point.never().orElseThrow()));
            String row = point.shut()
                    ? "nozzle shut idle " + never + " none none"
                    : number(SHOWN.text(point.state().tip())) + " "
                            + number(SHOWN.text(point.atPumpGauge(NIGHT.plan().means())))
                            + " " + never + " "
                            + number(SHOWN.text(point.state().flow()));
            int found = TEXT.indexOf(row, at + 1);
            assertThat(found).as("reading " + number + ": " + row).isGreaterThan(at);
            at = found;
        }
    }

    /** Source: safety of test nights as the trade's material has it, quoted in {@code NightWords}. */
    @Test
    void safety08WherePeopleStandAndGoOrNoGoAreOnTheSheet() {
        assertThat(TEXT)
                .contains(
                        "People clear first: never in front of the end, astride the hose, to its right, or within 15 ft",
                        "Charge slowly, purge all air, the nozzle secured.",
                        "Open and shut every valve slowly.",
                        "90 % of the service test",
                        "none of it was made before July 1987",
                        "Stop the water before anybody touches a coupling.");
        assertThat(PAPER.pages().get(0)).contains("never above psi", "Raise the pump slowly");
    }

    @Test
    void safety09AReadingWithTheNozzleShutSaysHow() {
        assertThat(NIGHT.plan().points()).anyMatch(TestPoint::shut);
        assertThat(PAPER.pages().get(0)).contains("nozzle shut idle");
        assertThat(TEXT)
                .contains("pump at idle pressure, close the nozzle slowly, tank fill cracked open, at most 30 seconds");
    }

    @Test
    void safety03ASignedNightIsNoOrder() {
        String signed = new Pdf(Papers.night(NIGHT, Stamp.ofNight("T. Officer", "10 June 2026"))).text();
        assertThat(signed)
                .contains("TEST NIGHT, NOT AN ORDER", "Signed for the test night by T. Officer")
                .doesNotContain("NOT FOR USE");
    }

    private static String number(String text) {
        return text.substring(0, text.indexOf(' '));
    }
}
