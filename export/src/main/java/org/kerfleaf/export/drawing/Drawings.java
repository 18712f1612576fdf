package org.kerfleaf.export.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.shape.Bounds;

/**
 * All drawings that can be made of a plan, each by a name that stays: {@code front}, {@code side}, {@code top}, {@code views} (the
 * three on one sheet), {@code slice}, {@code taken apart}, {@code rain}, {@code lift}, {@code part A}, {@code step 3}. None where nothing is placed. Long thin parts are
 * interrupted; the three views on one sheet show the build that most pieces belong to, without the long post it is mounted on.
 */
public final class Drawings {
    /** Front, right side and top on one sheet. */
    public static final String VIEWS = "views";

    /** Cut from front to back through the middle. */
    public static final String SLICE = "slice";

    /** Every piece moved out of its place. */
    public static final String TAKEN_APART = "taken apart";

    /** Where rain goes. */
    public static final String RAIN = "rain";

    /** Where something that is lifted balances, and where hands take hold. */
    public static final String LIFT = "lift";

    /** Room on paper, in millimetres. */
    record Room(double wide, double high) {}

    /** One of the drawings. */
    public static final class Named {
        private final String name;
        private final String title;
        private final String says;
        private final boolean sized;
        private final Function<Room, Drawing> drawn;

        private Named(String name, String title, String says, boolean sized, Function<Room, Drawing> drawn) {
            this.name = name;
            this.title = title;
            this.says = says;
            this.sized = sized;
            this.drawn = drawn;
        }

        /** The name it is asked for by, which stays. */
        public String name() {
            return name;
        }

        /** What stands over it. */
        public String title() {
            return title;
        }

        /** In words, for those who do not see it. */
        public String says() {
            return says;
        }

        /** Whether it gives sizes. */
        public boolean isSized() {
            return sized;
        }

        /** The drawing at the largest standard scale at which it fits that room, in millimetres of paper. */
        public Drawing within(double maxWidth, double maxHeight) {
            return drawn.apply(new Room(maxWidth, maxHeight));
        }
    }

    private final Plan plan;
    private final List<PlacedPart> placed;
    private final List<PlacedPart> main;
    private final List<Shown> shown;
    private final Lettering words;
    private final List<Named> all = new ArrayList<>();
    private Scene apart;

    private Drawings(Plan plan) {
        this.plan = plan;
        placed = plan.placed();
        main = main(placed);
        shown = shown(placed);
        words = new Lettering(plan.parts(), plan.style());
        if (!placed.isEmpty()) {
            build();
        }
        plan.markings().forEach(this::marking);
        plan.steps().stream()
                .filter(step -> !plan.added(step.number()).isEmpty())
                .forEach(this::step);
    }

    /** Whether a file's first bytes are those of a drawing that was kept before. */
    public static boolean isOurs(byte[] head) {
        return new String(head, StandardCharsets.ISO_8859_1).contains(SvgSheet.MAKER);
    }

    /** The drawings of a plan. */
    public static Drawings of(Plan plan) {
        return new Drawings(plan);
    }

    /** All of them, in the order in which they are kept and printed. */
    public List<Named> all() {
        return List.copyOf(all);
    }

    /** The drawing of that name. */
    public Optional<Named> named(String name) {
        return all.stream().filter(one -> one.name().equals(name)).findFirst();
    }

    /** Whether the three views leave out what the build is mounted on. */
    public boolean viewsLeaveOut() {
        return main.size() < placed.size();
    }

