package org.hosewright.ledger.years;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.hosewright.evidence.pool.Batch;
import org.hosewright.evidence.pool.HoseType;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;

/** Which hoses of a kit are batches of one type.
 *
 * <p>A hose says so itself by its type; of those that do not, NAME-2019 and NAME-a are batches of NAME. Hose of another diameter or
 * with sections of another length is never of the same type.
 */
final class HoseGroups {
    private static final String BATCH_END = "-((19|20)\\d\\d|[a-z])$";

    private final Kit kit;
    private final Map<String, List<HoseRecord>> byType = new LinkedHashMap<>();

    /** The groups of the hoses that were flown. */
    HoseGroups(Kit kit, Set<String> flown) {
        this.kit = kit;
        kit.hoses().forEach((id, record) -> {
            if (flown.contains(id)) {
                byType.computeIfAbsent(type(id, record), any -> new ArrayList<>())
                        .add(record);
            }
        });
    }

    /** The types, each believed beforehand to lose what a book, a maker or an estimate says of its first batch that has one. */
    List<HoseType> listTypes() {
        List<HoseType> types = new ArrayList<>();
        byType.forEach((id, records) ->
                types.add(HoseType.of(id, believed(records).hose().loss().value())));
        return types;
    }

    List<Batch> listBatches() {
        List<Batch> batches = new ArrayList<>();
        byType.forEach((type, records) -> records.forEach(record -> batches.add(new Batch(
                record.hose().id(),
                type,
                record.made().isPresent() ? OptionalDouble.of(record.made().getAsInt()) : OptionalDouble.empty()))));
        return batches;
    }

    /** The types that were told by names alone, as sentences. */
    List<String> listAssumed() {
        List<String> assumed = new ArrayList<>();
        byType.forEach((type, records) -> {
            List<String> silent = records.stream()
                    .filter(record -> record.type().isEmpty())
                    .map(record -> record.hose().id())
                    .toList();
            if (!silent.isEmpty() && !silent.equals(List.of(type))) {
                assumed.add(String.join(", ", silent) + ": taken as hose of the type " + type + ", by name.");
            }
        });
        return assumed;
    }

    private static HoseRecord believed(List<HoseRecord> records) {
        return records.stream()
                .filter(record -> record.basis().kind() != Basis.Kind.TEST)
                .findFirst()
                .orElse(records.get(0));
    }

    private String type(String id, HoseRecord record) {
        String named = record.type().orElse(id.replaceFirst(BATCH_END, ""));
        boolean alike = kit.hoses().entrySet().stream()
                .filter(other -> other.getValue()
                        .type()
                        .orElse(other.getKey().replaceFirst(BATCH_END, ""))
                        .equals(named))
                .findFirst()
                .map(first -> isAlike(first.getValue().hose(), record.hose()))
                .orElse(true);
        return alike ? named : id;
    }

    private static boolean isAlike(Hose one, Hose other) {
        return one.diameter().equals(other.diameter()) && one.section().equals(other.section());
    }
}
