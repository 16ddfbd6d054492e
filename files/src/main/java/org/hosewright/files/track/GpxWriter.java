package org.hosewright.files.track;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.WalkedMark;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A walk as GPX 1.1: the track as recorded, the smoothed way, and a way point at every mark and section. */
final class GpxWriter {
    /** Decimals of a degree: a tenth of a millimetre. */
    private static final int DECIMALS = 9;

    private final WalkReport report;
    private final SectionWords words;
    private final DocumentBuilder documents;

    private GpxWriter(WalkReport report) {
        this.report = report;
        this.words = new SectionWords(report);
        try {
            documents = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder();
        } catch (ParserConfigurationException never) {
            throw new IllegalStateException("no XML on this machine", never);
        }
    }

    static byte[] write(WalkReport report) {
        GPX gpx = new GpxWriter(report).gpx();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            GPX.Writer.of(GPX.Writer.Indent.SPACE2, DECIMALS).write(gpx, out);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return out.toByteArray();
    }

    private GPX gpx() {
        Track track = report.walk().track();
        GPX.Builder gpx = GPX.builder(GPX.Version.V11, "Hosewright");
        report.walk().marks().forEach(mark -> gpx.addWayPoint(mark(mark)));
        report.sections().forEach(there -> gpx.addWayPoint(section(there)));
        List<WayPoint> recorded = track.fixes().stream().map(this::fix).toList();
        gpx.addTrack(builder -> {
            builder.name(track.name()).addSegment(TrackSegment.of(recorded));
            if (track.heights() == HeightOrigin.BAROMETER) {
                builder.src(Gpx.BAROMETER);
            }
        });
        List<WayPoint> way = report.walk().way().stream()
                .map(point -> at(point.position()).build())
                .toList();
        gpx.addTrack(builder -> builder.name("smoothed way").type(Gpx.SMOOTHED).addSegment(TrackSegment.of(way)));
        return gpx.build();
    }

    private static WayPoint.Builder at(Position position) {
        return WayPoint.builder().lat(position.latitude_deg()).lon(position.longitude_deg());
    }

    private WayPoint fix(Fix fix) {
        WayPoint.Builder point = at(fix.position());
        fix.time().ifPresent(point::time);
        fix.elevation().ifPresent(height -> point.ele(height.metres()));
        fix.accuracy().ifPresent(radius -> point.extensions(accuracy(radius.metres())));
        return point.build();
    }

    private Document accuracy(double radius_m) {
        Document document = documents.newDocument();
        Element extensions = document.createElementNS("http://www.topografix.com/GPX/1/1", "extensions");
        Element accuracy = document.createElementNS(Gpx.NAMESPACE, Gpx.ACCURACY);
        accuracy.setTextContent(Numbers.plain(radius_m));
        extensions.appendChild(accuracy);
        document.appendChild(extensions);
        return document;
    }

    private WayPoint mark(WalkedMark marked) {
        Fix fix = report.walk().track().fixes().get(marked.mark().at());
        WayPoint.Builder point = at(fix.position())
                .name(marked.mark().kind().word())
                .type(marked.mark().kind().word());
        fix.time().ifPresent(point::time);
        if (!marked.mark().note().isEmpty()) {
            point.desc(marked.mark().note());
        }
        return point.build();
    }

    private WayPoint section(SectionThere there) {
        return at(there.mark().place().position())
                .name(words.name(there))
                .desc(words.says(there))
                .type(Gpx.SECTION)
                .build();
    }
}
