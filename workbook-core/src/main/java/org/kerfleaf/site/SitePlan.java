package org.kerfleaf.site;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;

/**
 * The hole, the post and the heights above ground.
 *
 * @param hole volume of the hole
 * @param gravel volume of the gravel at its foot
 * @param inGround length of post below grade
 * @param boxBottom height of the build's underside above grade, if it is mounted
 * @param latch height of the knob or latch above grade, if there is one
 */
public record SitePlan(
        Figure<Volume> hole,
        Figure<Volume> gravel,
        Figure<Length> inGround,
        Optional<Figure<Length>> boxBottom,
        Optional<Figure<Length>> latch) {
    /** Stands beside every structural figure, in these words. */
    public static final String DEFERS =
            "This is an estimate for planning. The local building code, the ground where you stand and a licensed"
                    + " professional decide what is safe; ask before you build.";
}
