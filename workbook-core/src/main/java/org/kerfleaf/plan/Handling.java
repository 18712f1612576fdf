package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.CutAll;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Sketch;

/**
 * Which parts a step has in hand. Two steps that have one part in hand come one after the other; a build that is painted, caulked or
 * lifted is in hand with all that was put together by then.
 */
final class Handling {
    private final Sketch sketch;
    private final Assembly assembly;
    private final List<PlannedPart> parts;

    Handling(Sketch sketch, Assembly assembly, List<PlannedPart> parts) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.parts = parts;
    }

    /** What was said in that step. */
    List<Declaration> said(int step) {
        return sketch.declared().stream()
                .filter(said -> said.origin().step() == step)
                .toList();
    }

    /** The names of the parts that one thing said has in hand, in the order said. */
    Set<String> parts(Declaration said) {
        if (said instanceof CutAll) {
            return names(parts.stream().map(PlannedPart::name));
        }
        if (said instanceof Placing placing) {
            return names(Stream.concat(
                    Stream.of(placing.part()),
                    placing.where().stream()
                            .flatMap(w -> Places.others(w).stream())
                            .flatMap(this::part)));
        }
        if (said instanceof Joint joint) {
            return names(Stream.concat(joint.of().stream(), joint.to().stream()).flatMap(this::part));
        }
        if (said instanceof Glazing glazing) {
            return names(Stream.concat(
                    Stream.of(glazing.pane()), glazing.into().stream().flatMap(this::part)));
        }
        if (said instanceof Fitting fitting) {
            return names(fitting.on().stream().flatMap(this::part));
        }
        if (said instanceof Hole hole) {
            return names(hole.post().stream().flatMap(this::part));
        }
        if (said instanceof Mount mount) {
            return mounted(mount);
        }
        if (said instanceof Seal) {
            return together(said.origin());
        }
        return said instanceof Coat coat ? coated(coat) : Set.of();
    }

    /** The steps that put that part in place. */
    Set<Integer> placedIn(String part) {
        Set<Integer> steps = new TreeSet<>();
        for (Placing placing : sketch.all(Placing.class)) {
            if (placing.part().equals(part)) {
                steps.add(placing.origin().step());
            }
        }
        return steps;
    }

    private Set<String> coated(Coat coat) {
        Set<String> all = new LinkedHashSet<>();
        for (Coat.Faces faces : coat.faces()) {
            if (faces.part().isPresent()) {
                all.add(faces.part().get());
            } else {
                all.addAll(together(coat.origin()));
            }
        }
        return all;
    }

    private Set<String> together(Origin when) {
        return names(sketch.all(Placing.class).stream()
                .filter(placing -> placing.origin().compareTo(when) < 0)
                .map(Placing::part));
    }

    /** Both builds with all that was put together of them by then. */
    private Set<String> mounted(Mount mount) {
        List<Origin> held = new ArrayList<>(mount.restsOn());
        held.add(mount.what());
        mount.onTopOf().ifPresent(held::add);
        Set<Integer> builds = new TreeSet<>();
        held.forEach(placing -> builds.add(assembly.number(placing)));
        return names(sketch.all(Placing.class).stream()
                .filter(placing -> placing.origin().compareTo(mount.origin()) < 0)
                .filter(placing -> builds.contains(assembly.number(placing.origin())))
                .map(Placing::part));
    }

    private Stream<String> part(Origin placing) {
        return sketch.placing(placing).map(Placing::part).stream();
    }

    private static Set<String> names(Stream<String> names) {
        Set<String> all = new LinkedHashSet<>();
        names.forEach(all::add);
        return all;
    }
}
