package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.hosewright.documents.stamp.HandoverCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.order.OrderedPressure;
import org.junit.jupiter.api.Test;

/** A neighbour's sheet says what its file says. */
final class HandoverPaperTest {
    private static final SignedHandover SIGNED = Samples.handover();

    private static final Pdf SHEET = new Pdf(Papers.handover(
            SIGNED,
            Stamp.neighbour("Aldwick Vale Brigade", "Use them until 31 December 2035.")
                    .bearing(HandoverCode.of(SIGNED))));

    private static final Pattern FIGURE = Pattern.compile("(\\d+) m \\((\\d+) ft\\) (\\d+) kPa \\((\\d+) psi\\)");

    @Test
    void everyFigureOfTheFileStandsAsTextOnOneSheetInBothSystemsAgrees() {
        assertThat(SHEET.pages()).hasSize(1);
        Matcher figure = FIGURE.matcher(SHEET.text());
        for (HandedPackage handed : SIGNED.handover().packages()) {
            for (OrderedPressure one : handed.line().pressures()) {
                assertThat(figure.find()).isTrue();
                assertThat(Double.parseDouble(figure.group(1)))
                        .isEqualTo(one.length().metres());
                assertThat(Double.parseDouble(figure.group(3)) * 1000)
                        .isEqualTo(one.figure().pascals());
                Pressure psi = Pressure.ofPsi(Double.parseDouble(figure.group(4)));
                assertThat(Math.abs(psi.pascals() - one.figure().pascals()))
                        .isLessThan(Pressure.ofPsi(0.51).pascals());
            }
        }
    }

    @Test
    void fingerprintCheckAndWhoseFiguresTheyAreStandOnItHold() {
        String text = SHEET.text();
        assertThat(text)
                .contains(SIGNED.fingerprint().groups(), SIGNED.check(), "64 mm instantaneous", "coupling not stated")
                .contains("FIGURES OF ALDWICK VALE BRIGADE")
                .contains("nobody else's order");
        assertThat(text.toLowerCase(Locale.ROOT)).doesNotContain("http");
    }

    @Test
    void theSquareCodeReadsBackAgrees() throws IOException {
        var photograph = new ByteArrayOutputStream();
        ImageIO.write(SHEET.picture(0, 300), "png", photograph);
        HandoverCode found = HandoverCode.find(photograph.toByteArray()).orElseThrow();
        assertThat(found.isOf(SIGNED)).isTrue();
        assertThat(SHEET.faults("3a")).isEmpty();
        assertThat(SHEET.faults("ua1")).isEmpty();
    }

    @Test
    void whatRanOutIsStampedNotForUseHolds() {
        Stamp past = Stamp.neighbourPast("Aldwick Vale Brigade", "RAN OUT on 2026-05-31.");
        assertThat(past.across()).isEqualTo("NOT FOR USE");
    }
}
