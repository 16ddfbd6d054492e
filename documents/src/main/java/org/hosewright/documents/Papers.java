package org.hosewright.documents;

import java.util.List;
import java.util.Map;
import org.hosewright.documents.card.PocketCard;
import org.hosewright.documents.card.PumpCard;
import org.hosewright.documents.card.Tags;
import org.hosewright.documents.exchange.HandoverPaper;
import org.hosewright.documents.ground.StretchPaper;
import org.hosewright.documents.ground.WalkPaper;
import org.hosewright.documents.matter.StretchMatter;
import org.hosewright.documents.matter.WalkMatter;
import org.hosewright.documents.night.NightPaper;
import org.hosewright.documents.order.ChangePaper;
import org.hosewright.documents.order.OrderPaper;
import org.hosewright.documents.order.ReadersPaper;
import org.hosewright.documents.practice.PracticePaper;
import org.hosewright.documents.press.Press;
import org.hosewright.documents.report.ReportPaper;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.documents.trial.TrialPaper;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.plan.PlanReport;
import org.hosewright.ledger.practice.KeptPractice;
import org.hosewright.ledger.trial.KeptTrial;

/** The papers of a company as PDF: tagged (PDF/UA-1), fit to keep (PDF/A-3a), typefaces inside, stamped on every page.
 *
 * <p>The same numbers give the same bytes: no clock and nothing of the machine is in them.
 */
public final class Papers {
    private Papers() {}

    /** What a test night showed, how well it is known, and what it rests on. */
    public static byte[] drillReport(DrillReport report, Stamp stamp) {
        return Press.print(ReportPaper.sheet(report, stamp));
    }

    /** The sheets of a planned test night: the recorder's blanks, and what everybody is told beforehand. */
    public static byte[] night(PlanReport plan, Stamp stamp) {
        return Press.print(NightPaper.sheet(plan, stamp));
    }

    /** The card of each engine's panel. */
    public static byte[] pumpCard(CardSet set, Stamp stamp) {
        return Press.print(PumpCard.sheet(set, stamp));
    }

    /** A tag for each package's discharge, to cut out. */
    public static byte[] tags(CardSet set, Stamp stamp) {
        return Press.print(Tags.sheet(set, stamp));
    }

    /** All packages on a strip that folds to fit a pocket. */
    public static byte[] pocketCard(CardSet set, Stamp stamp) {
        return Press.print(PocketCard.sheet(set, stamp));
    }

    /** The sheet of a stretch to an address. */
    public static byte[] stretch(StretchMatter matter, Stamp stamp) {
        return Press.print(StretchPaper.sheet(matter, stamp));
    }

    /** What each length reaches along a walk. */
    public static byte[] walk(WalkMatter matter, Stamp stamp) {
        return Press.print(WalkPaper.sheet(matter, stamp));
    }

    /** The sheet that those who read a blind trial write on; the key is not on it. */
    public static byte[] trial(KeptTrial trial, String company, UnitSystem units, Stamp stamp) {
        return Press.print(TrialPaper.blank(trial, company, units, stamp));
    }

    /** What a company hands to its neighbours, on one sheet, with the fingerprint to compare by telephone. */
    public static byte[] handover(SignedHandover signed, Stamp stamp) {
        return Press.print(HandoverPaper.sheet(signed, stamp));
    }

    /** The order itself: its numbers, what changes, the table of revisions, the list to sign on reading. */
    public static byte[] order(OrderInFull order, Stamp stamp) {
        return Press.print(OrderPaper.sheet(order, stamp));
    }

    /** Questions for drivers, and their answers by the order that they were asked of.
     *
     * @param stale why answers no longer hold, by place from 0
     */
    public static byte[] practice(
            KeptPractice practice, OrderInFull order, Map<Integer, List<String>> stale, Stamp stamp) {
        return Press.print(PracticePaper.sheet(practice, order, stale, stamp));
    }

    /** What an order changes, old and new side by side. */
    public static byte[] changes(OrderInFull order, Stamp stamp) {
        return Press.print(ChangePaper.sheet(order, stamp));
    }

    /** The list to sign on reading an order. */
    public static byte[] readers(OrderInFull order, Stamp stamp) {
        return Press.print(ReadersPaper.sheet(order, stamp));
    }
}
