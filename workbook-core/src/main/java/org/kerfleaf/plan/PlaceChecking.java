package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Clash;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;

/** Whether the sizes close in every direction, and whether two parts are in one place. */
final class PlaceChecking {
    private final Planned planned;

    PlaceChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        planned.chains().forEach(chain -> closes(chain).ifPresent(checks::add));
        if (planned.assembly().all().size() > 1) {
            checks.add(onePlaceOnePart());
        }
        return checks;
    }

    /** The sizes of parts that touch one after the other must add up to the whole. One part alone says nothing. */
    private Optional<Check> closes(Chain chain) {
        MeasureStyle style = planned.style();
        String name = "Sizes close: " + chain.axis().words() + ", " + chain.first();
        String result = chain.words(style) + ".";
        Optional<String> lacks = chain.lacksIn(style);
        if (lacks.isEmpty()) {
            Check closes = new Check(
                    name, result, "closes exactly", OptionalDouble.of(1), Check.Verdict.HOLDS, "", Reason.GEOMETRY);
            return Optional.of(closes).filter(check -> chain.links().size() > 1);
        }
        return Optional.of(new Check(
                name,
                result,
                "short by " + lacks.get(),
                OptionalDouble.of(-chain.lacks().dividedBy(chain.overall())),
                Check.Verdict.SHORT,
                "Nothing touches the far side of %s. A part %s longer, or moved, would close it."
                        .formatted(chain.links().get(chain.links().size() - 1).part(), lacks.get()),
                Reason.GEOMETRY));
    }

    private Check onePlaceOnePart() {
        List<PlacedSolid> solids = new ArrayList<>(planned.bodies().all().values());
        for (Touching pair : Touching.all(solids)) {
            if (pair.clash().isPresent()) {
                return clash(pair);
            }
        }
        return new Check(
                "One place, one part",
                "No two of the " + solids.size() + " placed pieces are in one place.",
                "",
                OptionalDouble.empty(),
                Check.Verdict.HOLDS,
                "",
                Reason.GEOMETRY);
    }

    private Check clash(Touching pair) {
        Clash clash = pair.clash().orElseThrow();
        Length least = clash.sizes().stream().reduce(Length::min).orElseThrow();
        return new Check(
                "One place, one part",
                "%s and %s are in one place: %s of both."
                        .formatted(pair.a().part(), pair.b().part(), Clashes.size(clash, planned.style())),
                Clashes.distance(least, planned.style()) + " too much",
                OptionalDouble.of(-1),
                Check.Verdict.SHORT,
                "One of them %s smaller, or moved by as much, would do."
                        .formatted(Clashes.distance(least, planned.style())),
                Reason.GEOMETRY);
    }
}
