package org.kerfleaf.rules;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

/** Whether wood and sheets stand the weather and the ground they are put in. */
public final class WoodChecks {
    private static final Length ABOVE_SOIL_INCHES = Length.ofInches(6L);
    private static final Length ABOVE_SOIL_MILLIMETRES = Length.ofMillimetres(150L);
    private static final String EXTERIOR = "Exterior";

    private WoodChecks() {}

    /**
     * Check 7: a sheet that stays out in the weather is bonded for it.
     *
     * @param bond the bond class on its label; empty if not said
     */
    public static Check exposedSheet(String of, Optional<String> bond) {
        Held held =
                new Held("Sheet in the weather", of, "PS 1-19, APA bond classes (seen in a copy)", MeasureStyle.INCHES);
        if (bond.isEmpty()) {
            return held.notKnown(
                    "Its bond class was not said.",
                    "Read the stamp and say .bondedForExterior(), .bondedForExposure1() or .bondedForInterior().");
        }
        return bond.get().equals(EXTERIOR)
                ? held.holds("Its label says Exterior.")
                : held.falls(
                        "Its label says %s, which is not for the weather.".formatted(bond.get()),
                        "A sheet whose label says Exterior would hold.");
    }

    /** Check 8, in the ground: what stands in soil is treated. */
    public static Check groundContact(String of, boolean treated) {
        Held held =
                new Held("In the ground", of, "AWPA U1: UC4A, for posts UC4B (seen in a copy)", MeasureStyle.INCHES);
        return treated
                ? held.holds("It stands in the ground and is treated. Its tag should say UC4A, or UC4B for a post.")
                : held.falls("It stands in the ground and is not treated.", "Wood treated to UC4A or UC4B would hold.");
    }

    /** Check 8, above the ground: the lowest untreated part is 6 in (150 mm) or more above soil. */
    public static Check aboveSoil(String of, Length height, MeasureStyle style) {
        Held held = new Held("Above the ground", of, "IRC R317.1 (seen in a copy)", style);
        return held.atLeast(
                "The lowest part that is not treated is " + Say.fine(height, style) + " above the ground.",
                height,
                Say.rule(style, ABOVE_SOIL_INCHES, ABOVE_SOIL_MILLIMETRES),
                "Raise it, or make it of treated wood.");
    }

    /**
     * Check 9: what is cut of treated wood gets preservative on its cut ends.
     *
     * @param cut the parts cut from it
     * @param bare those of them whose ends no step coats
     */
    public static Check cutTreatedWood(String of, List<String> cut, List<String> bare) {
        Held held = new Held("Cut treated wood", of, "AWPA M4 (seen in a copy)", MeasureStyle.INCHES);
        String parts = String.join(", ", cut);
        return bare.isEmpty()
                ? held.holds("A step brushes preservative on the cut ends of " + parts + ".")
                : held.falls(
                        "No step brushes preservative on the cut ends of " + String.join(", ", bare) + ".",
                        "Add coat(cutEndsOf(post)).with(preservative) to the step after cutting.");
    }
}
