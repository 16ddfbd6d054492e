package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.hosewright.hydraulics.profile.Drawing;
import org.hosewright.hydraulics.profile.Mark;
import org.hosewright.hydraulics.profile.Plot;
import org.hosewright.hydraulics.profile.Point;

/** A drawing as JSON, its places to a tenth of its unit: the page only strokes it. */
final class DrawingJson {
    private static final double PLACES = 10;

    private DrawingJson() {}

    static ObjectNode of(Drawing drawing) {
        ObjectNode json = Answer.object().put("width", drawing.width()).put("height", drawing.height());
        Plot plot = drawing.plot();
        json.putObject("plot")
                .put("left", place(plot.left()))
                .put("right", place(plot.right()))
                .put("top", place(plot.top()))
                .put("bottom", place(plot.bottom()));
        ArrayNode marks = json.putArray("marks");
        drawing.marks().forEach(mark -> marks.add(mark(mark)));
        return json;
    }

    static double place(double value) {
        return Math.round(value * PLACES) / PLACES;
    }

    private static ObjectNode mark(Mark mark) {
        ObjectNode json = Answer.object().put("role", mark.role().word());
        if (mark instanceof Mark.Stroke stroke) {
            points(json.put("kind", "stroke"), stroke.points());
        } else if (mark instanceof Mark.Area area) {
            points(json.put("kind", "area"), area.points());
        } else if (mark instanceof Mark.Text text) {
            json.put("kind", "text").put("x", place(text.x())).put("y", place(text.y()));
            json.put("size", text.size()).put("anchor", text.anchor().word()).put("text", text.text());
        } else if (mark instanceof Mark.Dot dot) {
            json.put("kind", "dot").put("x", place(dot.x())).put("y", place(dot.y()));
            json.put("radius", dot.radius()).put("shape", dot.shape().word());
        }
        return json;
    }

    private static void points(ObjectNode json, List<Point> points) {
        ArrayNode all = json.putArray("points");
        points.forEach(point -> all.addArray().add(place(point.x())).add(place(point.y())));
    }
}
