package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.WindSpeed;

/** The place it stands in, as far as it was said. @group the place */
public record SiteSaid(Origin origin, List<OfSite> said) implements Declaration {
    public SiteSaid {
        said = List.copyOf(said);
    }

    /** What was said of one kind, if anything. */
    public <T extends OfSite> Optional<T> of(Class<T> kind) {
        return said.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private SiteSaid with(OfSite more) {
        List<OfSite> all = new ArrayList<>(said);
        all.add(more);
        return new SiteSaid(origin, all);
    }

    /** How far from a path it stands. @example site().besidePath("24 in") */
    public SiteSaid besidePath(String distance) {
        return with(new OfSite.BesidePath(SketchRun.length(distance)));
    }

    /**
     * The wind speed on the building code's map (a 3 second gust, at strength level), in mph, m/s or km/h, and how open the
     * ground is: BUILT_UP, OPEN_GROUND or SHORE.
     *
     * @example site().wind("115 mph", OPEN_GROUND)
     */
    public SiteSaid wind(String speed, Exposure ground) {
        return with(new OfSite.Windy(WindSpeed.parse(speed), ground));
    }

    /**
     * The ground snow load on the building code's map, as {@code 30 psf}, {@code 1.5 kN/m2} or {@code 1.5 kPa}; 0.7 times as much
     * lies on a roof or a lid.
     *
     * @example site().snow("30 psf")
     */
    public SiteSaid snow(String onTheGround) {
        return with(new OfSite.Snow(Pressure.parse(onTheGround)));
    }

    /** How high the ground is above the sea, which thins the wind. @example site().wind("115 mph", OPEN_GROUND).aboveSea("5280 ft") */
    public SiteSaid aboveSea(String height) {
        return with(new OfSite.AboveSea(SketchRun.length(height)));
    }

    /** What is dug in: GRAVEL, SAND or CLAY. @example site().ground(CLAY) */
    public SiteSaid ground(Soil soil) {
        return with(new OfSite.Ground(soil));
    }

    /** Who reaches for it: ADULT (standing or seated), CHILD_3_TO_4, CHILD_5_TO_8, CHILD_9_TO_12. @example site().reachedBy(ADULT, CHILD_5_TO_8) */
    public SiteSaid reachedBy(Reach... people) {
        return with(new OfSite.ReachedBy(List.of(people)));
    }

    /** What must be in reach besides the knob. @example site().reachedBy(ADULT).inReach(floorIn) */
    public SiteSaid inReach(Placing... things) {
        return with(
                new OfSite.InReach(Arrays.stream(things).map(Placing::origin).toList()));
    }

    /** The clear ground in front of it: how wide and how deep. @example site().clearGround("36 in", "48 in").slopes("1 in 50") */
    public SiteSaid clearGround(String wide, String deep) {
        return with(new OfSite.Clear(SketchRun.length(wide), SketchRun.length(deep)));
    }

    /** How much the clear ground slopes, in degrees or as rise in run. @example site().clearGround("36 in", "48 in").slopes("1 in 50") */
    public SiteSaid slopes(String by) {
        return with(new OfSite.Slopes(Angle.parse(by)));
    }

    /** Between which moistures its wood will live there, driest and dampest. @example site().woodBetween("8 %", "16 %") */
    public SiteSaid woodBetween(String driest, String dampest) {
        Percent one = Percent.parse(driest);
        Percent other = Percent.parse(dampest);
        boolean inOrder = one.compareTo(other) <= 0;
        return with(new OfSite.WoodLives(inOrder ? one : other, inOrder ? other : one));
    }

    /** In which airs its wood will live there, the driest season's and the dampest's. @example site().airBetween(air("70 F", "30 %"), air("60 F", "75 %")) */
    public SiteSaid airBetween(Air driest, Air dampest) {
        return with(new OfSite.WoodLivesIn(driest, dampest));
    }

    /** Rain falls on it. @example site().outdoors() */
    public SiteSaid outdoors() {
        return with(new OfSite.RainedOn(true));
    }

    /** No rain falls on it. @example site().underRoof() */
    public SiteSaid underRoof() {
        return with(new OfSite.RainedOn(false));
    }
}
