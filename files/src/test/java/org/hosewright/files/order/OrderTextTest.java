package org.hosewright.files.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A set of ordered pressures keeps every figure on its way through the open format. */
final class OrderTextTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    @ParameterizedTest
    @ValueSource(strings = {"brindle-falls.kit.yaml", "vale.kit.yaml"})
    void writtenAndReadBackHolds(String kit) {
        OrderSet set = set(kit);
        String text = OrderText.write(set);
        OrderSet back = OrderText.read(text);
        assertThat(OrderText.write(back)).isEqualTo(text);
        assertThat(back.lines()).hasSameSizeAs(set.lines());
        for (int i = 0; i < set.lines().size(); i++) {
            var was = set.lines().get(i).pressures();
            var is = back.lines().get(i).pressures();
            assertThat(is).hasSameSizeAs(was);
            for (int j = 0; j < was.size(); j++) {
                assertThat(is.get(j).figure().pascals())
                        .isEqualTo(was.get(j).figure().pascals());
                assertThat(is.get(j).length().metres())
                        .isEqualTo(was.get(j).length().metres());
                assertThat(is.get(j).refusal()).isEqualTo(was.get(j).refusal());
            }
        }
        assertThat(OrderText.code(text)).matches("[0-9a-f]{8}").isNotEqualTo(OrderText.code(text + " "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {} | format of the order
            {"format":1,"units":"us","made":"soon","rounding":"up","lines":[]} | made
            {"format":1,"units":"us","made":"2026-06-01","rounding":"down","lines":[]} | rounding
            {"format":1,"units":"us","made":"2026-06-01","rounding":"up","lines":[{}]} | engine in the order
            {"format":1,"format":1} | Duplicate
            [1 | order
            """)
    void brokenTextRefused(String text, String names) {
        assertThatThrownBy(() -> OrderText.read(text))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(names);
    }

    @Test
    void pressureWithoutUnitRefused() {
        String text = OrderText.write(set("brindle-falls.kit.yaml"))
                .replaceFirst("\"figure\":\"(\\d+) psi\"", "\"figure\":\"$1\"");
        assertThatThrownBy(() -> OrderText.read(text))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("unit");
    }

    private static OrderSet set(String name) {
        Kit kit = KitDocument.of(Examples.text(name), name).kit();
        return OrderSet.of(CardAnalysis.of(kit, "code", DAY, Rounding.Way.NEAREST), Rounding.Way.NEAREST);
    }
}
