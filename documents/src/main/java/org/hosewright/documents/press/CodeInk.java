package org.hosewright.documents.press;

import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.hosewright.documents.stamp.Squares;

/** The square code at the foot of each page of an order or of a handover. */
final class CodeInk {
    private static final float PT_PER_MM = 72f / 25.4f;

    /** Its side, quiet margin and all, and how far it stands from the page's corner [mm]. */
    private static final float SIDE_MM = 14;

    private static final float CORNER_MM = 2;

    private CodeInk() {}

    /** Puts the code of a sheet, where it has one, on every page; what is cut out bears one of its own instead. */
    static void put(Sheet sheet, PDDocument document) throws IOException {
        if (sheet.stamp().code().isEmpty() || !sheet.grid().equals(StampGrid.WHOLE_PAGE)) {
            return;
        }
        Squares squares = Squares.of(sheet.stamp().code().get());
        for (PDPage page : document.getPages()) {
            try (var ink = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
                // An artifact: the text of the page says the same in its running head.
                ink.beginMarkedContent(COSName.ARTIFACT);
                ink.setNonStrokingColor(0f, 0f, 0f);
                draw(squares, ink);
                ink.endMarkedContent();
            }
        }
    }

    private static void draw(Squares squares, PDPageContentStream ink) throws IOException {
        float side = SIDE_MM * PT_PER_MM / squares.side();
        float corner = CORNER_MM * PT_PER_MM;
        for (int y = 0; y < squares.side(); y++) {
            for (int x = 0; x < squares.side(); x++) {
                if (squares.isDark(x, y)) {
                    ink.addRect(corner + x * side, corner + (squares.side() - 1 - y) * side, side, side);
                }
            }
        }
        ink.fill();
    }
}
