package org.hosewright.server.guard;

import io.javalin.http.Context;

/** The headers on every answer: what a browser may do with it. */
public final class SafeHeaders {
    private static final String A_YEAR = "max-age=31536000";

    private final String policy;
    private final boolean secure;

    /** Makes the headers.
     *
     * @param importMapSource the source expression that allows the pages' import map
     * @param secure true where the browser reaches the server by TLS, and shall never do otherwise
     */
    public SafeHeaders(String importMapSource, boolean secure) {
        this.secure = secure;
        policy = String.join(
                "; ",
                "default-src 'none'",
                "script-src 'self' " + importMapSource,
                "style-src 'self'",
                "img-src 'self'",
                "font-src 'self'",
                "connect-src 'self'",
                "base-uri 'none'",
                "form-action 'none'",
                "frame-ancestors 'none'",
                "require-trusted-types-for 'script'",
                "trusted-types lit-html default");
    }

    public void put(Context answer) {
        answer.header("Content-Security-Policy", policy);
        answer.header("X-Content-Type-Options", "nosniff");
        answer.header("Referrer-Policy", "no-referrer");
        answer.header("Cross-Origin-Opener-Policy", "same-origin");
        answer.header("Cross-Origin-Resource-Policy", "same-origin");
        answer.header("Permissions-Policy", "camera=(), geolocation=(self), microphone=()");
        answer.header("Cache-Control", "no-store");
        if (secure) {
            answer.header("Strict-Transport-Security", A_YEAR);
        }
    }
}
