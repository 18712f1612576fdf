package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
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
 * @param price of one piece or roll, if said
 */
public record Item(
        Kind kind,
        String name,
        Metal metal,
        Optional<Length> wide,
        Optional<Length> thick,
        Optional<Length> squeezedTo,
        Optional<Length> roll,
        Optional<Money> price) {
    /** What a fitting is. */
    public enum Kind {
        HINGE("hinge"),
        CATCH("catch"),
        KNOB("knob"),
        STAY("stay"),
        WEATHERSTRIP("weatherstrip"),
        GLAZING_TAPE("glazing tape"),
        BEADS("glazing beads"),
        OTHER("fitting");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

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
                Optional.empty());
    }

    public Item stainless() {
        return new Item(kind, name, Metal.STAINLESS, wide, thick, squeezedTo, roll, price);
    }

    public Item hotDipGalvanised() {
        return new Item(kind, name, Metal.HOT_DIP_GALVANISED, wide, thick, squeezedTo, roll, price);
    }

    public Item wide(Length width) {
        return new Item(kind, name, metal, Optional.of(width), thick, squeezedTo, roll, price);
    }

    public Item thick(Length thickness) {
        return new Item(kind, name, metal, wide, Optional.of(thickness), squeezedTo, roll, price);
    }

    /** Its spindle goes through a hole this wide. */
    public Item through(String spindle) {
        return thick(SketchRun.length(spindle));
    }

    /** How thick it is when the door is shut. */
    public Item squeezedTo(String thickness) {
        return new Item(kind, name, metal, wide, thick, Optional.of(SketchRun.length(thickness)), roll, price);
    }

    /** How much one roll holds. */
    public Item roll(String holds) {
        return new Item(kind, name, metal, wide, thick, squeezedTo, Optional.of(SketchRun.length(holds)), price);
    }

    public Item costs(String each) {
        return new Item(kind, name, metal, wide, thick, squeezedTo, roll, Optional.of(SketchRun.price(each)));
    }
}
