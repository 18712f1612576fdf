package org.kerfleaf.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Paint;
import org.kerfleaf.sketch.Seal;

/**
 * How long one thing has to wait for another that has the same part in hand, by what was said of glue, paint and caulk.
 *
 * <p>Glue: clamped before the work goes on, at full strength before the build is lifted. Paint: dry before it is coated again or
 * handled, cured before a weatherstrip is pressed against it. Caulk: set before it is painted. {@code Common practice, no source};
 * the times are those on bottle, can and cartridge.
 */
final class Waits {
    private final Handling handling;

    Waits(Handling handling) {
        this.handling = handling;
    }

    /**
     * A wait.
     *
     * @param time empty if nobody said it
     * @param because {@code exterior PVA stays clamped}
     * @param of what was used
     */
    record Wait(Optional<Duration> time, String because, String of) {
        Duration known() {
            return time.orElse(Duration.ZERO);
        }
    }

    /** What {@code later} has to wait for after {@code earlier}; empty if nothing. */
    Optional<Wait> between(Declaration earlier, Declaration later) {
        if (Collections.disjoint(handling.parts(earlier), handling.parts(later))) {
            return Optional.empty();
        }
        if (earlier instanceof Joint joint && joint.glue().isPresent()) {
            Glue glue = joint.glue().get();
            return Optional.of(
                    later instanceof Mount
                            ? new Wait(glue.cures(), glue.name() + " hardens", glue.name())
                            : new Wait(glue.clamped(), glue.name() + " stays clamped", glue.name()));
        }
        if (earlier instanceof Seal seal && seal.caulk().isPresent() && later instanceof Coat) {
            return seal.caulk().map(c -> new Wait(c.paintAfter(), c.name() + " sets", c.name()));
        }
        if (earlier instanceof Coat coat && !coat.layers().isEmpty()) {
            Paint last = coat.layers().get(coat.layers().size() - 1).paint();
            boolean pressed = later instanceof Fitting fitting && fitting.item().kind() == Item.Kind.WEATHERSTRIP;
            return Optional.of(
                    pressed
                            ? new Wait(last.cures(), last.name() + " cures", last.name())
                            : new Wait(last.recoat(), last.name() + " dries", last.name()));
        }
        return Optional.empty();
    }

    /** Every wait between two steps, those of one step among themselves too. */
    List<Wait> between(int earlier, int later) {
        Set<Wait> waits = new LinkedHashSet<>();
        for (Declaration first : handling.said(earlier)) {
            for (Declaration second : handling.said(later)) {
                if (first.origin().compareTo(second.origin()) < 0) {
                    between(first, second).ifPresent(waits::add);
                }
            }
        }
        return List.copyOf(waits);
    }

    /** The coats of a step, and the caulk before them: the wait after each but the last. Its work is shared equally by them. */
    List<Wait> within(int step) {
        List<Wait> waits = new ArrayList<>();
        List<Declaration> said = handling.said(step);
        for (int i = 0; i < said.size(); i++) {
            if (said.get(i) instanceof Seal seal) {
                said.subList(i + 1, said.size()).stream()
                        .flatMap(later -> between(seal, later).stream())
                        .findFirst()
                        .ifPresent(waits::add);
            } else if (said.get(i) instanceof Coat coat) {
                coats(coat, waits);
            }
        }
        return waits;
    }

    private static void coats(Coat coat, List<Wait> waits) {
        for (int i = 0; i < coat.layers().size(); i++) {
            Coat.Layer layer = coat.layers().get(i);
            int last = i == coat.layers().size() - 1 ? 1 : 0;
            for (int n = 0; n < layer.coats() - last; n++) {
                waits.add(new Wait(
                        layer.paint().recoat(),
                        layer.paint().name() + " dries",
                        layer.paint().name()));
            }
        }
    }

    /** What a step leaves to cure: until then what it made is not used. */
    List<Wait> rest(int step) {
        List<Wait> rest = new ArrayList<>();
        for (Declaration said : handling.said(step)) {
            if (said instanceof Joint joint) {
                joint.glue().ifPresent(g -> rest.add(new Wait(g.cures(), g.name() + " hardens", g.name())));
            } else if (said instanceof Seal seal) {
                seal.caulk().ifPresent(c -> rest.add(new Wait(c.cures(), c.name() + " cures", c.name())));
            } else if (said instanceof Coat coat) {
                coat.layers()
                        .forEach(l -> rest.add(new Wait(
                                l.paint().cures(),
                                l.paint().name() + " cures",
                                l.paint().name())));
            }
        }
        return rest;
    }
}
