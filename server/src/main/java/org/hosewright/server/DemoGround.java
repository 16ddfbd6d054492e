package org.hosewright.server;

import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hosewright.documents.picture.PlainPicture;
import org.hosewright.files.track.MapLayer;
import org.hosewright.files.track.TrackFile;
import org.hosewright.files.walk.StretchText;
import org.hosewright.files.walk.WalkText;
import org.hosewright.ground.walk.MeasuredLength;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.stretch.KeptStretch;
import org.hosewright.ledger.walk.KeptWalk;

/** The ground of the demonstration: the invented town as layers, a walk, a stretch with its picture. */
final class DemoGround {
    private static final String ATTRIBUTION = "drawn by hand for Brindle Falls, an invented town";
    private static final String WALK = "garden-court.walk.gpx";
    private static final String STRETCH = "garden-court.stretch.json";
    private static final String PICTURE = "garden-court.picture.jpg";

    private static final String PICTURE_ID = "garden-court-rear";

    private DemoGround() {}

    /** Adds what the record has none of. */
    static void fill(Leaves leaves, Act act) {
        if (leaves.list(LeafKind.LAYER).isEmpty()) {
            for (String layer : List.of("Lanes", "Buildings", "Hydrants")) {
                String id = layer.toLowerCase(Locale.ROOT);
                String text = new MapLayer(ATTRIBUTION, Demo.text("brindle-falls." + id + ".geojson")).write();
                leaves.save(new LeafDraft(LeafKind.LAYER, id, 0, layer, text), act);
            }
        }
        if (leaves.list(LeafKind.WALK).isEmpty()) {
            String name = TrackFile.read(Demo.bytes(WALK), WALK).name();
            var walk = new KeptWalk(
                    name,
                    Demo.text(WALK),
                    Optional.of("crosslay-1-200"),
                    Optional.empty(),
                    MeasuredLength.By.TAPE,
                    List.of(PICTURE_ID),
                    false,
                    Optional.empty());
            leaves.save(LeafDraft.ofNew(LeafKind.WALK, name, WalkText.write(walk, UnitSystem.US)), act);
        }
        if (leaves.list(LeafKind.STRETCH).isEmpty()) {
            stretch(leaves, act);
        }
    }

    private static void stretch(Leaves leaves, Act act) {
        String base64 = Base64.getEncoder().encodeToString(PlainPicture.of(Demo.bytes(PICTURE)));
        leaves.save(new LeafDraft(LeafKind.PICTURE, PICTURE_ID, 0, "The rear stair, from the court", base64), act);
        KeptStretch read = StretchText.read(Demo.text(STRETCH));
        KeptStretch stretch = read.withPictures(List.of(PICTURE_ID));
        leaves.save(
                LeafDraft.ofNew(LeafKind.STRETCH, stretch.address(), StretchText.write(stretch, UnitSystem.US)), act);
    }
}
