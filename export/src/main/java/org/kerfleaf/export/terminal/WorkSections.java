package org.kerfleaf.export.terminal;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.LikeForLike;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.plan.PlannedStep.Take;
import org.kerfleaf.plan.Rain;
import org.kerfleaf.plan.RainMark;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;

/** Hardware, finish, site, rain, cost, checks, steps and cautions. */
final class WorkSections {
    private static final String NOT_KNOWN = "not known";
    private static final List<Verdict> ORDER = List.of(Verdict.SHORT, Verdict.NOT_KNOWN, Verdict.HOLDS);

    private final Plan plan;
    private final MeasureStyle style;

    private WorkSections(Plan plan) {
        this.plan = plan;
        this.style = plan.style();
    }

    static List<Section> of(Plan plan) {
        WorkSections told = new WorkSections(plan);
        boolean bought =
                !plan.cost().lines().isEmpty() || !plan.cost().compare().isEmpty();
        return List.of(
                new Section("Hardware", "", !plan.hardware().isEmpty(), told::hardware),
                new Section(
                        "Fastening",
                        "joint by joint",
                        !plan.fastened().isEmpty() || !plan.fastening().glued().isEmpty(),
                        page -> FasteningText.write(plan, page)),
                MovementSection.of(plan),
                new Section(
                        "Doors and panes",
                        "",
                        !plan.doors().hung().isEmpty() || !plan.doors().panes().isEmpty(),
                        page -> DoorText.write(plan, page)),
                new Section("Finish", "", !plan.finish().isEmpty(), told::finish),
                PaintSection.of(plan),
                BuyingText.of(plan),
                new Section("Site", "", plan.site().isPresent(), page -> SiteSection.write(plan, page)),
                new Section("Loads", "", !plan.loads().isEmpty(), page -> LoadSection.write(plan, page)),
                new Section("Rain", "", plan.rain().isPresent(), told::rain),
                new Section("Cost", plan.currencyCode().map("in "::concat).orElse(""), bought, told::cost),
                checks(plan),
                new Section("Steps", "", !plan.steps().isEmpty(), told::steps),
                new Section(
                        "Work and waiting",
                        "",
                        ScheduleSection.isWorthIt(plan),
                        page -> ScheduleSection.tell(plan, page)),
                new Section(
                        "Cautions",
                        "read before the first cut",
                        !plan.cautions().isEmpty(),
                        told::cautions));
    }

    static Section checks(Plan plan) {
        WorkSections told = new WorkSections(plan);
        return new Section("Checks", told.verdicts(), !plan.checks().isEmpty(), told::checks);
    }

    private void hardware(Page page) {
        Grid grid = new Grid()
                .words("What")
                .number("Needed")
                .number("In a pack")
                .number("Packs")
                .words("Where they go");
        for (HardwareLine line : plan.hardware()) {
            grid.row(
                    Cell.of(line.what()),
                    Cell.of(line.need().value()),
                    Cell.of(line.packOf()),
                    Cell.of(line.packs().value()),
                    Cell.of(String.join("; ", line.uses())));
        }
        page.grid(grid);
        page.beforeReasons();
        for (HardwareLine line : plan.hardware()) {
            page.why(line.what() + ", needed", line.need());
            page.why(line.what() + ", packs", line.packs());
        }
    }

    private void finish(Page page) {
        Grid grid = new Grid()
                .words("What")
                .words("For")
                .number("Coats")
                .number("Needed")
                .number("In a pack")
                .number("Packs");
        for (FinishLine line : plan.finish()) {
            grid.row(
                    Cell.of(line.what()),
                    Cell.of(task(line) + ", " + line.extent().value().in(style)),
                    Cell.of(line.coats()),
                    Cell.of(line.need().value().in(style)),
                    Cell.of(line.pack().in(style)),
                    Cell.of(line.packs().value()));
        }
        page.grid(grid);
        page.blank();
        page.hanging(
                "Left over: ",
                plan.finish().stream()
                        .map(line -> line.what() + " " + line.left().value().in(style))
                        .collect(Collectors.joining(", ")));
        page.beforeReasons();
        for (FinishLine line : plan.finish()) {
            page.why(line.what() + ", extent", line.extent());
            page.why(line.what() + ", needed", line.need());
            page.why(line.what() + ", packs", line.packs());
            page.why(line.what() + ", left over", line.left());
            page.why(line.what() + ", one pack goes", line.goes());
        }
    }

