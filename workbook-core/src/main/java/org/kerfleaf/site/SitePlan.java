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
 * @param spoil what the hole gives, loose
 * @param filling what goes round the post, if that was said
 * @param heightLine where the post is cut above grade, once it stands
 * @param cutPostTo how long the post is cut before it is set, if it is left long
 * @param access what the place asks of it so that people can come up to it, use it and pass it
 * @param wind on the box, if the wind was said
 * @param windOnAll on box, arms and post together
 */
public record SitePlan(
        Figure<Volume> hole,
        Figure<Volume> gravel,
        Figure<Length> inGround,
        Optional<Figure<Length>> boxBottom,
        Optional<Figure<Length>> latch,
        Figure<Volume> spoil,
        Optional<Filling> filling,
        Optional<Figure<Length>> heightLine,
        Optional<Figure<Length>> cutPostTo,
        Access access,
        Optional<WindLoad> wind,
        Optional<WindLoad> windOnAll) {
    /** Stands beside every structural figure, in these words. */
    public static final String DEFERS =
            "This is an estimate for planning. The local building code, the ground where you stand and a licensed"
                    + " professional decide what is safe; ask before you build.";
}
