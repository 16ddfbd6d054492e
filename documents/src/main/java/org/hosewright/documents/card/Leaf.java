package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Lines;

/** The room of one leaf of the pocket card, and what fits into it. */
final class Leaf {
    static final double WIDTH_MM = 79;
    /** A leaf's height less its head, its foot and the square code at its foot. */
    private static final double ROOM_MM = 109;

    private static final double SENTENCE_PT = 8.5;
    private static final double LEADING = 1.2;
    private static final double GAP_MM = 0.8;

    private Leaf() {}

    /** A piece that is never cut.
     *
     * @param height_mm room that it takes [mm]
     */
    record Piece(Html html, double height_mm) {}

    static Piece sentence(String words) {
        return new Piece(Html.tag("p", words), Lines.height_mm(words, SENTENCE_PT, WIDTH_MM, LEADING) + GAP_MM);
    }

    /** Pieces in order, on as many leaves as they take; one leaf at least. */
    static List<List<Html>> fill(List<Piece> pieces) {
        List<List<Html>> leaves = new ArrayList<>(List.of(new ArrayList<>()));
        double left_mm = ROOM_MM;
        for (Piece piece : pieces) {
            List<Html> leaf = leaves.get(leaves.size() - 1);
            if (piece.height_mm() > left_mm && !leaf.isEmpty()) {
                leaf = new ArrayList<>();
                leaves.add(leaf);
                left_mm = ROOM_MM;
            }
            leaf.add(piece.html());
            left_mm -= piece.height_mm();
        }
        return leaves;
    }
}
