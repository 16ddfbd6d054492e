package org.hosewright.evidence.fit;

/** One block of a problem with the shared unknowns held: only its latent values are free. */
public final class Held implements Blocks {
    private final Blocks problem;
    private final int block;
    private final double[] unknowns;

    public Held(Blocks problem, int block, double[] unknowns) {
        this.problem = problem;
        this.block = block;
        this.unknowns = unknowns.clone();
    }

    /** The block's latent values of least cost.
     *
     * @param start where to begin
     * @param tolerance the cost that may be left to remove
     */
    public double[] settle(double[] start, double tolerance) {
        Point from = new Point(new double[0], new double[][] {start});
        return new LevenbergMarquardt(this, 0, tolerance).solve(from).point().latents(0);
    }

    @Override
    public int unknowns() {
        return 0;
    }

    @Override
    public int size() {
        return 1;
    }

    @Override
    public int rows(int any) {
        return problem.rows(block);
    }

    @Override
    public int latents(int any) {
        return problem.latents(block);
    }

    @Override
    public double longestLatentStep() {
        return problem.longestLatentStep();
    }

    @Override
    public void evaluate(int any, double[] none, double[] latents, Rows into) {
        Rows full = new Rows(rows(any), latents(any), problem.unknowns());
        problem.evaluate(block, unknowns, latents, full);
        for (int row = 0; row < rows(any); row++) {
            double[] cells = full.cells()[row];
            into.residual(row, cells[cells.length - 1]);
            for (int j = 0; j < latents(any); j++) {
                into.byLatent(row, j, cells[j]);
            }
        }
    }
}
