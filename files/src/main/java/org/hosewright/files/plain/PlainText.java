package org.hosewright.files.plain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hosewright.hydraulics.error.InvalidInput;

/** Text from outside, read within a bound: a large or binary file is refused before it fills the memory. */
public final class PlainText {
    /** The most a kit or lay file may hold [bytes]. */
    public static final int YAML_LIMIT = 1_000_000;

    /** The most a readings file may hold [bytes]: some ten thousand rows. */
    public static final int CSV_LIMIT = 2_000_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private PlainText() {}

    /** The text of a file, UTF-8, without byte order mark.
     *
     * @throws InvalidInput missing, too large, or not text
     */
    public static String read(Path file, int limit_bytes) {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new InvalidInput("file", file.toString(), "a file that is there", "");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            long size = Files.size(file);
            if (size > limit_bytes) {
                throw tooLarge(size + " bytes", limit_bytes, name);
            }
            return read(stream, limit_bytes, name);
        } catch (IOException e) {
            throw new InvalidInput("file", file.toString(), "a file that may be read (" + e.getMessage() + ")", "");
        }
    }

    /** The text of a stream, UTF-8, without byte order mark; at most one byte beyond the limit is read.
     *
     * @param source name of what is read, for error messages
     * @throws InvalidInput too large, or not text
     * @throws IOException the stream itself failed
     */
    public static String read(InputStream stream, int limit_bytes, String source) throws IOException {
        byte[] bytes = stream.readNBytes(limit_bytes + 1);
        if (bytes.length > limit_bytes) {
            throw tooLarge("more than " + limit_bytes + " bytes", limit_bytes, source);
        }
        return decode(bytes, source);
    }

    /** Text from bytes that are already here.
     *
     * @throws InvalidInput not text
     */
    public static String decode(byte[] bytes, String source) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.codePoints().anyMatch(PlainText::isControl)) {
                throw notText(source);
            }
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw notText(source);
        }
    }

    private static boolean isControl(int character) {
        return character < ' ' && character != '\n' && character != '\r' && character != '\t';
    }

    private static InvalidInput notText(String source) {
        return new InvalidInput("content", "not text", "a text file in UTF-8", source);
    }

    private static InvalidInput tooLarge(String size, int limit_bytes, String source) {
        return new InvalidInput("size", size, "a text file of at most " + limit_bytes / 1_000_000 + " MB", source);
    }
}
