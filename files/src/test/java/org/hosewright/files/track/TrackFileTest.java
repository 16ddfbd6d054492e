package org.hosewright.files.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.MarkKind;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.track.TrackMark;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.walk.WalkReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TrackFileTest {
    /** What writing nine decimals of a degree leaves [m]. */
    private static final double WRITTEN_m = 2e-4;

    private static final String GPX = "<gpx version=\"1.1\" creator=\"x\" xmlns=\"http://www.topografix.com/GPX/1/1\">";

    private static WalkReport report(Track track) {
        return WalkReport.of(Walk.of(WalkQuestion.of(track, Length.ofFeet(50))), UnitSystem.US);
    }

    /** A walk at one position a second, across the antimeridian if it starts near it. */
    private static Track walk(long seed, double longitude) {
        SplittableRandom random = new SplittableRandom(seed);
        Instant start = Instant.parse("2026-05-12T18:00:00Z");
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double east = longitude + i * 2e-5 + 1e-6 * random.nextDouble();
            Position place = new Position(-16.5 + 1e-6 * i, east > 180 ? east - 360 : east);
            fixes.add(new Fix(
                    place,
                    Optional.of(start.plus(Duration.ofMillis(1000L * i))),
                    Optional.of(new Length(4.5)),
                    Optional.of(new Length(12 + 0.25 * i))));
        }
        List<TrackMark> marks = List.of(
                new TrackMark(MarkKind.CORNER, 20, "round the \"blue\" shed & <fence>"),
                new TrackMark(MarkKind.DOOR, 59, ""));
        return new Track("Mill Lane", fixes, marks, HeightOrigin.BAROMETER);
    }

    @ParameterizedTest
    @EnumSource
    void roundTripsHold(TrackFile.Form form) {
        for (double longitude : new double[] {-72.6, 179.9995, 0}) {
            Track before = walk(7, longitude);
            Track after = TrackFile.read(TrackFile.write(report(before), form), "walk");
            assertThat(after.name()).isEqualTo(before.name());
            assertThat(after.marks()).isEqualTo(before.marks());
            assertThat(after.heights()).isEqualTo(before.heights());
            assertThat(after.fixes()).hasSameSizeAs(before.fixes());
            for (int i = 0; i < before.fixes().size(); i++) {
                Fix one = before.fixes().get(i);
                Fix other = after.fixes().get(i);
                assertThat(Earth.distance(one.position(), other.position()).metres())
                        .isCloseTo(0, within(WRITTEN_m));
                assertThat(other.time()).isEqualTo(one.time());
                assertThat(other.accuracy()).isEqualTo(one.accuracy());
                assertThat(other.elevation()).isEqualTo(one.elevation());
            }
        }
    }

    /** source: RFC 7946, sections 3.1.1 and 3.1.9. */
    @Test
    void orderAndAntimeridianMatchesPublished() {
        String text =
                new String(TrackFile.write(report(walk(7, 179.9995)), TrackFile.Form.GEOJSON), StandardCharsets.UTF_8);
        assertThat(text).contains("MultiLineString");
        String point = "{\"type\":\"LineString\",\"coordinates\":[[100.0,0.0],[101.0,1.0]]}";
        assertThatThrownBy(() -> report(TrackFile.read(point.getBytes(StandardCharsets.UTF_8), "rfc")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("within 100 km");
        Track read = TrackFile.read(point.getBytes(StandardCharsets.UTF_8), "rfc");
        assertThat(read.last().position()).isEqualTo(new Position(1, 101));
    }

    @Test
    void swappedLatitudeAndLongitudeRefused() {
        refused(
                "{\"type\":\"LineString\",\"coordinates\":[[44.1,-172.6],[44.1,-172.7]]}",
                "look swapped",
                "position 1");
        refused("{\"type\":\"LineString\",\"coordinates\":[[44.1,-72.6],[44.1,-72.7]]}", "look swapped", "position 1");
        refused(gpx("<trkpt lat=\"-122.1\" lon=\"37.2\"/>"), "look swapped", "line 1");
    }

    @Test
    void hostileAndBrokenFilesRefused() {
        String bomb = "<!DOCTYPE gpx [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]>" + GPX + "<trk><name>&b;</name>";
        refused(bomb, "document type", "line 1");
        String outside = "<!DOCTYPE gpx [<!ENTITY a SYSTEM \"file:///etc/passwd\">]>\n" + GPX + "<trk/></gpx>";
        refused(outside, "document type", "line");
        refused(gpx("<trkpt lat=\"44\" lon=\"-72\">"), "broken XML", "line 1");
        refused(GPX + "\n\n<trk><trkseg><trkpt lat=\"44\"/></trkseg></trk></gpx>", "without lon", "line 3");
        refused(gpx("<trkpt lat=\"vier\" lon=\"-72\"/>"), "degrees as a number", "line 1");
        refused(gpx("<trkpt lat=\"NaN\" lon=\"-72\"/>"), "degrees as a number", "line 1");
        refused(gpx("<trkpt lat=\"44\" lon=\"-72\"/>"), "two positions or more", "walk");
        refused(GPX.replace("1.1\" creator", "1.0\" creator") + "</gpx>", "version 1.0", "line 1");
        refused("<kml/>", "an element <kml>", "line 1");
        refused("{\"type\":\"LineString\",\"coordinates\":[[1,2],", "whole JSON", "line 1");
        refused("{\"type\":\"LineString\",\"coordinates\":[[1,\"2\"],[1,2]]}", "longitude from -180", "position 1");
        refused("{\"type\":\"Point\",\"coordinates\":[1,2]}", "LineString", "walk");
        refused("walked it twice", "GPX 1.1 or GeoJSON", "walk");
        refused("", "GPX 1.1 or GeoJSON", "walk");
    }

    @Test
    void brokenBytesRefused() {
        byte[] broken = (GPX + "\n<trk><name>?</name></trk></gpx>").getBytes(StandardCharsets.UTF_8);
        broken[new String(broken, StandardCharsets.UTF_8).indexOf('?')] = (byte) 0xFF;
        assertThatThrownBy(() -> TrackFile.read(broken, "walk"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("line 2")
                .hasMessageContaining("UTF-8");
    }

    @Test
    void hugeFilesRefused() {
        String deep = "[".repeat(200);
        refused("{\"type\":\"LineString\",\"coordinates\":" + deep, "levels deep", "line 1");
        refused(gpx("<trkpt lat=\"44\" lon=\"-72\"/>".repeat(120_000)), "more than 100000 positions", "line 1");
        refused("{\"a\":[" + "1,".repeat(900_000) + "1]}", "values", "line 1");
        refused("<" + "x".repeat(11_000_000), "10 MB", "walk");
        refused(GPX + "<a>".repeat(100), "elements within elements", "line 1");
    }

    /** The same broken file never costs more than an error: every prefix and many a changed byte. */
    @Test
    void damagedFilesEndInASentenceHold() {
        SplittableRandom random = new SplittableRandom(99);
        for (TrackFile.Form form : TrackFile.Form.values()) {
            byte[] whole = TrackFile.write(report(walk(3, -72.6)), form);
            for (int i = 0; i < 400; i++) {
                byte[] damaged = java.util.Arrays.copyOf(whole, 1 + random.nextInt(whole.length));
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
                try {
                    TrackFile.read(damaged, "damaged");
                } catch (InvalidInput said) {
                    assertThat(said.getMessage()).contains("damaged");
                }
            }
        }
    }

    @Test
    void missingFileRefused() {
        assertThatThrownBy(() -> TrackFile.read(Path.of("no-such.gpx"))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> TrackFile.Form.of("walk.kml")).hasMessageContaining(".geojson");
    }

    private static String gpx(String points) {
        return GPX + "<trk><trkseg>" + points + "</trkseg></trk></gpx>";
    }

    private static void refused(String text, String... says) {
        byte[] content = text.getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> TrackFile.read(content, "walk"))
                .isInstanceOf(InvalidInput.class)
                .satisfies(error -> assertThat(error.getMessage()).contains(says));
    }
}