    private static String task(FinishLine line) {
        return switch (line.task()) {
            case PAINT -> "paint";
            case CAULK -> "caulk";
            case GLUE -> "glue";
        };
    }

    private void rain(Page page) {
        Rain rain = plan.rain().orElseThrow();
        if (rain.marks().isEmpty()) {
            page.paragraph("It finds no way into the wood and no place to stay.");
        } else {
            Grid grid = new Grid().number("").words("Where").words("What").words("What helps");
            for (RainMark mark : rain.marks()) {
                grid.row(
                        Cell.of(mark.number()),
                        Cell.of(mark.title()),
                        Cell.of(mark.words()),
                        Cell.of(mark.isOpen() ? mark.advice() : "-"));
            }
            page.grid(grid);
        }
        page.blank();
        page.paragraph(Rain.LIMITS);
        page.beforeReasons();
        for (RainMark mark : rain.marks()) {
            page.why(mark.number() + " " + mark.title(), mark.much());
        }
    }

    private void cost(Page page) {
        Cost cost = plan.cost();
        Grid grid = new Grid()
                .words("What")
                .words("Size and use")
                .number("Number")
                .number("Each")
                .number("As bought")
                .number("Share used");
        for (CostLine line : cost.lines()) {
            grid.row(
                    Cell.of(line.what()),
                    Cell.of(line.detail()),
                    Cell.of(line.packs().value()),
                    Cell.of(amount(line.each())),
                    Cell.of(amount(line.bought())),
                    Cell.of(line.share()
                            .map(share -> percent(share.value().value()))
                            .orElse(NOT_KNOWN)));
        }
        page.grid(grid);
        page.blank();
        page.line("As bought  " + amount(cost.bought().map(Figure::value)));
        page.line("As used    " + amount(cost.used().map(Figure::value)));
        if (cost.kits() > 1) {
            page.line("One of %d kits: %s as bought, %s as used"
                    .formatted(
                            cost.kits(),
                            amount(cost.boughtEach().map(Figure::value)),
                            amount(cost.usedEach().map(Figure::value))));
        }
        if (!cost.notKnown().isEmpty()) {
            page.hanging("Not known, and left out of the totals: ", String.join(", ", cost.notKnown()));
        }
        page.beforeReasons();
        for (CostLine line : cost.lines()) {
            page.why(line.what() + ", number", line.packs());
            page.why(line.what() + ", share used", line.share());
        }
        page.why("as bought", cost.bought());
        page.why("as used", cost.used());
        cost.compare().forEach(kit -> kit(page, kit));
    }

    private static void kit(Page page, KitComparison kit) {
        page.blank();
        String freight = kit.freight()
                .map(money -> " and " + amount(Optional.of(money)) + " freight")
                .orElse("");
        String building =
                kit.difference().map(figure -> difference(figure.value())).orElse("What building costs is not known.");
        page.paragraph("%s: %s%s. %s".formatted(kit.name(), amount(Optional.of(kit.price())), freight, building));
        if (!kit.lacks().isEmpty()) {
            page.paragraph("The kit leaves out: " + String.join(", ", kit.lacks()) + ".");
        }
        kit.likeForLike().ifPresent(both -> likeForLike(page, both));
        page.why("kit in all", kit.total());
        page.why("difference", kit.difference());
    }

    private static void likeForLike(Page page, LikeForLike both) {
        page.paragraph("Like for like, with what it leaves out (%s): %s. %s%s"
                .formatted(
                        amount(Optional.of(both.lacked().value())),
                        amount(Optional.of(both.total().value())),
                        difference(both.asBought().value()),
                        both.asUsed()
                                .map(used -> " Against what is used of the packs it is %s."
                                        .formatted(amount(Optional.of(used.value()))))
                                .orElse("")));
        for (LikeForLike.ToolPaid tool : both.tools()) {
            page.paragraph("%s, %s: %s"
                    .formatted(
                            tool.name(),
                            amount(Optional.of(tool.price())),
                            tool.builds()
                                    .map(builds -> "paid for after " + Words.counted(builds.value(), "build") + ".")
                                    .orElse("never paid for, since building costs more.")));
        }
        page.why("what the kit leaves out", both.lacked());
        page.why("like for like, as bought", both.asBought());
        page.why("like for like, as used", both.asUsed());
        both.tools().forEach(tool -> page.why(tool.name(), tool.builds()));
    }

