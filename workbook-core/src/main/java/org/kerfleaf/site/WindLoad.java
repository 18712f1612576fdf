package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Soil;

/**
 * What the wind does to something on a post, and how deep the post must stand for it. An estimate.
 *
 * @param from the side on which most of it is seen: {@code the front}
 * @param pressure the wind's, at strength level
 * @param seen the area seen from there
 * @param centre the middle of that area above the ground
 * @param push on it, at allowable stress level
 * @param moment at the ground
 * @param needs how deep the post must stand; empty where the ground is not known
 */
public record WindLoad(
        String from,
        Figure<Pressure> pressure,
        Figure<Area> seen,
        Figure<Length> centre,
        Figure<Force> push,
        Figure<Moment> moment,
        Optional<Needs> needs) {

    /**
     * The depth against it.
     *
     * @param across what the soil holds: the pier's diameter, or the post's diagonal
     * @param bearing how hard the soil may be pressed sideways at a third of the plain depth; empty beyond 12 ft
     * @param plain the depth; empty beyond the rule's 12 ft
     * @param doubled the depth with the soil's bearing doubled, IBC 1806.3.4; empty beyond 12 ft
     */
    public record Needs(
            Figure<Length> across,
            Optional<Figure<Pressure>> bearing,
            Optional<Figure<Length>> plain,
            Optional<Figure<Length>> doubled) {
        static Needs against(Force push, Length height, Figure<Length> across, Soil soil) {
            Optional<Figure<Length>> plain = Embedment.depth(push, height, across.value(), soil, false);
            return new Needs(
                    across,
                    plain.map(depth -> Embedment.bearing(soil, depth.value())),
                    plain,
                    Embedment.depth(push, height, across.value(), soil, true));
        }
    }

    /**
     * The wind on an area whose middle is so high, and the depth for a post so far across in that soil, if that is known.
     *
     * @param posts how many share the push, 1 or more
     */
    public static WindLoad on(
            String from,
            Figure<Pressure> pressure,
            Figure<Area> seen,
            Figure<Length> centre,
            Figure<Length> across,
            Optional<Soil> soil,
            int posts) {
        Figure<Force> push = Wind.push(pressure.value(), seen.value());
        Figure<Moment> moment = Figure.of(
                Moment.of(push.value(), centre.value()),
                "push · height of the middle above the ground",
                Reason.GEOMETRY,
                given("push", push.value()),
                given("height", centre.value()));
        return new WindLoad(
                from,
                pressure,
                seen,
                centre,
                push,
                moment,
                soil.map(ground -> Needs.against(push.value().times(1.0 / posts), centre.value(), across, ground)));
    }
}
