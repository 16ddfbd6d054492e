package org.hosewright.evidence.pool;

import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;

/** The way from many nights to what they say together. */
final class Pooling {
    /** A number is told where its deviation is at most this share of what it was beforehand. */
    private static final double HALVED = 0.5;

    /** Batches that differ so much say nothing of each other: of the logarithm of the loss. */
    private static final double APART = 3;

    private final Hierarchy hierarchy;
    private final Mixed problem;
    private final Weighed weighed;
    private final Blend blend;
    private final Blend within;

    Pooling(Hierarchy hierarchy) {
        this.hierarchy = hierarchy;
        problem = hierarchy.problem();
        weighed = new Weighed(problem, new double[] {PoolPriors.BATCHES, PoolPriors.NIGHTS});
        blend = Blend.of(weighed.nodes(), Weighed.Node::solved);
        within = Blend.of(
                weighed.nodes(),
                node -> problem.at(new double[] {Math.log(APART), node.logs().get(Hierarchy.NIGHTS)}));
    }

    Pool pool(List<PoolNight> leftOut) {
        return new Pool(
                hierarchy.year(),
                hierarchy.listTypes().stream().map(this::type).toList(),
                terms(),
                weighed.spread(Hierarchy.BATCHES),
                weighed.spread(Hierarchy.NIGHTS),
                hierarchy.nights().size(),
                leftOut);
    }

    private TypeLoss type(HoseType type) {
        int place = hierarchy.places().type(type.id());
        Told told = blend.told(place);
        double[] logs = weighed.likeliestLogs();
        Shares shares = new Shares(hierarchy, problem, logs, weighed.likeliest().covariances(place));
        return new TypeLoss(
                type.id(),
                loss(type, told),
                loss(type, blend.another(place)),
                hierarchy.listFlown(type.id()).stream()
                        .map(batch -> batch(type, batch))
                        .toList(),
                shares.list(),
                shares.ofBelief(),
                YearDrift.of(within.told(hierarchy.places().drift(type.id()))));
    }

    private BatchLoss batch(HoseType type, Batch batch) {
        List<String> nights = hierarchy.listNightsAt(hierarchy.places().batch(batch.id())).stream()
                .map(night -> hierarchy.nights().get(night).id())
                .toList();
        return new BatchLoss(
                batch.id(), loss(type, blend.told(hierarchy.places().batch(batch.id()))), nights);
    }

    private static Optional<Known<HoseLoss>> loss(HoseType type, Told told) {
        if (told.deviation() > HALVED * type.deviation()) {
            return Optional.empty();
        }
        double r = type.loss().r() * Math.exp(told.value());
        return Optional.of(Known.of(new HoseLoss(r), new HoseLoss(r * told.deviation())));
    }

    private List<PooledTerm> terms() {
        return hierarchy.places().listShared().stream()
                .flatMap(name -> findTerm(name).stream())
                .toList();
    }

    private Optional<PooledTerm> findTerm(String name) {
        Places places = hierarchy.places();
        Unknown unknown = places.shared(name);
        Told told = blend.told(places.place(name));
        Optional<String> id = places.findId(name);
        Optional<PooledTerm.Kind> kind = PooledTerm.findKind(unknown.role());
        if (id.isEmpty() || kind.isEmpty() || told.deviation() > HALVED) {
            return Optional.empty();
        }
        double error = Math.abs(unknown.slope(told.value())) * told.deviation();
        return Optional.of(
                new PooledTerm(kind.get(), id.get(), unknown.value(told.value()), error, places.nights(name)));
    }
}
