package org.kerfleaf.rules;

import java.util.Locale;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether seals last out of doors. */
public final class SealChecks {

    private SealChecks() {}

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
