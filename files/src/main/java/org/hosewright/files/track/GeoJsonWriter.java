package org.hosewright.files.track;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.WalkedMark;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;

/** A walk as GeoJSON: the track as recorded, the smoothed way, and a point at every mark and section. */
final class GeoJsonWriter {
    /** Decimals of a degree: a tenth of a millimetre, so that a round trip changes nothing. */
    private static final int DECIMALS = 9;

    private final WalkReport report;
    private final SectionWords words;

    private GeoJsonWriter(WalkReport report) {
        this.report = report;
        this.words = new SectionWords(report);
    }

    static byte[] write(WalkReport report) {
        GeoJsonWriter writer = new GeoJsonWriter(report);
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("type", "FeatureCollection");
        document.put("features", writer.features());
        return ResultJson.write(document).getBytes(StandardCharsets.UTF_8);
    }

    private List<Object> features() {
        List<Object> features = new ArrayList<>();
        features.add(recorded(report.walk().track()));
        List<Fix> way = report.walk().way().stream()
                .map(point -> Fix.of(point.position()))
                .toList();
        features.add(feature(AntimeridianCut.of(way).geometry(), Map.of("kind", Gpx.SMOOTHED, "name", "smoothed way")));
        report.walk().marks().forEach(mark -> features.add(mark(mark)));
        report.sections().forEach(there -> features.add(section(there)));
        return features;
    }

    private static Map<String, Object> recorded(Track track) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("name", track.name());
        if (track.isTimed()) {
            properties.put(
                    "times",
                    track.fixes().stream()
                            .map(fix -> fix.time().orElseThrow().toString())
                            .toList());
        }
        if (track.fixes().stream().allMatch(fix -> fix.accuracy().isPresent())) {
            properties.put(
                    "accuracies",
                    track.fixes().stream()
                            .map(fix -> fix.accuracy().orElseThrow().metres())
                            .toList());
        }
        if (track.heights() == HeightOrigin.BAROMETER) {
            properties.put("heights", Gpx.BAROMETER);
        }
        return feature(AntimeridianCut.of(track.fixes()).geometry(), properties);
    }

    private Map<String, Object> mark(WalkedMark marked) {
        Fix fix = report.walk().track().fixes().get(marked.mark().at());
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("mark", marked.mark().kind().word());
        properties.put("note", marked.mark().note());
        fix.time().ifPresent(time -> properties.put("time", time.toString()));
        return feature(point(fix.position()), properties);
    }

    private Map<String, Object> section(SectionThere there) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("kind", Gpx.SECTION);
        properties.put("name", words.name(there));
        properties.put("says", words.says(there));
        return feature(point(there.mark().place().position()), properties);
    }

    private static Map<String, Object> point(Position position) {
        Map<String, Object> geometry = new LinkedHashMap<>();
        geometry.put("type", "Point");
        geometry.put("coordinates", coordinates(Fix.of(position)));
        return geometry;
    }

    private static Map<String, Object> feature(Map<String, Object> geometry, Map<String, Object> properties) {
        Map<String, Object> feature = new LinkedHashMap<>();
        feature.put("type", "Feature");
        feature.put("properties", properties);
        feature.put("geometry", geometry);
        return feature;
    }

    static List<Object> coordinates(Fix fix) {
        List<Object> coordinates = new ArrayList<>();
        coordinates.add(number(fix.position().longitude_deg()));
        coordinates.add(number(fix.position().latitude_deg()));
        fix.elevation().ifPresent(height -> coordinates.add(number(height.metres())));
        return coordinates;
    }

    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
    }
}
