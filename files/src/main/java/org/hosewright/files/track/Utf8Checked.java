package org.hosewright.files.track;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.hosewright.hydraulics.error.InvalidInput;

/** Whether an XML file that is to be UTF-8 is; a reader of XML says of broken bytes not where they stand. */
final class Utf8Checked {
    private static final int HEAD = 200;
    private static final int PIECE = 8192;

    private Utf8Checked() {}

    /** Refuses broken bytes, with the line; a file that names another encoding is left to the reader of XML.
     *
     * @param source name of what is read, for errors
     */
    static void check(byte[] content, String source) {
        if (isElse(content)) {
            return;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.wrap(content);
        CharBuffer characters = CharBuffer.allocate(PIECE);
        CoderResult result = CoderResult.OVERFLOW;
        while (result.isOverflow()) {
            characters.clear();
            result = decoder.decode(bytes, characters, true);
        }
        if (result.isError()) {
            String where = source + ", line " + line(content, bytes.position());
            throw new InvalidInput("GPX file", "bytes that are no UTF-8", "a whole GPX 1.1 file", where);
        }
    }

    private static boolean isElse(byte[] content) {
        String head = new String(content, 0, Math.min(HEAD, content.length), StandardCharsets.ISO_8859_1)
                .toLowerCase(Locale.ROOT);
        boolean named = head.contains("encoding") && !head.contains("utf-8");
        boolean wide = content.length > 1 && (content[0] == 0 || content[1] == 0 || (content[0] & 0xFE) == 0xFE);
        return named || wide;
    }

    private static int line(byte[] content, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            line += content[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}
