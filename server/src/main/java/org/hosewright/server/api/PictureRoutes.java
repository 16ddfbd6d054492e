package org.hosewright.server.api;

import io.javalin.http.Context;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.hosewright.documents.picture.PlainPicture;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;

/** Photographs of the company: kept without what a camera writes beside the picture, such as where it stood. */
final class PictureRoutes {
    private final Leaves leaves;

    PictureRoutes(Leaves leaves) {
        this.leaves = leaves;
    }

    List<Route> list() {
        return List.of(
                Route.post("/pictures", LeafKind.PICTURE.hat(), this::keep),
                Route.get("/pictures/{picture}", this::show));
    }

    private void keep(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "name", "photograph"));
        byte[] plain = PlainPicture.of(decoded(asked.text("photograph")));
        var draft = LeafDraft.ofNew(
                LeafKind.PICTURE, asked.text("name"), Base64.getEncoder().encodeToString(plain));
        LeafJson.send(answer.status(201), leaves.save(draft, asked.act()));
    }

    private void show(Context answer) {
        String text = leaves.find(LeafKind.PICTURE, answer.pathParam("picture"))
                .orElseThrow(() -> Refused.unknown("picture"))
                .text();
        answer.contentType("image/jpeg").result(Base64.getDecoder().decode(text));
    }

    private static byte[] decoded(String base64) {
        try {
            return Base64.getDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            throw new InvalidInput("photograph", "not base64", "a picture, base64-encoded", "");
        }
    }
}
