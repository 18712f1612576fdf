package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;

/**
 * A pane in its pocket.
 *
 * @param step the build step that puts it in, 0 above the first
 * @param pane its name
 * @param pocketWide from bottom to bottom of the rabbet; measure it on the work before the pane is cut
 * @param cutWide what to cut
 * @param biteWide what is held on each side when it is coldest, if that was said
 * @param fills bedding and pane on each other, in the depth of the rabbet; empty if the bedding's thickness is not known
 * @param deep the rabbet's depth
 * @param lip what the rabbet leaves of the wood, if the part it is in is known
 * @param beadWide length of an upper and a lower bead at its long point, mitred 45° at both ends; empty without beads
 * @param beadHigh the same of an upright one
 * @param beadOver how far a bead that lies on the face reaches over wood beyond the pocket, where its pins stand; empty for one
 *     in the rabbet, and where that is not known
 * @param pinDeep how deep a pin may go into that wood
 */
public record GlazedPane(
        int step,
        String pane,
        Figure<Length> pocketWide,
        Figure<Length> pocketHigh,
        Figure<Length> cutWide,
        Figure<Length> cutHigh,
        Optional<Figure<Length>> biteWide,
        Optional<Figure<Length>> biteHigh,
        Optional<Figure<Length>> fills,
        Optional<Figure<Length>> deep,
        Optional<Figure<Length>> lip,
        Optional<Figure<Length>> beadWide,
        Optional<Figure<Length>> beadHigh,
        Optional<Figure<Length>> beadOver,
        Optional<Figure<Length>> pinDeep) {}
