package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hosewright.ledger.history.Hat;
import org.hosewright.server.api.Api;
import org.hosewright.server.api.Route;
import org.hosewright.server.door.Admission;
import org.hosewright.server.setup.ServerConfig;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The description of the API against the routes that there are. */
final class OpenApiTest {
    @TempDir
    private Path folder;

    @Test
    void describedRoutesAgree() throws Exception {
        try (var running = Running.demo(folder)) {
            JsonNode document = new ObjectMapper()
                    .readTree(running.get("/api/v1/openapi.json").body());
            Set<String> described = new TreeSet<>();
            document.path("paths")
                    .properties()
                    .forEach(path -> path.getValue()
                            .fieldNames()
                            .forEachRemaining(method -> described.add(method + " " + path.getKey())));
            var api = new Api(new ServerConfig(0, Running.CLOCK, true), running.ports());
            Set<String> there = api.listRoutes().stream()
                    .map(route -> route.method().name().toLowerCase(Locale.ROOT) + " " + route.path())
                    .collect(Collectors.toCollection(TreeSet::new));
            assertThat(described).isEqualTo(there);
        }
    }

    @Test
    void describedHatsAgree() throws Exception {
        try (var running = Running.demo(folder)) {
            JsonNode paths = new ObjectMapper()
                    .readTree(running.get("/api/v1/openapi.json").body())
                    .path("paths");
            var api = new Api(new ServerConfig(0, Running.CLOCK, true), running.ports());
            for (Route route : api.listRoutes()) {
                JsonNode described =
                        paths.path(route.path()).path(route.method().name().toLowerCase(Locale.ROOT));
                Set<String> hats = new TreeSet<>();
                described.path("x-hats").forEach(hat -> hats.add(hat.textValue()));
                assertThat(hats)
                        .as(route.method() + " " + route.path())
                        .isEqualTo(route.admission().hats().stream()
                                .map(Hat::word)
                                .collect(Collectors.toCollection(TreeSet::new)));
                boolean open = described.path("security").isArray();
                assertThat(open).as(route.path()).isEqualTo(route.admission().kind() == Admission.Kind.ANYBODY);
            }
        }
    }

    @Test
    void referencesWithinTheDescriptionHold() throws Exception {
        try (var running = Running.demo(folder)) {
            JsonNode document = new ObjectMapper()
                    .readTree(running.get("/api/v1/openapi.json").body());
            for (JsonNode reference : document.findValues("$ref")) {
                assertThat(document.at(reference.textValue().substring(1)).isMissingNode())
                        .as(reference.textValue())
                        .isFalse();
            }
        }
    }
}
