package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/**
 * A bought fitting.
 *
 * @param kind what it is
 * @param name how a shop calls it
 * @param metal what it is made of
 * @param wide width of a strip or bead, if it has one
 * @param thick thickness of a strip or tape; diameter of a knob's spindle
 * @param squeezedTo the thickness of a strip when the door is shut
 * @param roll the length one roll holds
 * @param stopsAt how far open a stay or hinge lets what hangs on it, if said
 * @param screws the screws it comes with, if said
 * @param screwsApart of a bracket, from its upper screw to its lower one
 * @param price of one piece or roll, if said
 * @group door and glazing
 */
public record Item(
        Kind kind,
        String name,
        Metal metal,
        Optional<Length> wide,
        Optional<Length> thick,
        Optional<Length> squeezedTo,
        Optional<Length> roll,
        Optional<Angle> stopsAt,
        Optional<Screw> screws,
        Optional<Length> screwsApart,
        Optional<Money> price) {
    private static final Angle MOST_OPEN = Angle.ofDegrees(270);

    /** What a fitting is. */
    public enum Kind {
        /** A hinge. */
        HINGE("hinge"),
        /** A catch. */
        CATCH("catch"),
        /** A knob. */
        KNOB("knob"),
        /** A stay. */
        STAY("stay"),
        /** A weatherstrip. */
        WEATHERSTRIP("weatherstrip"),
        /** A glazing tape. */
        GLAZING_TAPE("glazing tape"),
        /** Glazing beads. */
        BEADS("glazing beads"),
        /** Any other fitting. */
        OTHER("fitting");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The word in a sentence. */
        public String words() {
            return words;
        }
    }

    /** A fitting of which nothing but its name is said yet. */
    public static Item of(Kind kind, String name) {
        return new Item(
                kind,
                name,
                Metal.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Of stainless steel. @example fit(hinge("butt").stainless()).times(2).at(doorIn, LEFT) */
    public Item stainless() {
        return new Item(
                kind, name, Metal.STAINLESS, wide, thick, squeezedTo, roll, stopsAt, screws, screwsApart, price);
    }

    /** Hot-dip galvanised: a thick coat of zinc, for outdoors. @example fit(hinge("strap").hotDipGalvanised()).times(2).at(doorIn, LEFT) */
    public Item hotDipGalvanised() {
        return new Item(
                kind,
                name,
                Metal.HOT_DIP_GALVANISED,
                wide,
                thick,
                squeezedTo,
                roll,
                stopsAt,
                screws,
                screwsApart,
                price);
    }

    /** How wide it is, of a strip or bead. @example fit(fitting("drip edge").wide(length("2 in"))) */
    public Item wide(Length width) {
        return new Item(
                kind, name, metal, Optional.of(width), thick, squeezedTo, roll, stopsAt, screws, screwsApart, price);
    }

    /** How thick it is, of a strip or tape. @example fit(fitting("rubber strip").thick(length("1/8 in"))) */
    public Item thick(Length thickness) {
        return new Item(
                kind, name, metal, wide, Optional.of(thickness), squeezedTo, roll, stopsAt, screws, screwsApart, price);
    }

    /** Its spindle goes through a hole this wide. @example fit(knob().through("3/16 in")).at(doorIn, RIGHT) */
    public Item through(String spindle) {
        return thick(SketchRun.length(spindle));
    }

    /**
     * How thick it is when the door is shut.
     *
     * @example fit(weatherstrip(wide("3/8 in"), thick("3/16 in")).squeezedTo("1/8 in")).around(doorIn, "doorway")
     */
    public Item squeezedTo(String thickness) {
        return new Item(
                kind,
                name,
                metal,
                wide,
                thick,
                Optional.of(SketchRun.length(thickness)),
                roll,
                stopsAt,
                screws,
                screwsApart,
                price);
    }

    /** How much one roll holds, as a length. @example fit(weatherstrip(wide("3/8 in"), thick("3/16 in")).roll("10 ft")).around(doorIn, "doorway") */
    public Item roll(String holds) {
        return new Item(
                kind,
                name,
                metal,
                wide,
                thick,
                squeezedTo,
                Optional.of(SketchRun.length(holds)),
                stopsAt,
                screws,
                screwsApart,
                price);
    }

    /**
     * How far open it lets a door or lid, more than 0 and up to 270 degrees; said of a stay, or of a hinge with a stop.
     *
     * @example fit(stay("chain").stopsAt("95 deg")).at(doorIn, LEFT)
     */
    public Item stopsAt(String open) {
        Angle angle = Angle.parse(open);
        if (kind != Kind.STAY && kind != Kind.HINGE) {
            throw new SketchException(
                    "A %s stops no door. Say it of a stay or a hinge: stay(\"chain\").stopsAt(\"95 deg\")."
                            .formatted(kind.words()));
        }
        if (angle.compareTo(Angle.ZERO) <= 0 || angle.compareTo(MOST_OPEN) > 0) {
            throw new SketchException("“%s” open: more than 0 and up to 270 deg would be right.".formatted(open));
        }
        return new Item(
                kind, name, metal, wide, thick, squeezedTo, roll, Optional.of(angle), screws, screwsApart, price);
    }

    /**
     * The screws it comes with, of a hinge or a bracket; they are not bought.
     *
     * @example fit(hinge("strap").comesWith(woodScrew(8, "5/8 in"))).times(2).at(doorIn, LEFT)
     */
    public Item comesWith(Screw screw) {
        return new Item(
                kind, name, metal, wide, thick, squeezedTo, roll, stopsAt, Optional.of(screw), screwsApart, price);
    }

    /**
     * How far apart a bracket's upper and lower screws are.
     *
     * @example fit(fitting("shelf bracket").comesWith(woodScrew(10, "2 in")).screwsApart("9 in")).times(2)
     */
    public Item screwsApart(String height) {
        return new Item(
                kind,
                name,
                metal,
                wide,
                thick,
                squeezedTo,
                roll,
                stopsAt,
                screws,
                Optional.of(SketchRun.length(height)),
                price);
    }

    /** The price of one piece, or of one roll. @example fit(knob().costs("2.90")).at(doorIn, RIGHT) */
    public Item costs(String each) {
        return new Item(
                kind,
                name,
                metal,
                wide,
                thick,
                squeezedTo,
                roll,
                stopsAt,
                screws,
                screwsApart,
                Optional.of(SketchRun.price(each)));
    }
}
