package org.hosewright.documents.stamp;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.hosewright.hydraulics.error.InvalidInput;

/** Reads the square code out of a photograph. */
final class Photograph {
    /** The largest picture that is opened [pixels]. */
    private static final long MOST_PIXELS = 40_000_000L;

    private Photograph() {}

    /** The text of the code; empty where none can be made out.
     *
     * @throws InvalidInput it is no picture, or one too large to open
     */
    static Optional<String> findText(byte[] bytes) {
        BufferedImage picture = open(bytes);
        int width = picture.getWidth();
        int height = picture.getHeight();
        int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
        var bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
        try {
            return Optional.of(new QRCodeReader()
                    .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
                    .getText());
        } catch (ReaderException unreadable) {
            return Optional.empty();
        }
    }

    private static BufferedImage open(byte[] bytes) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw notAPicture();
            }
            ImageReader reader = readers.next();
            reader.setInput(in);
            if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
                throw new InvalidInput("photograph", "over 40 million pixels", "a smaller one", "");
            }
            return reader.read(0);
        } catch (IOException | IndexOutOfBoundsException broken) {
            throw notAPicture();
        }
    }

    private static InvalidInput notAPicture() {
        return new InvalidInput("photograph", "a file that is no picture", "a JPEG or PNG", "");
    }
}
