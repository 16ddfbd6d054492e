package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;

/** Couplings as ticks on the ground, and the names of the runs between. */
final class Couplings {
    private static final double TICK_em = 0.45;
    private static final double END_em = 0.85;

    /** Closer than this, only every second, fifth or tenth coupling is drawn [em]. */
    private static final double LEAST_em = 0.3;

    private static final int[] EVERY = {1, 2, 5, 10, 20, 50, 100};

    /** A rest shorter than this share of a section is no section of its own. */
    private static final double NO_SECTION = 1e-6;

    private Couplings() {}

    static void tick(Pen pen, Plot plot, Ground ground, List<HoseRun> hose) {
        double start_m = 0;
        tick(pen, ground.at(0), END_em);
        for (HoseRun run : hose) {
            double end_m = start_m + run.length().metres();
            for (double at_m : within(plot, run, start_m, pen.em())) {
                tick(pen, ground.at(at_m), TICK_em);
            }
            tick(pen, ground.at(end_m), END_em);
            start_m = end_m;
        }
    }

    /** The couplings inside a run, its ends apart [m]. */
    static List<Double> within(Plot plot, HoseRun run, double start_m, double em) {
        double section_m = run.section().metres();
        double apart = plot.x(run.section()) - plot.x(new Length(0));
        int every = EVERY[EVERY.length - 1];
        for (int i = EVERY.length - 1; i >= 0; i--) {
            every = EVERY[i] * apart >= LEAST_em * em ? EVERY[i] : every;
        }
        List<Double> couplings = new ArrayList<>();
        for (int k = every; k * section_m < run.length().metres() - NO_SECTION * section_m; k += every) {
            couplings.add(start_m + k * section_m);
        }
        return couplings;
    }

    /** Names of the runs, over the middle of each, where there is room. */
    static void name(Pen pen, Names names, Plot plot, Ground ground, List<HoseRun> hose) {
        double start_m = 0;
        for (HoseRun run : hose) {
            double middle_m = start_m + run.length().metres() / 2;
            double room = plot.x(run.length()) - plot.x(new Length(0));
            Point at = ground.at(middle_m);
            if (!run.label().isEmpty() && Lettering.width(Role.HOSE, run.label(), pen.em()) < room) {
                List<Mark.Text> places = new ArrayList<>();
                for (double off_em : new double[] {0.8, 1.2, 1.8, 2.4}) {
                    places.add(pen.small(Role.HOSE, at.x(), at.y() - off_em * pen.em(), Anchor.MIDDLE, run.label()));
                }
                names.atFirst(places);
            }
            start_m += run.length().metres();
        }
    }

    private static void tick(Pen pen, Point at, double height_em) {
        pen.strokeKeptClear(Role.COUPLING, List.of(at, new Point(at.x(), at.y() - height_em * pen.em())));
    }
}
