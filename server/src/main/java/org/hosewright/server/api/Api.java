package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.person.People;
import org.hosewright.server.door.Doorkeeper;
import org.hosewright.server.guard.Caller;
import org.hosewright.server.password.Passwords;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;

/** All doors of the API. */
public final class Api {
    private final ServerConfig config;
    private final CurrentKit kit;
    private final List<Route> routes;
    private final Passwords passwords = new Passwords();
    private final Doorkeeper doorkeeper;

    public Api(ServerConfig config, Ports ports) {
        this.config = config;
        kit = new CurrentKit(ports.kits());
        var desk = new OrderDesk(ports.orders(), kit, new BedDesk(ports.leaves()), config.clock());
        var stretches = new StretchDesk(ports.leaves(), kit, desk);
        var practice = new PracticeDesk(ports.leaves(), desk, kit);
        var signing = new SigningRoutes(ports.leaves(), ports.people());
        doorkeeper = new Doorkeeper(ports.people(), passwords, new Caller(config.listening()));
        routes = Stream.of(
                        List.of(Route.get("/company", this::company), Route.get("/openapi.json", Api::describe)),
                        new StationRoutes(kit, ports.drills(), desk, stretches.watch(), practice).list(),
                        new KitRoutes(ports.kits(), kit).list(),
                        new ReachRoutes(kit, config.clock()).list(),
                        new LayRoutes(kit, config.clock()).list(),
                        new PaperRoutes(kit, desk, config).list(),
                        listDoors(ports.people()),
                        signing.list(),
                        new OrderRoutes(ports.orders(), signing, desk).list(),
                        new PracticeRoutes(ports.leaves(), practice, config).list(),
                        new BedRoutes(desk, kit).list(),
                        listExchange(ports, desk),
                        listGround(ports, desk, stretches),
                        listTests(ports),
                        new HistoryRoutes(ports.history()).list())
                .flatMap(List::stream)
                .toList();
    }

    /** Test nights planned, flown and worked out; kinds compared. */
    private List<Route> listTests(Ports ports) {
        var plans = new PlanDesk(ports.leaves(), kit);
        var trials = new TrialDesk(ports.leaves(), kit, config.clock());
        var drills = new DrillRoutes(ports.drills(), kit);
        return Stream.of(
                        drills.list(),
                        new AnalysisRoutes(drills, kit, config).list(),
                        new YearsRoutes(ports.drills(), kit).list(),
                        new PlanRoutes(ports.leaves(), ports.drills(), plans, config).list(),
                        new TrialRoutes(ports.leaves(), trials, config).list())
                .flatMap(List::stream)
                .toList();
    }

    private List<Route> listExchange(Ports ports, OrderDesk desk) {
        var exchange = new ExchangeDesk(ports, desk, kit, config.clock());
        return new ExchangeRoutes(exchange, new ExchangePapers(config)).list();
    }

    private List<Route> listDoors(People people) {
        return Stream.of(
                        new SessionRoutes(people, passwords, doorkeeper).list(),
                        new PeopleRoutes(people, passwords, doorkeeper).list())
                .flatMap(List::stream)
                .toList();
    }

    private List<Route> listGround(Ports ports, OrderDesk desk, StretchDesk stretches) {
        var walks = new WalkDesk(ports.leaves(), kit, desk, config);
        return Stream.of(
                        new WalkRoutes(ports.leaves(), walks).list(),
                        new StretchRoutes(ports.leaves(), stretches).list(),
                        new GroundPapers(ports.leaves(), stretches, walks, desk, config).list(),
                        new LayerRoutes(ports.leaves()).list(),
                        new PictureRoutes(ports.leaves()).list())
                .flatMap(List::stream)
                .toList();
    }

    public List<Route> listRoutes() {
        return routes;
    }

    public void addTo(JavalinConfig server) {
        server.router.mount(doors ->
                routes.forEach(route -> doors.addHttpHandler(route.method(), Route.ROOT + route.path(), request -> {
                    doorkeeper.admit(request, route.admission());
                    route.handler().handle(request);
                })));
    }

    private void company(Context answer) {
        CurrentKit.Read now = kit.get();
        Kit what = now.document().kit();
        ObjectNode json = Answer.object()
                .put("company", what.company())
                .put("units", what.units().word());
        what.engines().keySet().forEach(json.putArray("engines")::add);
        json.put("zone", what.zone()).put("demo", config.demo());
        Answer.json(answer, json.put("kitVersion", now.revision().version()).put("revision", now.code()));
    }

    private static void describe(Context answer) {
        try (InputStream document = Api.class.getResourceAsStream("/org/hosewright/server/openapi.json")) {
            answer.contentType("application/json; charset=utf-8")
                    .result(Objects.requireNonNull(document, "openapi.json").readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
