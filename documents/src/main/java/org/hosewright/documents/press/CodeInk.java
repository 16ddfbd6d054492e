package org.hosewright.documents.press;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;

/** The square code at the foot of each page of an order or of a handover. @source ISO/IEC 18004 (QR code), by a library */
final class CodeInk {
    private static final float PT_PER_MM = 72f / 25.4f;

    /** Its side, quiet margin and all, and how far it stands from the page's corner [mm]. */
    private static final float SIDE_MM = 14;

    private static final float CORNER_MM = 2;

    private CodeInk() {}

    /** Puts the code of a sheet, where it has one, on every page. */
    static void put(Sheet sheet, PDDocument document) throws IOException {
        if (sheet.stamp().code().isEmpty()) {
            return;
        }
        BitMatrix squares = squares(sheet.stamp().code().get());
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

    private static void draw(BitMatrix squares, PDPageContentStream ink) throws IOException {
        float side = SIDE_MM * PT_PER_MM / squares.getWidth();
        float corner = CORNER_MM * PT_PER_MM;
        for (int y = 0; y < squares.getHeight(); y++) {
            for (int x = 0; x < squares.getWidth(); x++) {
                if (squares.get(x, y)) {
                    ink.addRect(corner + x * side, corner + (squares.getHeight() - 1 - y) * side, side, side);
                }
            }
        }
        ink.fill();
    }

    private static BitMatrix squares(String code) {
        try {
            return new QRCodeWriter()
                    .encode(
                            code,
                            BarcodeFormat.QR_CODE,
                            1,
                            1,
                            Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, 2));
        } catch (WriterException e) {
            throw new IllegalStateException("a code too long for a square", e);
        }
    }
}
