package org.hosewright.ledger.canonical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** JSON in its one spelling. */
class CanonicalJsonTest {
    /** Numbers of RFC 8785, appendix B (IEEE 754 bits, JSON); quoted from memory. */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333"
    })
    void everyNumberMatchesPublished(String bits, String json) {
        double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(CanonicalJson.number(value)).isEqualTo(json);
    }

    /** The order of keys of RFC 8785, section 3.2.3. */
    @Test
    void orderOfKeysMatchesPublished() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("\u20ac", "Euro Sign");
        map.put("\r", "Carriage Return");
        map.put("\ufb33", "Hebrew Letter Dalet With Dagesh");
        map.put("1", "One");
        map.put("\ud83d\ude00", "Emoji: Grinning Face");
        map.put("\u0080", "Control");
        map.put("\u00f6", "Latin Small Letter O With Diaeresis");
        assertThat(CanonicalJson.text(map))
                .isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    @Test
    void otherValuesHold() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("b", List.of(true, 1, 0.5, "a\"\\\u0007\n"));
        map.put("a", Map.of());
        map.put("c", List.of());
        assertThat(CanonicalJson.text(map)).isEqualTo("{\"a\":{},\"b\":[true,1,0.5,\"a\\\"\\\\\\u0007\\n\"],\"c\":[]}");
        assertThatThrownBy(() -> CanonicalJson.text(Double.NaN)).isInstanceOf(InvalidInput.class);
    }
}
