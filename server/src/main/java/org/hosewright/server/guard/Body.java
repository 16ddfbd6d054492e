package org.hosewright.server.guard;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** The text that came with a request, never longer than an open file may be. */
public final class Body {
    /** The longest text taken [bytes]: a readings file of 2 MB, written as a JSON string. */
    public static final int MOST_BYTES = 3_000_000;

    /** The longest text with a recorded track [bytes]: a track file of 10 MB, written as a JSON string. */
    public static final int MOST_TRACK_BYTES = 12_000_000;

    private Body() {}

    /** Reads the text.
     *
     * @throws Refusal it is longer than {@link #MOST_BYTES}, or not UTF-8 text
     */
    public static String text(Context request) {
        return text(request, MOST_BYTES);
    }

    /** As {@link #text(Context)}, for another bound.
     *
     * @param most the longest text taken [bytes]
     */
    public static String text(Context request, int most) {
        if (request.req().getContentLengthLong() > most) {
            throw tooLong(most);
        }
        try (InputStream in = request.req().getInputStream()) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw tooLong(most);
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new Refusal(400, "Not text", "The file is not UTF-8 text; save it as CSV or YAML in UTF-8.");
        } catch (IOException e) {
            throw new Refusal(400, "Content cut off", "The content ended before it was whole; send it again.");
        }
    }

    private static Refusal tooLong(int most) {
        return new Refusal(
                413,
                "Too long",
                "The content is longer than " + most / 1_000_000 + " MB; files of this kind are far shorter.");
    }
}
