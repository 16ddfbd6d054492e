package org.hosewright.documents.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.hosewright.hydraulics.error.InvalidInput;

/** A photograph drawn anew as a JPEG of bounded size: nothing that a camera wrote beside it is left. */
public final class PlainPicture {
    private static final String ALLOWED = "a photograph as JPEG or PNG, at most 2 MB and 40 million points";
    private static final int MOST_BYTES = 2_000_000;
    private static final long MOST_POINTS = 40_000_000;
    private static final int LONGER_SIDE = 1600;

    private PlainPicture() {}

    /** The photograph, its longer side at most 1600 points.
     *
     * @throws InvalidInput no picture of these kinds, or too large; its size is looked at before it is read
     */
    public static byte[] of(byte[] given) {
        if (given.length > MOST_BYTES) {
            throw new InvalidInput("photograph", given.length + " bytes", ALLOWED, "");
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(given))) {
            return jpeg(read(in));
        } catch (IOException | RuntimeException e) {
            if (e instanceof InvalidInput refused) {
                throw refused;
            }
            throw new InvalidInput("photograph", "one that cannot be read", ALLOWED, "");
        }
    }

    private static BufferedImage read(ImageInputStream in) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        if (!readers.hasNext()) {
            throw new InvalidInput("photograph", "another kind of file", ALLOWED, "");
        }
        ImageReader reader = readers.next();
        try {
            String form = reader.getFormatName();
            reader.setInput(in, true, true);
            long points = (long) reader.getWidth(0) * reader.getHeight(0);
            boolean known = form.equalsIgnoreCase("jpeg") || form.equalsIgnoreCase("png");
            if (!known || points > MOST_POINTS) {
                throw new InvalidInput("photograph", form + " of " + points + " points", ALLOWED, "");
            }
            return reader.read(0);
        } finally {
            reader.dispose();
        }
    }

    private static byte[] jpeg(BufferedImage image) {
        double shrink = Math.min(1, (double) LONGER_SIDE / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * shrink));
        int height = Math.max(1, (int) Math.round(image.getHeight() * shrink));
        BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = plain.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.drawImage(image, 0, 0, width, height, Color.WHITE, null);
        pen.dispose();
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(plain, "jpeg", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
