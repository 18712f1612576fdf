package org.kerfleaf.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.caution.Cautions;
import org.kerfleaf.caution.Topic;
import org.kerfleaf.joint.SettingWords;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.WorkChecks;
import org.kerfleaf.sketch.Ahead;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.CutAll;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Ladder;
import org.kerfleaf.sketch.Lag;
import org.kerfleaf.sketch.Loud;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Nail;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.People;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Saw;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.sketch.WorkTime;

/** Says for each step what to have at hand, how long it takes, and what can hurt in it. */
final class Steps {
    private static final Set<Topic> NO_CHILDREN =
            EnumSet.of(Topic.CIRCULAR_SAW, Topic.TABLE_SAW, Topic.MITRE_SAW, Topic.JIGSAW, Topic.ROUTER, Topic.NAILER);
    private static final Set<Topic> MACHINES = EnumSet.copyOf(NO_CHILDREN);

    static {
        MACHINES.add(Topic.DRILL);
    }

    /** Words in a stock's name that say it was something else before. */
    private static final List<String> OLD = List.of("reclaimed", "salvaged", "scrap", "pallet", "second-hand", "old ");

    private final Sketch sketch;
    private final List<PlannedPart> parts;
    private final List<PlannedJoint> joints;
    private final Hardware hardware;
    private final List<Fastened> fastened;
    private final SettingWords settings;
    private final Map<Topic, Set<Integer>> topics = new EnumMap<>(Topic.class);

    Steps(
            Sketch sketch,
            List<PlannedPart> parts,
            List<PlannedJoint> joints,
            Hardware hardware,
            List<Fastened> fastened,
            MeasureStyle style) {
        this.fastened = fastened;
        this.settings = new SettingWords(style);
        this.sketch = sketch;
        this.parts = parts;
        this.joints = joints;
        this.hardware = hardware;
        sketch.declared().forEach(this::topics);
        if (sketch.all(CutAll.class).isEmpty()) {
            cuttingTopics(0);
        }
        if (topics.keySet().stream().anyMatch(MACHINES::contains)) {
            on(Topic.ELECTRICITY, 0);
            on(Topic.CHILDREN, 0);
            on(Topic.FATIGUE, 0);
        }
    }

    List<PlannedStep> all() {
        return sketch.steps().stream().map(this::plan).toList();
    }

