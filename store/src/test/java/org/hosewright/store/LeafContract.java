package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafHead;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every store owes the leaves: whole, in versions, none lost. */
abstract class LeafContract extends StoreCase {
    private static final Act WALKING = new Act("A. Fenn", "before the drill");

    private Leaves leaves;

    @BeforeEach
    void begin() {
        leaves = store.leaves();
    }

    @Test
    void savedLeafComesBackUnchanged() {
        Leaf mill = saved(leaves.save(LeafDraft.ofNew(LeafKind.WALK, "Mill Lane", "{\"fixes\": \u00bd}\n"), WALKING));
        assertThat(mill.version()).isEqualTo(1);
        assertThat(leaves.find(LeafKind.WALK, mill.id())).contains(mill);
        assertThat(mill.text()).isEqualTo("{\"fixes\": \u00bd}\n");
        assertThat(mill.mark().who()).isEqualTo("A. Fenn");
        assertThat(leaves.find(LeafKind.STRETCH, mill.id())).isEmpty();
        assertThat(store.history().listAbout(Subject.LEAF, "walk/" + mill.id(), 9))
                .extracting(Entry::what, Entry::hat)
                .containsExactly(tuple("added the walk Mill Lane", "recorder"));
    }

    @Test
    void everyVersionStaysHolds() {
        bed("one", 0);
        bed("two", 1);
        assertThat(leaves.find(LeafKind.BED, "engine-41").orElseThrow().text()).isEqualTo("two");
        assertThat(leaves.findVersion(LeafKind.BED, "engine-41", 1)
                        .orElseThrow()
                        .text())
                .isEqualTo("one");
        assertThat(leaves.findVersion(LeafKind.BED, "engine-41", 3)).isEmpty();
    }

    @Test
    void versionFromBeforeAnothersChangeRefused() {
        bed("one", 0);
        bed("two", 1);
        LeafSaving late = leaves.save(draft("three", 1), TYPING);
        assertThat(late).isInstanceOf(LeafSaving.Conflict.class);
        assertThat(((LeafSaving.Conflict) late).stored().text()).isEqualTo("two");
        assertThat(leaves.save(draft("new", 0), TYPING)).isInstanceOf(LeafSaving.Conflict.class);
        assertThatThrownBy(() -> leaves.save(draft("four", 7), TYPING))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("0 to 2");
        assertThat(store.history().listAbout(Subject.LEAF, "bed/engine-41", 9)).hasSize(2);
    }

    @Test
    void takenOutLeafStaysInTheRecordHolds() {
        bed("one", 0);
        assertThat(saved(leaves.takeOut(LeafKind.BED, "engine-41", 1, TYPING)).version())
                .isEqualTo(2);
        assertThat(leaves.find(LeafKind.BED, "engine-41")).isEmpty();
        assertThat(leaves.list(LeafKind.BED)).isEmpty();
        assertThat(leaves.findVersion(LeafKind.BED, "engine-41", 1)).isPresent();
        assertThatThrownBy(() -> leaves.takeOut(LeafKind.BED, "engine-41", 2, TYPING))
                .isInstanceOf(InvalidInput.class);
        assertThat(bed("back", 2).version()).isEqualTo(3);
        assertThat(leaves.find(LeafKind.BED, "engine-41").orElseThrow().text()).isEqualTo("back");
    }

    @Test
    void lastSavedIsListedFirstHolds() {
        saved(leaves.save(new LeafDraft(LeafKind.LAYER, "lanes", 0, "Lanes", "{}"), TYPING));
        saved(leaves.save(new LeafDraft(LeafKind.LAYER, "hydrants", 0, "Hydrants", "{}"), TYPING));
        saved(leaves.save(new LeafDraft(LeafKind.LAYER, "lanes", 1, "Lanes", "{ }"), TYPING));
        bed("other", 0);
        assertThat(leaves.list(LeafKind.LAYER)).extracting(LeafHead::id).containsExactly("lanes", "hydrants");
        assertThat(leaves.listWhole(LeafKind.LAYER)).extracting(Leaf::text).containsExactly("{ }", "{}");
    }

    @Test
    void leafWithoutNameOrWithStrangeIdRefused() {
        assertThatThrownBy(() -> LeafDraft.ofNew(LeafKind.PLAN, " ", "{}")).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new LeafDraft(LeafKind.PLAN, "../etc", 0, "May", "{}"))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> leaves.save(LeafDraft.ofNew(LeafKind.PLAN, "May", "a\0b"), TYPING))
                .isInstanceOf(InvalidInput.class);
        assertThat(leaves.list(LeafKind.PLAN)).isEmpty();
    }

    private Leaf bed(String text, long basedOn) {
        return saved(leaves.save(draft(text, basedOn), TYPING));
    }

    private static LeafDraft draft(String text, long basedOn) {
        return new LeafDraft(LeafKind.BED, "engine-41", basedOn, "Engine 41", text);
    }

    private static Leaf saved(LeafSaving saving) {
        assertThat(saving).isInstanceOf(LeafSaving.Saved.class);
        return ((LeafSaving.Saved) saving).leaf();
    }
}
