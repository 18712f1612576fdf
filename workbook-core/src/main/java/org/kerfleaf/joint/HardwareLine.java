package org.kerfleaf.joint;

import java.util.List;
import org.kerfleaf.reason.Figure;

/**
 * One kind of fastener or fitting with how many the build needs.
 *
 * @param what {@code No. 6 x 1 5/8 in wood screw, stainless}
 * @param need how many, over all uses
 * @param packOf how many one pack holds, 1 for loose pieces
 * @param packs how many packs to buy
 * @param uses where they go: {@code Back to Floor: 5}
 */
public record HardwareLine(String what, Figure<Integer> need, int packOf, Figure<Integer> packs, List<String> uses) {
    public HardwareLine {
        uses = List.copyOf(uses);
    }
}
