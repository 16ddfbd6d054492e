package org.hosewright.server.api;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

/** One door of the API.
 *
 * @param method GET, POST or PUT
 * @param path below {@link #ROOT}, parameters in braces
 * @param handler what it does
 */
public record Route(HandlerType method, String path, Handler handler) {
    /** Where the API of this edition stands. */
    public static final String ROOT = "/api/v1";

    static Route get(String path, Handler handler) {
        return new Route(HandlerType.GET, path, handler);
    }

    static Route post(String path, Handler handler) {
        return new Route(HandlerType.POST, path, handler);
    }
}
