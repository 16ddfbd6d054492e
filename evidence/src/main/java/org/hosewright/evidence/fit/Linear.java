package org.hosewright.evidence.fit;

import java.util.Collection;
import java.util.List;

/** A problem linearised at a point, its latent values eliminated (a Schur complement by rotations).
 *
 * <p>The cost of making it grows with the blocks, not with their cube.
 */
final class Linear {
    private final Elimination[] blocks;
    private final Triangle triangle;
    private final double longest;
    private final double cost;

    Linear(Blocks problem, Point point) {
        blocks = new Elimination[problem.size()];
        longest = problem.longestLatentStep();
        double sum = 0;
        for (int block = 0; block < blocks.length; block++) {
            Rows rows = point.rows(problem, block);
            sum += rows.cost();
            blocks[block] = new Elimination(rows.cells(), problem.latents(block));
        }
        cost = sum;
        triangle = triangle(problem.unknowns(), List.of());
    }

    /** The information on the unknowns from all blocks except some. */
    Triangle triangle(int unknowns, Collection<Integer> except) {
        Triangle sum = new Triangle(unknowns);
        for (int block = 0; block < blocks.length; block++) {
            if (!except.contains(block)) {
                blocks[block].into(sum);
            }
        }
        return sum;
    }

    Triangle triangle() {
        return triangle;
    }

    Elimination block(int block) {
        return blocks[block];
    }

    double cost() {
        return cost;
    }

    /** The share of the cost that a step removes, as the slope has it.
     *
     * @param damped the triangle that the step comes from
     */
    double removable(Triangle damped) {
        double sum = damped.removable();
        for (Elimination block : blocks) {
            sum += block.removable();
        }
        return sum;
    }

    /** The squares of the triangle's columns; 1 where a column is empty. */
    double[] columnSquares() {
        double[] squares = new double[triangle.size()];
        for (int j = 0; j < squares.length; j++) {
            for (int k = 0; k <= j; k++) {
                squares[j] += triangle.at(k, j) * triangle.at(k, j);
            }
            squares[j] = squares[j] == 0 ? 1 : squares[j];
        }
        return squares;
    }

    /** The triangle with a share of given squares added to the diagonal of the information. */
    Triangle damped(double damping, double[] squares) {
        Triangle more = triangle.copy();
        for (int j = 0; j < triangle.size(); j++) {
            more.absorbDiagonal(j, Math.sqrt(damping * squares[j]));
        }
        return more;
    }

    Point stepped(Point from, Triangle damped) {
        double[] step = damped.step();
        double[][] latents = new double[blocks.length][];
        for (int block = 0; block < blocks.length; block++) {
            latents[block] = blocks[block].step(step);
            for (int j = 0; j < latents[block].length; j++) {
                latents[block][j] = Math.max(-longest, Math.min(longest, latents[block][j]));
            }
        }
        return from.moved(step, latents);
    }
}
