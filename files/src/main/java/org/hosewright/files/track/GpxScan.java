package org.hosewright.files.track;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** A first pass through a GPX file that builds nothing: hostile, huge and broken files are refused with their line.
 *
 * <p>Entities and document types are off, so nothing is ever loaded from elsewhere and nothing can swell.
 */
final class GpxScan {
    private static final int DEEPEST = 32;

    /** Elements that other programs add, all together: each costs memory. */
    private static final int MOST_EXTENSIONS = 100_000;

    private static final Set<String> POINTS = Set.of("wpt", "trkpt", "rtept");

    private final String source;
    private final XMLStreamReader reader;
    private int depth;
    private int extensionDepth = Integer.MAX_VALUE;
    private int extensions;
    private int points;
    private final List<Optional<Double>> accuracies = new ArrayList<>();
    private boolean ours;

    private GpxScan(XMLStreamReader reader, String source) {
        this.reader = reader;
        this.source = source;
    }

    /** Passes through a file.
     *
     * @return the accuracy of every track point in file order, where its own element states one [m]
     * @throws InvalidInput anything that is not a sound GPX 1.1 file
     */
    static List<Optional<Double>> of(byte[] content, String source) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            GpxScan scan = new GpxScan(factory.createXMLStreamReader(new ByteArrayInputStream(content)), source);
            scan.run();
            return List.copyOf(scan.accuracies);
        } catch (XMLStreamException broken) {
            int line = broken.getLocation() == null ? 1 : broken.getLocation().getLineNumber();
            throw new InvalidInput("GPX file", "broken XML", "a whole GPX 1.1 file", source + ", line " + line);
        }
    }

    private void run() throws XMLStreamException {
        while (reader.hasNext()) {
            switch (reader.next()) {
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw refused("a document type or an entity", "a GPX file without document type and entities");
                case XMLStreamConstants.START_ELEMENT -> open();
                case XMLStreamConstants.END_ELEMENT -> close();
                case XMLStreamConstants.CHARACTERS -> text();
                default -> {
                    // Comments and the like say nothing.
                }
            }
        }
    }

    private void open() {
        depth++;
        String name = reader.getLocalName();
        if (depth > DEEPEST) {
            throw refused("elements within elements, " + depth + " deep", "at most " + DEEPEST + " deep");
        }
        if (depth == 1) {
            root(name);
        }
        if (name.equals("extensions") && extensionDepth > depth) {
            extensionDepth = depth;
        }
        if (extensionDepth < depth) {
            ours = Gpx.NAMESPACE.equals(reader.getNamespaceURI()) && name.equals(Gpx.ACCURACY);
            extensions++;
        } else if (POINTS.contains(name)) {
            point(name);
        }
        if (extensions > MOST_EXTENSIONS) {
            throw refused(
                    "more than " + MOST_EXTENSIONS + " extension elements", "a track exported without extensions");
        }
    }

    private void root(String name) {
        String version = reader.getAttributeValue(null, "version");
        if (!name.equals("gpx") || !"1.1".equals(version)) {
            String given = name.equals("gpx") ? "version " + version : "an element <" + name + ">";
            throw refused(given, "a GPX file of version 1.1");
        }
    }

    private void point(String name) {
        points++;
        if (points > Track.MOST_FIXES + Track.MOST_MARKS) {
            throw refused("more than " + Track.MOST_FIXES + " positions", "one walk");
        }
        if (name.equals("trkpt")) {
            accuracies.add(Optional.empty());
        }
        double latitude = degrees("lat");
        Swapped.check(latitude, degrees("lon"), "lat from -90 to 90, lon from -180 to 180", place());
    }

    private double degrees(String name) {
        String text = reader.getAttributeValue(null, name);
        if (text == null) {
            throw refused("a position without " + name, "lat and lon at every position");
        }
        try {
            return Numbers.requireFinite(name, Double.parseDouble(text));
        } catch (NumberFormatException | InvalidInput wrong) {
            throw new InvalidInput(name, text, "degrees as a number with a point", place());
        }
    }

    private void text() {
        if (ours && !accuracies.isEmpty()) {
            String text = reader.getText().strip();
            try {
                double radius_m = Numbers.requirePositive(Gpx.ACCURACY, Double.parseDouble(text));
                accuracies.set(accuracies.size() - 1, Optional.of(radius_m));
            } catch (NumberFormatException | InvalidInput wrong) {
                throw new InvalidInput(Gpx.ACCURACY, text, "metres above 0", place());
            }
        }
    }

    private void close() {
        ours = false;
        if (depth == extensionDepth) {
            extensionDepth = Integer.MAX_VALUE;
        }
        depth--;
    }

    private InvalidInput refused(String given, String allowed) {
        return new InvalidInput("GPX file", given, allowed, place());
    }

    private String place() {
        return source + ", line " + reader.getLocation().getLineNumber();
    }
}
