package org.hosewright.ground.stretch;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** What a stretch is made of, before its hose is counted.
 *
 * @param section from coupling to coupling; above 0
 * @param parts lengths along the ground and inside, as walked, taped or paced: never a straight line on a map
 * @param stairs climbed inside, where there are any
 * @param slack for corners and obstacles
 * @param reserveSections whole sections kept in reserve; 0 or more
 */
public record StretchPlan(
        Length section, List<StretchPart> parts, Optional<Stairs> stairs, Slack slack, int reserveSections) {
    public StretchPlan {
        parts = List.copyOf(parts);
        Numbers.requirePositive("section", section.metres());
        Numbers.requireNotNegative("sections in reserve", reserveSections);
    }

    /** The hose to cover a fire area: its length and its width. @source Traditions Training */
    public static Length cover(Length length, Length width) {
        return new Length(Numbers.requireNotNegative("length of the area", length.metres())
                + Numbers.requireNotNegative("width of the area", width.metres()));
    }
}
