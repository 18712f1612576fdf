package org.kerfleaf.plan;

import java.util.List;
import org.kerfleaf.joint.Clearances;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.measure.Length;

/**
 * The fasteners of one contact, each in its place in the build.
 *
 * @param step the build step that drives them, 0 above the first
 * @param joint what is fastened to what: {@code Back to Floor}
 * @param fastener what is driven, as on the hardware list
 * @param count how many
 * @param setting how each is set and what it holds
 * @param clearances how near they stand to ends, edges and each other
 * @param through the piece it is driven through, from its outer face
 * @param into what it holds in; for a bolt every further piece, in order; none for the studs of a wall
 * @param moved how far the row went along the contact so that no two meet; zero if it stayed
 * @param driven where each stands, in order along the contact; no problem said, as many as counted; none in studs
 */
public record Fastened(
        int step,
        String joint,
        String fastener,
        int count,
        FastenerSetting setting,
        Clearances clearances,
        Bound through,
        List<Bound> into,
        Length moved,
        List<DrivenFastener> driven) {
    /**
     * A piece that a fastener binds.
     *
     * @param piece which of the part's pieces, from 1 in the order of placing
     */
    public record Bound(String part, int piece) {}

    public Fastened {
        into = List.copyOf(into);
        driven = List.copyOf(driven);
    }
}
