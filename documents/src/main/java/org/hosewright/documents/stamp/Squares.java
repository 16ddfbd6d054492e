package org.hosewright.documents.stamp;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** The dark and light squares of a code, quiet margin and all. @source ISO/IEC 18004 (QR code), by a library */
public final class Squares {
    private static final int MARGIN = 2;

    private final BitMatrix matrix;

    private Squares(BitMatrix matrix) {
        this.matrix = matrix;
    }

    /** The squares of a code's text. */
    public static Squares of(String code) {
        try {
            return new Squares(new QRCodeWriter()
                    .encode(
                            code,
                            BarcodeFormat.QR_CODE,
                            1,
                            1,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    MARGIN)));
        } catch (WriterException e) {
            throw new IllegalStateException("a code too long for a square", e);
        }
    }

    /** How many squares a side has. */
    public int side() {
        return matrix.getWidth();
    }

    /** True where the square in a column, from the left, and a row, from above, is dark. */
    public boolean isDark(int column, int row) {
        return matrix.get(column, row);
    }
}
