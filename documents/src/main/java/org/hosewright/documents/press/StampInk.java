package org.hosewright.documents.press;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Words across a whole page, under its text: pale letters with a dark edge, so that a copier keeps them. */
final class StampInk {
    /** Share of the page's diagonal that the words run along. */
    private static final double REACH = 0.80;

    private static final double SIZE_AT_START = 100;
    private static final float FILL = 0.89f;
    private static final float EDGE = 0.55f;
    private static final float EDGE_WIDTH_PT = 0.6f;

    private final String words;
    private final StampGrid grid;

    StampInk(Sheet sheet) {
        this.words = sheet.stamp().across();
        this.grid = sheet.grid();
    }

    /** Stamps every page; the stamp is no part of the text, which says the same in words of its own. */
    void across(PDDocument document) throws IOException {
        if (words.isEmpty()) {
            return;
        }
        int number = 0;
        for (PDPage page : document.getPages()) {
            try (var ink = new PDPageContentStream(document, page, AppendMode.PREPEND, true, true)) {
                ink.beginMarkedContent(COSName.ARTIFACT);
                ink.setNonStrokingColor(FILL, FILL, FILL);
                ink.setStrokingColor(EDGE, EDGE, EDGE);
                ink.setLineWidth(EDGE_WIDTH_PT);
                stampAll(page.getMediaBox(), number++, ink);
                ink.endMarkedContent();
            }
        }
    }

    private void stampAll(PDRectangle page, int number, PDPageContentStream ink) throws IOException {
        for (int i = 0; i < grid.pieces(number); i++) {
            trace(placed(grid.piece(i, page)), ink);
            ink.fillAndStroke();
        }
    }

    private Path2D placed(PDRectangle box) {
        double diagonal = Math.hypot(box.getWidth(), box.getHeight());
        double size = SIZE_AT_START * REACH * diagonal / Typeface.BOLD.width(words, SIZE_AT_START);
        Path2D outline = Typeface.BOLD.outline(words, size);
        AffineTransform place = AffineTransform.getTranslateInstance(
                box.getLowerLeftX() + box.getWidth() / 2, box.getLowerLeftY() + box.getHeight() / 2);
        place.rotate(Math.atan2(box.getHeight(), box.getWidth()));
        place.translate(-REACH * diagonal / 2, -size * 0.36);
        outline.transform(place);
        return outline;
    }

    private static void trace(Path2D outline, PDPageContentStream ink) throws IOException {
        double[] at = new double[6];
        double[] last = new double[2];
        for (PathIterator i = outline.getPathIterator(null); !i.isDone(); i.next()) {
            step(i.currentSegment(at), at, last, ink);
        }
    }

    private static void step(int kind, double[] at, double[] last, PDPageContentStream ink) throws IOException {
        int end = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
        switch (kind) {
            case PathIterator.SEG_MOVETO -> ink.moveTo((float) at[0], (float) at[1]);
            case PathIterator.SEG_LINETO -> ink.lineTo((float) at[0], (float) at[1]);
            case PathIterator.SEG_QUADTO ->
                ink.curveTo(
                        (float) (last[0] + 2 * (at[0] - last[0]) / 3), (float) (last[1] + 2 * (at[1] - last[1]) / 3),
                        (float) (at[2] + 2 * (at[0] - at[2]) / 3), (float) (at[3] + 2 * (at[1] - at[3]) / 3),
                        (float) at[2], (float) at[3]);
            case PathIterator.SEG_CUBICTO ->
                ink.curveTo((float) at[0], (float) at[1], (float) at[2], (float) at[3], (float) at[4], (float) at[5]);
            default -> ink.closePath();
        }
        if (kind != PathIterator.SEG_CLOSE) {
            last[0] = at[end];
            last[1] = at[end + 1];
        }
    }
}
