package org.kerfleaf.cutting;

import java.util.List;

/**
 * One sheet with what is cut from it and in which order.
 *
 * @param sheet the sheet
 * @param placements the parts on it
 * @param cuts the edge-to-edge cuts in the order they are made, after trimming
 * @param offcuts what is left, largest first
 */
public record SheetLayout(SheetSize sheet, List<SheetPlacement> placements, List<SheetCut> cuts, List<Offcut> offcuts) {
    public SheetLayout {
        placements = List.copyOf(placements);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
    }
}
