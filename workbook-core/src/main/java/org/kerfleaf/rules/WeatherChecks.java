package org.kerfleaf.rules;

import java.util.Locale;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether wood and seals last out of doors. */
public final class WeatherChecks {
    private static final Length CLEAR_INCHES = Length.ofInches(6);
    private static final Length CLEAR_MILLIMETRES = Length.ofMillimetres(150);

    private WeatherChecks() {}

    /** Check 7: a sheet that stays out in the weather is of the Exterior bond class, by the words of its name. */
    public static Check exposedSheet(String sheetName, MeasureStyle style) {
        Held held = new Held("Exposed sheet", sheetName, "PS 1-19 and APA bond classes (seen in a copy)", style);
        String name = sheetName.toLowerCase(Locale.ROOT);
        if (name.contains("exposure 1") || name.contains("interior")) {
            return held.falls(
                    "Its glue is made for building delays, not for years of weather.",
                    "A sheet marked Exterior would last.");
        }
        if (name.contains("exterior") || name.contains("marine") || name.contains("outdoor")) {
            return held.holds("Its name says it is made for the weather. Look for the word Exterior in its stamp.");
        }
        return held.notKnown(
                "Its name does not say which weather its glue stands.", "Look for the word Exterior in its stamp.");
    }

    /**
     * Check 8: wood in the soil is treated for it; untreated wood stays 6 in (150 mm) above.
     *
     * @param aboveSoil height of its lowest point above the soil; zero or less if it stands in it
     */
    public static Check groundContact(String of, boolean treated, Length aboveSoil, MeasureStyle style) {
        Held held = new Held("Ground contact", of, "AWPA U1, IRC R317.1 (seen in a copy)", style);
        boolean inSoil = !aboveSoil.isPositive();
        if (treated) {
            return held.holds(
                    inSoil
                            ? "It is treated and stands in the soil. Its tag says UC4A or UC4B."
                            : "It is treated and stands %s above the soil.".formatted(Say.fine(aboveSoil, style)));
        }
        if (inSoil) {
            return held.falls(
                    "It is not treated and stands in the soil.", "Wood with a tag that says UC4A or UC4B would last.");
        }
        return held.atLeast(
                "It is not treated and stands %s above the soil.".formatted(Say.fine(aboveSoil, style)),
                aboveSoil,
                Say.rule(style, CLEAR_INCHES, CLEAR_MILLIMETRES),
                "Raise it, or take treated wood.");
    }

    /** Check 9: where treated wood is cut or drilled, a step brushes preservative on the cut faces. */
    public static Check cutTreatedWood(String of, int cutsAndHoles, boolean brushed, MeasureStyle style) {
        Held held = new Held("Cut treated wood", of, "AWPA M4 (seen in a copy)", style);
        if (cutsAndHoles == 0) {
            return held.holds("It is not cut or drilled.");
        }
        String cut = cutsAndHoles == 1 ? "One cut or hole opens" : cutsAndHoles + " cuts and holes open";
        return brushed
                ? held.holds("%s wood the treatment did not reach; a step brushes them.".formatted(cut))
                : held.falls(
                        "%s wood the treatment did not reach.".formatted(cut),
                        "Brush preservative on every cut face and into every hole, and keep the uncut end in the ground.");
    }

    /** Check 38: a seam that is painted takes a caulk that can be painted. */
    public static Check caulkUnderPaint(String caulkName, boolean painted, MeasureStyle style) {
        Held held = new Held("Caulk under paint", caulkName, Reason.COMMON_PRACTICE, style);
        String name = caulkName.toLowerCase(Locale.ROOT);
        boolean silicone = name.contains("silicone") && !name.contains("siliconized") && !name.contains("siliconised");
        if (!painted) {
            return held.holds("Its seams are not painted.");
        }
        if (silicone && !name.contains("paintable")) {
            return held.falls("Paint does not hold on silicone.", "A paintable acrylic latex caulk would take it.");
        }
        return name.contains("paintable") || name.contains("latex") || name.contains("acrylic")
                ? held.holds("Prime, caulk, then paint.")
                : held.notKnown(
                        "Its name does not say whether paint holds on it.",
                        "Look for the word paintable on the cartridge.");
    }
}
