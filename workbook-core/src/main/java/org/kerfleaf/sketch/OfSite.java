package org.kerfleaf.sketch;

import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.WindSpeed;

/** One thing said of the place. */
public sealed interface OfSite {
    /** How far from a path it stands. */
    record BesidePath(Length distance) implements OfSite {}

    /** The wind on the map, and how open the ground is. */
    record Windy(WindSpeed speed, Exposure ground) implements OfSite {}

    /** How high the ground is above the sea. */
    record AboveSea(Length height) implements OfSite {}

    /** How much snow lies on the ground. */
    record Snow(Pressure onTheGround) implements OfSite {}

    /** Whether rain falls on it. */
    record RainedOn(boolean falls) implements OfSite {}

    /** The moistures between which its wood will live. */
    record WoodLives(Percent driest, Percent dampest) implements OfSite {}

    /** The airs between which its wood will live, in either order. */
    record WoodLivesIn(Air one, Air other) implements OfSite {}

    /** What is dug in. */
    record Ground(Soil soil) implements OfSite {}

    /** Who reaches for it. */
    record ReachedBy(List<Reach> people) implements OfSite {
        public ReachedBy {
            people = List.copyOf(people);
        }
    }

    /** What must be in reach besides the knob. */
    record InReach(List<Origin> things) implements OfSite {
        public InReach {
            things = List.copyOf(things);
        }
    }

    /** The clear ground before it. */
    record Clear(Length wide, Length deep) implements OfSite {}

    /** How much that ground slopes. */
    record Slopes(Angle by) implements OfSite {}
}
