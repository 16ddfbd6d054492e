package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.line.KitLines;
import org.junit.jupiter.api.Test;

/** The cards say every number of their set, and nothing that failed. */
class CardsTest {
    private static final CardSet US = Samples.brindleFalls();
    private static final CardSet SI = Samples.aldwickVale();

    /** Half of the last digit printed, in gpm and L/min. */
    private static final Offset<Double> HALF_A_DIGIT = Offset.offset(0.51);

    @Test
    void everyNumberAndUnitOnThePanelCardHolds() {
        for (CardSet set : List.of(US, SI)) {
            String text = new Pdf(Papers.pumpCard(set, Stamp.UNSIGNED)).text();
            CardText.lines(set).forEach(line -> {
                line.entries().forEach(entry -> assertThat(text).contains(CardText.wanted(set, entry)));
                assertThat(text)
                        .contains(CardText.texts(set, line.longestSafe(), line.floorAdder(), line.floorHeight()));
                assertThat(text).contains(line.stoppedBy());
            });
        }
    }

    @Test
    void everyLengthInThePocketAndEveryPackagesTagHold() {
        for (CardSet set : List.of(US, SI)) {
            String pocket = new Pdf(Papers.pocketCard(set, Stamp.UNSIGNED)).text();
            String tags = new Pdf(Papers.tags(set, Stamp.UNSIGNED)).text();
            CardText.lines(set).forEach(line -> {
                line.entries()
                        .forEach(entry -> assertThat(pocket)
                                .contains((entry.stands() ? CardText.text(set, entry.gauge()) : "refused") + " "
                                        + CardText.text(set, entry.length())));
                assertThat(tags).contains(CardText.wanted(set, line.entries().get(0)));
            });
        }
    }

    /** Each pressure on the panel card, put back through the solver at its length, gives the flow printed below it. */
    @Test
    void printedPressuresTurnedBackIntoFlowAgree() {
        for (CardSet set : List.of(US, SI)) {
            List<double[]> printed = CardText.boxes(set, new Pdf(Papers.pumpCard(set, Stamp.UNSIGNED)).text());
            int box = 0;
            for (CardLine line : CardText.lines(set)) {
                Line lies = KitLines.of(set.kit(), line.hosePackage(), new Length(0));
                for (CardEntry entry : line.entries()) {
                    if (entry.stands()) {
                        double[] here = printed.get(box++);
                        Line longer = lies.withLastLength(
                                new Length(lies.last().length().metres()
                                        + entry.length().metres()
                                        - lies.length().metres()));
                        Pressure pump = Pressure.of(here[0], set.kit().units().pressure());
                        double flow = set.kit()
                                .units()
                                .show(LineSolver.atPump(longer, pump).flow());
                        assertThat(here[1]).isEqualTo(flow, HALF_A_DIGIT);
                    }
                }
            }
            assertThat(printed).hasSize(box);
        }
    }

    @Test
    void evidenceDateAndRevisionOnEveryPaperHold() {
        CardText.papers(US)
                .forEach(text -> assertThat(text)
                        .contains(
                                "8 readings, tested to 550 ft",
                                "not measured, from the book",
                                Samples.REVISION,
                                "14 May 2026"));
    }
}
