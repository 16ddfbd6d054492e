package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.track.TerrainFolder;
import org.hosewright.files.walk.WalkText;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.SectionMark;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderedPressure;
import org.hosewright.ledger.walk.KeptWalk;
import org.hosewright.ledger.walk.OrderedFigures;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkPicture;
import org.hosewright.ledger.walk.WalkReport;
import org.hosewright.server.setup.ServerConfig;

/** Where walks are worked out, with the kit in force where there is one. */
final class WalkDesk {
    /** Packages whose reach is shown beside one another. */
    private static final int MOST_REACHES = 12;

    /** A tile takes up to 26 MB. */
    private static final int TILES_KEPT = 2;

    private static final Length US_SECTION = Length.ofFeet(50);
    private static final Length SI_SECTION = Length.ofMetres(25);

    private final Leaves leaves;
    private final CurrentKit current;
    private final OrderDesk orders;
    private final ServerConfig config;
    private final Cache<String, Optional<Terrain>> tiles =
            Caffeine.newBuilder().maximumSize(TILES_KEPT).build();

    WalkDesk(Leaves leaves, CurrentKit current, OrderDesk orders, ServerConfig config) {
        this.leaves = leaves;
        this.current = current;
        this.orders = orders;
        this.config = config;
    }

    /** A walk with its track read. */
    record Recorded(KeptWalk kept, Track track) {
        static Recorded of(Leaf leaf) {
            KeptWalk walk = WalkText.read(leaf.text());
            return new Recorded(walk, WalkText.track(walk));
        }
    }

    Leaf leaf(String id) {
        return leaves.find(LeafKind.WALK, id).orElseThrow(() -> Refused.unknown("walk"));
    }

    Recorded get(String id) {
        return Recorded.of(leaf(id));
    }

    /** The package asked for, else the one that the walk was walked for. */
    Optional<String> chosen(Context request, Recorded walk) {
        return Queried.find(request, "package").or(() -> walk.kept().hosePackage());
    }

    /** What a walk tells, with a package where one is chosen and the company has a kit. */
    WalkReport report(Recorded walk, Optional<String> chosen) {
        Optional<Kit> company = findKit();
        if (chosen.isEmpty() || company.isEmpty()) {
            return WalkReport.of(walk.kept().walk(walk.track(), section(), terrain(walk.track())), units());
        }
        HosePackage named = KitLines.get(company.get().packages(), chosen.get(), "package");
        String last = named.hose().get(named.hose().size() - 1).hose();
        Length section = KitLines.hose(company.get(), last).section();
        return WalkReport.of(
                walk.kept().walk(walk.track(), section, terrain(walk.track())),
                company.get(),
                named.id(),
                ordered(named.id()),
                today());
    }

    /** What the order in force says for a package, where there is one; an order's figures are for level ground. */
    private OrderedFigures ordered(String hosePackage) {
        OrderBook book = orders.book();
        return book.inForce()
                .map(revision -> orders.look(book, revision.number()).set())
                .map(set -> (OrderedFigures) hose -> set.find(hosePackage, hose).map(OrderedPressure::figure))
                .orElse(OrderedFigures.NONE);
    }

    /** The profile to the first section's end that is not safe, or else to the end of the way. */
    Optional<LineProfile> findPicture(WalkReport report) {
        return findShown(report)
                .flatMap(last -> WalkPicture.of(
                        report, findKit().orElseThrow(), report.named().orElseThrow(), last, today()));
    }

    private static Optional<SectionThere> findShown(WalkReport report) {
        List<SectionThere> laid = report.sections().stream()
                .filter(there -> there.line().isPresent())
                .toList();
        return laid.stream()
                .filter(there -> !there.line().orElseThrow().isSafe())
                .findFirst()
                .or(() -> laid.stream().reduce((earlier, later) -> later));
    }

    /** How far each package of an engine is safe along a walk, and where that is. */
    record Reaches(String hosePackage, Length safe, Optional<SectionMark> at) {}

    /** The reach of every package of the chosen one's engine along the way; none without a package. */
    List<Reaches> listReaches(WalkReport report) {
        return report.named().stream()
                .flatMap(chosen -> findKit().orElseThrow().packages().values().stream()
                        .filter(other -> other.engine().equals(chosen.engine())))
                .limit(MOST_REACHES)
                .map(other -> reaches(WalkReport.of(report.walk(), findKit().orElseThrow(), other.id(), today())))
                .toList();
    }

    private static Reaches reaches(WalkReport report) {
        Length safe = report.longestSafe().orElseThrow();
        Optional<SectionMark> at = report.sections().stream()
                .map(SectionThere::mark)
                .filter(mark -> mark.hose().metres() <= safe.metres() * (1 + 1e-9))
                .reduce((earlier, later) -> later);
        return new Reaches(report.named().orElseThrow().id(), safe, at);
    }

    String company() {
        return findKit().map(Kit::company).orElse("");
    }

    UnitSystem units() {
        return findKit().map(Kit::units).orElse(UnitSystem.US);
    }

    Optional<Kit> findKit() {
        return current.find().map(read -> read.document().kit());
    }

    private Optional<LocalDate> today() {
        return findKit().map(now -> LocalDate.ofInstant(config.clock().instant(), ZoneId.of(now.zone())));
    }

    /** The heights where a track begins, where the company has a terrain file of it. */
    private Optional<Terrain> terrain(Track track) {
        return config.terrain()
                .flatMap(folder -> tiles.get(
                        TerrainFolder.tile(track.first().position()), tile -> new TerrainFolder(folder).find(tile)));
    }

    private Length section() {
        return section(units());
    }

    /** What a section is taken to be where no package says. */
    static Length section(UnitSystem units) {
        return units == UnitSystem.US ? US_SECTION : SI_SECTION;
    }
}