    /** Every caution of the build, each with the steps it belongs to; step 0 is the whole build. */
    List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        topics.forEach((topic, steps) -> cautions.add(
                Cautions.of(topic).onSteps(steps.stream().filter(s -> s > 0).toList())));
        return cautions;
    }

    private PlannedStep plan(Sketch.Step step) {
        Set<PlannedStep.Take> take = new LinkedHashSet<>();
        Duration work = Duration.ZERO;
        boolean timed = false;
        int people = 1;
        for (Declaration said : sketch.declared()) {
            if (said.origin().step() != step.number()) {
                continue;
            }
            take.addAll(takes(said));
            if (said instanceof WorkTime time) {
                work = work.plus(time.work());
                timed = true;
            } else if (said instanceof People needed) {
                people = Math.max(people, needed.number());
            }
        }
        List<Caution> cautions = topics.entrySet().stream()
                .filter(entry -> entry.getValue().contains(step.number()))
                .map(entry -> Cautions.of(entry.getKey()).onSteps(List.of(step.number())))
                .toList();
        return new PlannedStep(
                step.number(),
                step.title(),
                List.copyOf(take),
                timed ? Optional.of(work) : Optional.empty(),
                people,
                cautions,
                before(step.number(), people),
                loudest(step.number()));
    }

    private Optional<PlannedStep.Noise> loudest(int step) {
        return sketch.all(Loud.class).stream()
                .filter(loud -> loud.origin().step() == step)
                .map(Loud::decibels)
                .max(Integer::compare)
                .map(decibels -> new PlannedStep.Noise(decibels, WorkChecks.borne(decibels)));
    }

    /** What must be there, or must not, before the step begins. */
    private List<String> before(int step, int people) {
        List<String> before = new ArrayList<>();
        if (people > 1) {
            before.add(people + " people");
        }
        if (isOn(Topic.LADDER, step)) {
            before.add("a ladder");
        }
        boolean dry = sketch.declared().stream()
                .anyMatch(said -> said.origin().step() == step && (said instanceof Coat || said instanceof Seal));
        if (dry || isOn(Topic.CONCRETE, step)) {
            before.add("dry weather, or a roof over it");
        }
        if (NO_CHILDREN.stream().anyMatch(topic -> isOn(topic, step))) {
            before.add("no children near");
        }
        return before;
    }

    private boolean isOn(Topic topic, int step) {
        return topics.getOrDefault(topic, Set.of()).contains(step);
    }

    // ---- what to have at hand ----------------------------------------------------------------------------------

    private List<PlannedStep.Take> takes(Declaration said) {
        if (said instanceof Placing placing) {
            return part(placing.part(), placing.count());
        }
        if (said instanceof Glazing glazing) {
            List<PlannedStep.Take> takes = new ArrayList<>(part(glazing.pane(), 1));
            glazing.bedding().ifPresent(item -> takes.add(thing(item.name())));
            glazing.beads().ifPresent(item -> takes.add(thing(item.name())));
            return takes;
        }
        if (said instanceof Joint joint) {
            return joints.stream()
                    .filter(j -> j.said().origin().equals(joint.origin()))
                    .findFirst()
                    .map(this::joint)
                    .orElse(List.of());
        }
        if (said instanceof Fitting fitting) {
            return List.of(thing(fitting.item().name() + (fitting.count() > 1 ? ", " + fitting.count() : "")));
        }
        if (said instanceof Seal seal) {
            return seal.caulk().map(c -> List.of(thing(c.name()))).orElse(List.of());
        }
        if (said instanceof Coat coat) {
            return coat.layers().stream().map(l -> thing(l.paint().name())).toList();
        }
        if (said instanceof CutAll) {
            return List.of(thing("every sheet and board, see the layouts"), thing("the cut list and the saw settings"));
        }
        return said instanceof Ahead ahead
                ? List.of(thing(ahead.what() + ", " + ahead.workingDays() + " working days before"))
                : List.of();
    }

    private List<PlannedStep.Take> part(String name, int count) {
        return parts.stream()
                .filter(p -> p.name().equals(name))
                .map(p -> new PlannedStep.Take(Optional.of(p.letter()), count > 1 ? name + ", " + count : name))
                .toList();
    }

    private List<PlannedStep.Take> joint(PlannedJoint joint) {
        List<PlannedStep.Take> takes = new ArrayList<>();
        joint.said()
                .fastener()
                .ifPresent(f -> takes.add(
                        thing(joint.fasteners().value() + " × " + hardware.words(f, joint) + ": " + joint.words())));
        fastened.stream()
                .filter(f ->
                        f.step() == joint.said().origin().step() && f.joint().equals(joint.words()))
                .flatMap(f -> settings.tools(f.setting(), deep(joint)).stream())
                .distinct()
                .forEach(words -> takes.add(thing(words)));
        joint.said().glue().ifPresent(glue -> takes.add(thing(glue.name() + " glue")));
        return takes;
    }

    /** Where a bolt or a lag screw goes so deep that a common bit may be too short. */
    private static Optional<Length> deep(PlannedJoint joint) {
        Optional<Fastener> fastener = joint.said().fastener();
        if (fastener.orElse(null) instanceof Lag lag) {
            return Optional.of(lag.length());
        }
        return fastener.filter(Bolt.class::isInstance)
                .map(bolt -> Length.ZERO.plus(joint.stack().toArray(Length[]::new)));
    }

    private static PlannedStep.Take thing(String words) {
        return new PlannedStep.Take(Optional.empty(), words);
    }

    // ---- what can hurt -----------------------------------------------------------------------------------------

    private void on(Topic topic, int step) {
        topics.computeIfAbsent(topic, t -> new TreeSet<>()).add(step);
    }

    private void topics(Declaration said) {
        int step = said.origin().step();
        if (said instanceof CutAll) {
            cuttingTopics(step);
        } else if (said instanceof Joint joint) {
            joint.fastener().ifPresent(f -> on(f instanceof Nail ? Topic.NAILER : Topic.DRILL, step));
            joint.drawer().ifPresent(d -> on(Topic.DRILL, step));
            joint.glue().ifPresent(g -> on(Topic.GLUE_AND_PAINT, step));
        } else if (said instanceof Seal || said instanceof Coat) {
            on(Topic.GLUE_AND_PAINT, step);
        } else if (said instanceof Glazing) {
            on(Topic.GLAZING, step);
        } else if (said instanceof Fitting) {
            on(Topic.DRILL, step);
        } else if (said instanceof Hole hole) {
            on(Topic.DIGGING, step);
            hole.concrete().ifPresent(bag -> on(Topic.CONCRETE, step));
        } else if (said instanceof Ladder) {
            on(Topic.LADDER, step);
        } else if (said instanceof Mount || said instanceof People people && people.number() > 1) {
            on(Topic.LIFTING, step);
        }
    }

    private void cuttingTopics(int step) {
        Topic sheetSaw = sketch.all(Saw.class).stream().anyMatch(Saw::table) ? Topic.TABLE_SAW : Topic.CIRCULAR_SAW;
        for (PlannedPart part : parts) {
            on(
                    part.kind() == PartKind.BOARD
                            ? Topic.MITRE_SAW
                            : part.kind() == PartKind.PANE ? Topic.GLAZING : sheetSaw,
                    step);
            on(Topic.DUST, step);
            sketch.part(part.name()).ifPresent(said -> {
                if (!said.traits(Trait.OpeningIn.class).isEmpty()) {
                    on(Topic.JIGSAW, step);
                }
                if (!said.traits(Trait.HoleIn.class).isEmpty()) {
                    on(Topic.DRILL, step);
                }
                if (!said.traits(Trait.RabbetIn.class).isEmpty()
                        || !said.traits(Trait.RabbetAlong.class).isEmpty()
                        || !said.traits(Trait.GrooveIn.class).isEmpty()) {
                    on(Topic.ROUTER, step);
                }
            });
            if (sketch.lumber(part.stock()).map(Lumber::preserved).orElse(false)) {
                on(Topic.TREATED_WOOD, step);
            }
            if (OLD.stream().anyMatch(part.stock().toLowerCase(Locale.ROOT)::contains)) {
                on(Topic.SCRAP, step);
            }
        }
    }
}