    /** All of one build, or of builds on each other; without what it is mounted on where that is interrupted, or beside it. */
    private static List<PlacedPart> main(List<PlacedPart> placed) {
        boolean mounted = placed.stream().anyMatch(p -> p.mounted() > 0);
        boolean whole = placed.isEmpty()
                || Broken.of(placed.stream().map(PlacedPart::solid).toList()).isNowhere();
        if (mounted && whole) {
            return placed;
        }
        int most = placed.stream()
                .collect(Collectors.groupingBy(PlacedPart::build, java.util.TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .reduce((a, b) -> b.getValue() > a.getValue() ? b : a)
                .map(java.util.Map.Entry::getKey)
                .orElse(0);
        return placed.stream().filter(p -> p.build() == most).toList();
    }

    private static List<Shown> shown(List<PlacedPart> placed) {
        return placed.stream()
                .map(p -> Pictures.shown(p, "", Shown.State.PLAIN))
                .toList();
    }

    private void build() {
        view(View.FRONT, "front", "Front", "standing before it");
        view(View.SIDE, "side", "Right side", "from the right, the front at the left");
        view(View.TOP, "top", "Top", "from above, the front at the bottom");
        sized(
                VIEWS,
                "Front, right side and top",
                "The build from the front, from the right side and from above, at one scale, with its sizes.",
                room -> ThreeViews.of(plan, main, Scene.interrupted(shown(main)), words, room.wide(), room.high()));
        sized(
                SLICE,
                "Slice through the middle",
                "The build cut from front to back through its middle and seen from the right: cut faces are hatched.",
                this::slice);
        if (placed.stream().anyMatch(p -> !p.wayOut().stays())) {
            picture(
                    TAKEN_APART,
                    "Taken apart",
                    "The build with every piece moved out along the way it goes in. " + letters(placed),
                    room -> BuildPicture.filling(apart(), View.DIMETRIC, room.wide(), room.high()));
        }
        if (plan.rain().isPresent()) {
            rain();
        }
        plan.loads().lifted().stream().filter(LiftDrawing::canBeDrawn).forEach(this::lift);
    }

    private void rain() {
        picture(
                RAIN,
                "Where the rain goes",
                "The build in the rain: arrows show the ways of the water, numbers what it finds.",
                room -> new RainDrawing(plan, Scene.interrupted(shown), words, room.wide(), room.high()));
    }

    /** {@code lift}, and {@code lift 2} for another build that is lifted. */
    private void lift(Loads.Lifted lifted) {
        long before = all.stream().filter(one -> one.name().startsWith(LIFT)).count();
        picture(
                before == 0 ? LIFT : LIFT + " " + (before + 1),
                "Lifting: " + lifted.part(),
                "What is lifted with %s: where it balances, and where each hand takes hold.".formatted(lifted.part()),
                room -> new LiftDrawing(plan, lifted, room.wide(), room.high()));
    }

    private void view(View view, String name, String title, String from) {
        sized(name, title, "The build seen " + from + ", with its sizes.", room -> {
            Scene scene = Scene.interrupted(shown);
            List<Measure> sizes = ViewSizes.of(plan, placed, scene.broken(), view, List.of());
            return ViewDrawing.Prepared.of(scene, view).fitting(sizes, words, room.wide(), room.high());
        });
    }

    private Drawing slice(Room room) {
        Bounds hull =
                main.stream().map(p -> p.solid().bounds()).reduce(Bounds::and).orElseThrow();
        Scene scene = Scene.sliced(shown, View.SIDE, hull.middle().dot(View.SIDE.toEye()));
        List<Measure> sizes = ViewSizes.of(plan, placed, scene.broken(), View.SIDE, List.of());
        return ViewDrawing.Prepared.of(scene, View.SIDE).fitting(sizes, words, room.wide(), room.high());
    }

    private void step(PlannedStep step) {
        int number = step.number();
        picture(
                "step " + number,
                "Step " + number + ": " + step.title(),
                "What is there in step %d; this step adds: %s".formatted(number, letters(plan.added(number))),
                room -> Pictures.step(plan, number, room.wide(), room.high()).orElseThrow());
    }

    /** {@code part A}, and {@code part A 2} where more than one face or piece of it is marked. */
    private void marking(Marking marking) {
        String letter = plan.part(marking.part()).map(PlannedPart::letter).orElse(marking.part());
        String name = "part " + letter;
        int number = 1;
        while (named(name).isPresent()) {
            name = "part " + letter + " " + ++number;
        }
        sized(
                name,
                "Marking out: " + marking.title(),
                "What is marked on " + marking.title() + ", measured from one corner. " + marking.faceUp(),
                room -> PartDrawing.of(marking, words, room.wide(), room.high()));
    }

    private void sized(String name, String title, String says, Function<Room, Drawing> drawn) {
        all.add(new Named(name, title, says, true, drawn));
    }

    private void picture(String name, String title, String says, Function<Room, Drawing> drawn) {
        all.add(new Named(name, title, says, false, drawn));
    }

    private synchronized Scene apart() {
        if (apart == null) {
            Broken broken = Broken.of(placed.stream().map(PlacedPart::solid).toList());
            apart = TakenApart.of(placed, broken, View.DIMETRIC).scene(broken);
        }
        return apart;
    }

    /** {@code A Floor, B Side.} */
    private String letters(List<PlacedPart> pieces) {
        return pieces.stream()
                .map(p -> (p.letter() + " " + p.solid().part()).strip())
                .distinct()
                .collect(Collectors.joining(", ", "", "."));
    }
}