    private static String difference(Money difference) {
        String amount = amount(Optional.of(difference.abs()));
        return "Building, as bought, costs %s %s.".formatted(amount, difference.isPositiveOrZero() ? "less" : "more");
    }

    private static String amount(Optional<Money> money) {
        return money.map(known -> known.getAmount().toPlainString()).orElse(NOT_KNOWN);
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private String verdicts() {
        return ORDER.stream()
                .map(verdict -> "%d %s".formatted(of(verdict).size(), verdict.word()))
                .collect(Collectors.joining(", "));
    }

    private List<Check> of(Verdict verdict) {
        return plan.checks().stream()
                .filter(check -> check.verdict() == verdict)
                .toList();
    }

    private void checks(Page page) {
        for (Verdict verdict : ORDER) {
            for (Check check : of(verdict)) {
                String first = "%s %-9s  ".formatted(Level.of(check), verdict.word());
                String indent = " ".repeat(first.length());
                page.hanging(first, check.name() + (check.margin().isEmpty() ? "" : ": " + check.margin()));
                page.hanging(indent, check.result());
                if (!check.advice().isEmpty()) {
                    page.hanging(indent, check.advice());
                }
                page.hanging(indent, "(" + check.source() + ")");
            }
        }
    }

    private void steps(Page page) {
        for (PlannedStep step : plan.steps()) {
            String first = "%2d  ".formatted(step.number());
            page.hanging(first, "%s (%s%s)".formatted(step.title(), time(step.work()), people(step.people())));
            String indent = " ".repeat(first.length());
            if (!step.before().isEmpty()) {
                page.hanging(indent + "before you begin: ", String.join(", ", step.before()));
            }
            if (!step.take().isEmpty()) {
                page.hanging(
                        indent + "take ",
                        step.take().stream().map(WorkSections::inWords).collect(Collectors.joining(", ")));
            }
            String topics = step.cautions().stream()
                    .map(caution -> caution.topic().title())
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (!topics.isEmpty()) {
                page.hanging(indent + "caution: ", topics);
            }
        }
        page.blank();
        page.paragraph("Work in all: " + hours(plan.schedule().work().value()) + untimed());
        plan.schedule()
                .ahead()
                .forEach(ahead -> page.hanging(
                        "Before: ",
                        "%s, %s ahead".formatted(ahead.what(), Words.counted(ahead.workingDays(), "working day"))));
        page.why("work in all", plan.schedule().work());
    }

    private String untimed() {
        List<Integer> steps = plan.schedule().stepsWithoutTime();
        return steps.isEmpty()
                ? ""
                : "; not known for step " + steps.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String time(Optional<Duration> work) {
        return work.map(WorkSections::hours).orElse("time not known");
    }

    static String hours(Duration work) {
        String hours = work.toHours() == 0 ? "" : work.toHours() + " h";
        String minutes = work.toMinutesPart() == 0 ? "" : work.toMinutesPart() + " min";
        String both = (hours + " " + minutes).strip();
        return both.isEmpty() ? "0 min" : both;
    }

    private static String people(int people) {
        return people > 1 ? ", %d people".formatted(people) : "";
    }

    private static String inWords(Take take) {
        return take.letter().map(letter -> letter + " " + take.words()).orElse(take.words());
    }

    private void cautions(Page page) {
        for (Caution caution : plan.cautions()) {
            String steps = caution.steps().isEmpty()
                    ? "all steps"
                    : (caution.steps().size() == 1 ? "step " : "steps ")
                            + caution.steps().stream().map(String::valueOf).collect(Collectors.joining(", "));
            page.paragraph("%s, %s".formatted(caution.topic().title(), steps));
            page.hanging("    ", caution.words());
            page.hanging("    ", "(" + caution.source() + ")");
        }
    }
}
