package org.hosewright.evidence.fit;

/** A least squares problem in blocks: unknowns that all blocks share, and latent values that only their own block sees. */
public interface Blocks {
    /** How many unknowns the blocks share. */
    int unknowns();

    /** How many blocks there are. */
    int size();

    /** How many residuals a block has. */
    int rows(int block);

    /** How many latent values a block has; 0 for an ordinary least squares row. */
    int latents(int block);

    /** Writes a block's residuals and their derivatives, each divided by its standard deviation.
     *
     * @param block which block
     * @param unknowns the shared unknowns
     * @param latents the block's own values
     * @param into where they go; all zero beforehand
     */
    void evaluate(int block, double[] unknowns, double[] latents, Rows into);

    /** The farthest that a latent value may move in one step. */
    default double longestLatentStep() {
        return Double.MAX_VALUE;
    }
}
