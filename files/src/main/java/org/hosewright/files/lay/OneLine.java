package org.hosewright.files.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.files.lay.LayDocument.End;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.supply.HydrantCurve;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.lay.LaidSupply;
import org.hosewright.ledger.lay.SingleLay;

/** A lay taken as one line, where it is one. */
final class OneLine {
    private static final String ONE = "one line: a discharge, hose and a nozzle";

    private OneLine() {}

    static SingleLay of(LayDocument lay, String source) {
        if (lay.lines().size() > 1) {
            throw refused("a second line", lay.lines().get(1).discharge(), source);
        }
        LaidLine line = lay.lines().get(0);
        Leg leg = line.leg();
        if (leg.end() instanceof End.Wye) {
            throw refused("a wye", "wye", source);
        }
        if (leg.end() instanceof End.Join join) {
            throw refused("a join", join.name(), source);
        }
        if (leg.end() instanceof End.Piece piece) {
            throw refused("a piece", piece.word(), source);
        }
        if (leg.hose().isEmpty()) {
            throw new InvalidInput("hose of line " + line.discharge(), "", "hose in laying order", source);
        }
        return single(lay, line, (End.Tip) leg.end(), source);
    }

    private static SingleLay single(LayDocument lay, LaidLine line, End.Tip tip, String source) {
        if (tip.shut()) {
            throw new InvalidInput("the only nozzle", "shut", "a nozzle that is open", source);
        }
        HosePackage laid = new HosePackage(
                line.discharge(),
                lay.engine(),
                line.discharge(),
                line.leg().hose(),
                tip.nozzle(),
                tip.setting(),
                line.leg().crew(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Optional<LaidSupply> supply = lay.supply().flatMap(OneLine::supply);
        return new SingleLay(laid, line.leg().rise(), supply, lay.ask(), leftOut(lay));
    }

    /** What is said of the supply and cannot be reckoned with, as sentences. */
    static List<String> leftOut(LayDocument lay) {
        return lay.supply().isPresent() && lay.supply().flatMap(OneLine::supply).isEmpty()
                ? List.of("No hydrant test is stated: nothing here says whether the supply gives this flow.")
                : List.of();
    }

    /** True where a lay is a discharge, hose and a nozzle, nothing else. */
    static boolean is(LayDocument lay) {
        return lay.lines().size() == 1 && lay.lines().get(0).leg().end() instanceof End.Tip;
    }

    static Optional<LaidSupply> supply(LayDocument.Supply supply) {
        return supply.hydrant()
                .map(test -> new LaidSupply(
                        new HydrantCurve(test.still(), test.residual(), test.at()),
                        test.tested(),
                        supply.hose(),
                        supply.rise(),
                        supply.keep()));
    }

    private static InvalidInput refused(String what, String value, String source) {
        return new InvalidInput(what + " in the lay, which is not solved here,", value, ONE, source);
    }
}
