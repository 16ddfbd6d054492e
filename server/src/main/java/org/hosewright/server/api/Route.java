package org.hosewright.server.api;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import org.hosewright.ledger.history.Hat;
import org.hosewright.server.door.Admission;

/** One door of the API.
 *
 * @param method GET or POST
 * @param path below {@link #ROOT}, parameters in braces
 * @param admission what it asks of the one who comes
 * @param handler what it does
 */
public record Route(HandlerType method, String path, Admission admission, Handler handler) {
    /** Where the API of this edition stands. */
    public static final String ROOT = "/api/v1";

    /** A look at the record, for everybody who has an account. */
    static Route get(String path, Handler handler) {
        return get(path, Admission.ACCOUNT, handler);
    }

    static Route get(String path, Admission admission, Handler handler) {
        return new Route(HandlerType.GET, path, admission, handler);
    }

    /** A question that changes nothing, for everybody who has an account. */
    static Route ask(String path, Handler handler) {
        return post(path, Admission.ACCOUNT, handler);
    }

    /** A change, for those who wear a hat. */
    static Route post(String path, Hat hat, Handler handler) {
        return post(path, Admission.of(hat), handler);
    }

    static Route post(String path, Admission admission, Handler handler) {
        return new Route(HandlerType.POST, path, admission, handler);
    }
}
