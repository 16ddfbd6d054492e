package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.line.KitLines;
import org.junit.jupiter.api.Test;

/** What keeps people from harm, on the cards. */
class CardSafetyTest {
    private static final CardSet US = Samples.brindleFalls();
    private static final CardSet SI = Samples.aldwickVale();

    @Test
    void safety02EveryPaperNamesTheGaugeAndItsOffset() {
        CardSet off = Samples.cards(Samples.beside("brindle-falls.kit.yaml")
                .replace("tap: before piping,", "tap: discharge, offset: 4 psi,"));
        List<byte[]> papers = List.of(
                Papers.pumpCard(off, Stamp.UNSIGNED),
                Papers.tags(off, Stamp.UNSIGNED),
                Papers.pocketCard(off, Stamp.UNSIGNED));
        papers.forEach(paper -> assertThat(new Pdf(paper).text())
                .contains("gauge-a, at the discharge, behind its piping; it reads 4 psi high"));
    }

    /** A gauge behind the piping that reads 4 psi high must not show what a true one before it shows. */
    @Test
    void safety02TheFigureIsWhatThatGaugeMustShow() {
        CardSet off = Samples.cards(Samples.beside("brindle-falls.kit.yaml")
                .replace("tap: before piping,", "tap: discharge, offset: 4 psi,"));
        List<double[]> printed = CardText.boxes(off, new Pdf(Papers.pumpCard(off, Stamp.UNSIGNED)).text());
        CardLine line = off.engines().get(0).lines().get(0);
        Line lies = KitLines.of(off.kit(), line.hosePackage(), new Length(0));
        var state = LineSolver.atFlow(lies, Flow.ofGpm(printed.get(0)[1]));
        double shown = state.atDischargeGauge().psi() + 4;
        assertThat(printed.get(0)[0]).isEqualTo(shown, Offset.offset(1.0));
    }

    @Test
    void safety01HoseMadeBeforeJuly1987GetsNoFigure() {
        CardSet old = Samples.cards(Samples.beside("brindle-falls.kit.yaml").replace("made: 2019", "made: 1985"));
        CardLine line = old.engines().get(0).lines().get(0);
        assertThat(line.entries()).noneMatch(CardEntry::stands);
        assertThat(line.entries().get(0).refusal()).anyMatch(says -> says.contains("out of service"));
    }

    @Test
    void safety01FloorsStopAtTheFirstLimitOnEveryCard() {
        for (byte[] paper : List.of(Papers.pumpCard(US, Stamp.UNSIGNED), Papers.pocketCard(US, Stamp.UNSIGNED))) {
            assertThat(new Pdf(paper).text()).contains("never above 250 psi");
        }
    }

    @Test
    void safety02UnknownPipingIsSaidFirst() {
        String kit = Samples.beside("brindle-falls.kit.yaml");
        for (CardLine line : Samples.cards(kit).engines().get(0).lines()) {
            boolean unknown = KitLines.of(Samples.kit(kit), line.hosePackage(), new Length(0))
                    .discharge()
                    .loss()
                    .isEmpty();
            assertThat(line.cautions().get(0).contains("is not known and counted as none"))
                    .isEqualTo(unknown);
        }
    }

    @Test
    void safety04ARefusedFigureIsNeverPrintedAsANumber() {
        CardSet strict =
                Samples.cards(Samples.beside("brindle-falls.kit.yaml").replace("least: 140 gpm", "least: 149 gpm"));
        CardLine line = strict.engines().get(0).lines().get(1);
        List<CardEntry> refused =
                line.entries().stream().filter(e -> !e.stands()).toList();
        assertThat(refused).isNotEmpty();
        String tags = new Pdf(Papers.tags(strict, Stamp.UNSIGNED)).text();
        CardEntry lies = line.entries().get(0);
        assertThat(lies.stands()).isFalse();
        assertThat(tags)
                .contains(
                        "refused",
                        "Fails: least flow.",
                        CardText.text(strict, lies.nearest().get()) + " would do");
        assertThat(tags).doesNotContain(CardText.text(strict, lies.gauge()) + " ");
        String pocket = new Pdf(Papers.pocketCard(strict, Stamp.UNSIGNED)).text();
        refused.forEach(entry -> assertThat(pocket)
                .contains("refused " + CardText.text(strict, entry.length()))
                .doesNotContain(CardText.text(strict, entry.gauge()) + " " + CardText.text(strict, entry.length())));
    }

    @Test
    void safety04ARefusedBoxNamesItsReasonAndTheNearestThatWouldDo() {
        CardSet strict =
                Samples.cards(Samples.beside("brindle-falls.kit.yaml").replace("least: 140 gpm", "least: 149 gpm"));
        String panel = new Pdf(Papers.pumpCard(strict, Stamp.UNSIGNED)).text();
        CardLine line = strict.engines().get(0).lines().get(1);
        assertThat(panel).contains("Refused as rounded at 250 ft");
        line.entries().stream().filter(e -> !e.stands()).forEach(entry -> {
            assertThat(panel).contains(entry.refusal().get(0));
            entry.nearest().ifPresent(p -> assertThat(panel).contains(CardText.text(strict, p) + " would do"));
        });
    }

    @Test
    void safety14AFloorSaysItsHeightAndHowFloorsAreCounted() {
        assertThat(new Pdf(Papers.pumpCard(US, Stamp.UNSIGNED)).text())
                .contains("Each floor up, 10 ft: add 5 psi", "the street floor is floor 1");
        assertThat(new Pdf(Papers.pumpCard(SI, Stamp.UNSIGNED)).text())
                .contains("Each floor up, 3 m: add 30 kPa", "the street floor is the ground floor");
    }

    @Test
    void safety15AMeasuredNumberSaysHowTheHoseLay() {
        CardText.papers(US).forEach(text -> assertThat(text).contains("straight, no kinks"));
    }

    @Test
    void safety17ALengthBeyondWhatWasFlownIsMarkedBeforeItsNumber() {
        String panel = new Pdf(Papers.pumpCard(US, Stamp.UNSIGNED)).text();
        CardEntry beyond = US.engines().get(0).lines().get(0).entries().stream()
                .filter(e -> !e.tested())
                .findFirst()
                .orElseThrow();
        assertThat(panel).contains("untested " + CardText.text(US, beyond.gauge()));
        CardEntry within = US.engines().get(0).lines().get(0).entries().get(0);
        assertThat(within.tested()).isTrue();
        String firstLine = panel.substring(0, panel.indexOf("Longest safe stretch"));
        assertThat(firstLine).doesNotContain("untested " + CardText.text(US, within.gauge()) + " ");
    }

    @Test
    void safety18TheUsualWordsStandOnCards() {
        assertThat(new Pdf(Papers.pumpCard(US, Stamp.UNSIGNED)).text())
                .contains("Gauges and the nozzle crew's word overrule");
        assertThat(new Pdf(Papers.pocketCard(US, Stamp.UNSIGNED)).text())
                .contains("Gauges and the nozzle crew's word overrule");
    }
}
