package org.hosewright.evidence.fit;

/** A place in a problem's space: the shared unknowns and every block's latent values. */
public final class Point {
    private final double[] unknowns;
    private final double[][] latents;

    public Point(double[] unknowns, double[][] latents) {
        this.unknowns = unknowns.clone();
        this.latents = new double[latents.length][];
        for (int block = 0; block < latents.length; block++) {
            this.latents[block] = latents[block].clone();
        }
    }

    /** A copy of the shared unknowns. */
    public double[] unknowns() {
        return unknowns.clone();
    }

    public double unknown(int index) {
        return unknowns[index];
    }

    /** A copy of a block's latent values. */
    public double[] latents(int block) {
        return latents[block].clone();
    }

    int blocks() {
        return latents.length;
    }

    Point moved(double[] step, double[][] latentSteps) {
        Point moved = new Point(unknowns, latents);
        for (int j = 0; j < step.length; j++) {
            moved.unknowns[j] += step[j];
        }
        for (int block = 0; block < latents.length; block++) {
            for (int j = 0; j < latents[block].length; j++) {
                moved.latents[block][j] += latentSteps[block][j];
            }
        }
        return moved;
    }

    /** The residuals of one block here. */
    Rows rows(Blocks problem, int block) {
        Rows rows = new Rows(problem.rows(block), problem.latents(block), problem.unknowns());
        problem.evaluate(block, unknowns, latents[block], rows);
        return rows;
    }

    double cost(Blocks problem) {
        double sum = 0;
        for (int block = 0; block < blocks(); block++) {
            sum += rows(problem, block).cost();
        }
        return sum;
    }
}
