package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sketch;

/** What is planned so far, for the rules to be held against. */
record Planned(
        Sketch sketch,
        MeasureStyle style,
        Sizing sizing,
        Assembly assembly,
        Bodies bodies,
        List<PlannedPart> parts,
        List<Chain> chains,
        List<PlannedJoint> joints,
        List<DrivenContact> driven,
        FastenerSettings fastenerSettings,
        List<SawSetting> settings,
        Stocking stocking,
        Siting siting,
        Carrying carrying,
        Lifting lifting,
        Borne borne,
        List<Loads.Filled> filled,
        Optional<Rain> rain,
        Paintwork paintwork,
        Movements movements,
        Painting painting) {

    Optional<SizedPart> sized(String part) {
        return sizing.of(part);
    }

    /** Parts with all their sizes, in the order of their letters. */
    List<SizedPart> sizedParts() {
        return parts.stream().flatMap(p -> sizing.of(p.name()).stream()).toList();
    }

    /** What a fitting is on, for a sentence: the part, or if that was not said the fitting itself. */
    String fittedOn(Fitting fitting) {
        return fittedOn(sketch, fitting);
    }

    /** The same for whoever has a sketch. */
    static String fittedOn(Sketch sketch, Fitting fitting) {
        return fitting.on()
                .flatMap(sketch::placing)
                .map(Placing::part)
                .orElse(fitting.item().name());
    }
}
