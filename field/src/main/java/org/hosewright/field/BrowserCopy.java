package org.hosewright.field;

import org.teavm.jso.JSExport;

/** What the JavaScript module exports. */
public final class BrowserCopy {
    private BrowserCopy() {}

    /** Answers one question, both as JSON. */
    @JSExport
    public static String answer(String question) {
        return Answer.to(question);
    }
}
