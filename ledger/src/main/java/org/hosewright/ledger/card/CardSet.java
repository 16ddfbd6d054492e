package org.hosewright.ledger.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;

/** Every card, tag and pocket card of a company, from one kit: they cannot disagree.
 *
 * @param kit the kit
 * @param revision revision code that each sheet bears
 * @param made day it was made
 * @param step what pressures are rounded to
 * @param engines by engine, in the kit's order
 * @param assumed each default that a number rests on
 */
public record CardSet(
        Kit kit, String revision, LocalDate made, Pressure step, List<EngineCard> engines, List<String> assumed) {
    public CardSet {
        engines = List.copyOf(engines);
        assumed = List.copyOf(assumed);
    }

    /** The same, where the card of a rig that another serves for says so.
     *
     * @param reserves by id of the engine that is replaced, the id of the one that serves in its place
     */
    public CardSet replaced(Map<String, String> reserves) {
        List<EngineCard> cards = engines.stream()
                .map(card -> Optional.ofNullable(
                                reserves.get(card.engine().engine().id()))
                        .map(card::replacedBy)
                        .orElse(card))
                .toList();
        return new CardSet(kit, revision, made, step, cards, assumed);
    }

    /** The cards of one engine, from the same numbers. */
    public CardSet ofEngine(String engine) {
        List<EngineCard> its = engines.stream()
                .filter(card -> card.engine().engine().id().equals(engine))
                .toList();
        return new CardSet(kit, revision, made, step, its, assumed);
    }
}
