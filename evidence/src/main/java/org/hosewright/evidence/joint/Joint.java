package org.hosewright.evidence.joint;

import java.util.List;
import org.hosewright.evidence.fit.Blocks;
import org.hosewright.evidence.fit.Point;
import org.hosewright.evidence.fit.Rows;

/** All that is weighed together: one block of what is believed beforehand, then one block a reading.
 *
 * @param unknowns what is sought
 * @param lines the readings
 * @param scatter how much they scatter
 * @param lineTrust weight of what is believed beforehand of hose and piping; 1, or less to see what the readings alone tell
 */
public record Joint(Unknowns unknowns, List<Line> lines, Scatter scatter, double lineTrust) {
    public Joint {
        lines = List.copyOf(lines);
    }

    public Joint with(Scatter other) {
        return new Joint(unknowns, lines, other, lineTrust);
    }

    public Joint with(List<Line> other) {
        return new Joint(unknowns, other, scatter, lineTrust);
    }

    /** The same with what is believed of hose and piping beforehand taken nearly away. */
    public Joint doubtingLines() {
        return new Joint(unknowns, lines, scatter, 0.1);
    }

    /** The prior centres, and each reading's own guess of its latent values. */
    public Point start() {
        return start(new double[unknowns.size()]);
    }

    /** Given unknowns, and each reading's own guess of its latent values. */
    public Point start(double[] u) {
        double[][] latents = new double[lines.size() + 1][];
        latents[0] = new double[0];
        for (int i = 0; i < lines.size(); i++) {
            latents[i + 1] = new double[lines.get(i).latents()];
            for (int j = 0; j < latents[i + 1].length; j++) {
                latents[i + 1][j] = lines.get(i).start().get(j);
            }
        }
        return new Point(u, latents);
    }

    /** The problem as the optimiser sees it; block i + 1 is reading i. */
    public Blocks blocks() {
        return new NightBlocks(this);
    }

    /** Sum of the logarithms of the scatter of all needles. */
    public double logDeviations() {
        double sum = 0;
        for (Line line : lines) {
            sum += line.logDeviations(scatter);
        }
        return sum;
    }

    /** Some of the readings. */
    public Joint only(List<Integer> places) {
        return with(places.stream().map(lines::get).toList());
    }

    private record NightBlocks(Joint joint) implements Blocks {
        /** Latent values are logarithms: no more than doubled or halved in a step. */
        @Override
        public double longestLatentStep() {
            return Math.log(2);
        }

        @Override
        public int unknowns() {
            return joint.unknowns.size();
        }

        @Override
        public int size() {
            return joint.lines.size() + 1;
        }

        @Override
        public int rows(int block) {
            return block == 0 ? unknowns() : joint.lines.get(block - 1).rows();
        }

        @Override
        public int latents(int block) {
            return block == 0 ? 0 : joint.lines.get(block - 1).latents();
        }

        @Override
        public void evaluate(int block, double[] u, double[] latents, Rows into) {
            if (block > 0) {
                joint.lines.get(block - 1).evaluate(joint.unknowns, u, latents, joint.scatter, into);
                return;
            }
            for (int j = 0; j < u.length; j++) {
                double trust = joint.unknowns.get(j).role().isLine() ? joint.lineTrust : 1;
                into.residual(j, trust * u[j]);
                into.byUnknown(j, j, trust);
            }
        }
    }
}
