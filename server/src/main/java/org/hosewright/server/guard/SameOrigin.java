package org.hosewright.server.guard;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Set;

/** Refuses changes that another site's page asks for. */
public final class SameOrigin {
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final Set<String> FROM_HERE = Set.of("same-origin", "none");

    /** A media type that no page of another site can send without asking first. */
    private static final String TYPE = "application/json";

    private final Caller caller;

    public SameOrigin(Caller caller) {
        this.caller = caller;
    }

    public void check(Context request) {
        if (READING.contains(request.req().getMethod())) {
            return;
        }
        String site = request.header("Sec-Fetch-Site");
        String origin = request.header("Origin");
        boolean foreignSite = site != null && !FROM_HERE.contains(site);
        boolean foreignOrigin = origin != null && !origin.equals(caller.origin(request));
        if (foreignSite || foreignOrigin) {
            throw new Refusal(403, "Asked for by another site", "Changes are made only from Hosewright's own pages.");
        }
        requireType(request);
    }

    private static void requireType(Context request) {
        String type = request.contentType();
        String plain = type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        if (!plain.equals(TYPE)) {
            throw new Refusal(
                    415, "Unknown kind of content", "The content must be " + TYPE + "; it says '" + plain + "'.");
        }
    }
}
