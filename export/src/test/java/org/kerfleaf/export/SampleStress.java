package org.kerfleaf.export;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.caution.Topic;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetSize;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Buying;
import org.kerfleaf.plan.Chain;
import org.kerfleaf.plan.Chain.Held;
import org.kerfleaf.plan.Chain.Link;
import org.kerfleaf.plan.Doors;
import org.kerfleaf.plan.Fastening;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Paintwork;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Problem;

/** Plans that press on every page: many parts, long names, missing prices, nothing at all. */
public final class SampleStress {
    private static final String LONG_NAME =
            "Intermediate vertical partition between the left-hand drawers and the Donaudampfschifffahrtsgesellschaftsfach";

    private SampleStress() {}

    /** Forty parts on twelve sheets, thirty steps, thirty checks, every topic. */
    public static Plan many() {
        Plan p = SamplePlan.inches();
        List<PlannedPart> parts = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            parts.add(part(
                    letter(i),
                    "Part number " + (i + 1),
                    Length.ofSixtyFourths(64 * 8 + 41 * i),
                    Length.ofSixtyFourths(64 * 3 + 23 * i)));
        }
        List<SheetLayout> sheets = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            sheets.add(sheet(parts, i / 2));
        }
        List<PlannedStep> steps = new ArrayList<>();
        List<Integer> untimed = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            List<PlannedStep.Take> take = new ArrayList<>();
            for (int k = 0; k < i; k++) {
                take.add(new PlannedStep.Take(
                        k % 2 == 0 ? Optional.of(letter(k)) : Optional.empty(),
                        "thing number " + k + ", 3/4 x 1 5/8 in"));
            }
            if (i % 2 == 0) {
                untimed.add(i);
            }
            steps.add(new PlannedStep(
                    i,
                    "Step with the name of number " + i,
                    take,
                    i % 2 == 0 ? Optional.empty() : Optional.of(Duration.ofMinutes(5L * i)),
                    1 + i % 3,
                    p.cautions().subList(0, i % 9),
                    List.of(),
                    Optional.empty()));
        }
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            checks.addAll(p.checks());
        }
        List<Caution> cautions = new ArrayList<>();
        for (Topic topic : Topic.values()) {
            cautions.add(new Caution(
                    topic,
                    "Keep fingers out from under the sheet. Let the blade stop before you put the saw down, then look round and think before the next cut.",
                    List.of(1, 2, 3, 7, 9, 10, 11, 12),
                    "29 CFR 1926.304"));
        }
        List<CostLine> lines = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            lines.addAll(p.cost().lines());
        }
        lines.sort(java.util.Comparator.comparing(CostLine::department));
        Cost cost = new Cost(
                lines,
                p.cost().bought(),
                p.cost().used(),
                p.cost().notKnown(),
                p.cost().compare(),
                1);
        return copy(
                p,
                p.title(),
                parts,
                sheets,
                p.sawSettings(),
                cost,
                checks,
                steps,
                new Schedule(
                        p.schedule().work(),
                        untimed,
                        p.schedule().ahead(),
                        p.schedule().course()),
                cautions,
                manyBuilds(p.chains()),
                List.of());
    }

    /** More builds than a page holds. */
    private static List<Chain> manyBuilds(List<Chain> chains) {
        List<Chain> all = new ArrayList<>();
        for (int build = 0; build < 20; build++) {
            for (Chain chain : chains) {
                all.add(new Chain(build, chain.first(), chain.axis(), chain.links(), chain.overall(), chain.held()));
            }
        }
        return all;
    }

    /** Twelve links with names longer than any column, the last of them missing. */
    private static Chain longChain(Chain of) {
        List<Link> links = Collections.nCopies(12, new Link(LONG_NAME, "A", Length.ofSixtyFourths(46)));
        Held held = new Held(LONG_NAME, of.overall(), "outside");
        return new Chain(0, LONG_NAME, of.axis(), links, Length.ofSixtyFourths(13 * 46), List.of(held, held));
    }

    /** Names longer than any column. */
    public static Plan longNames() {
        Plan p = SamplePlan.inches();
        List<PlannedPart> parts = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            parts.add(part(
                    letter(i),
                    LONG_NAME + " " + i,
                    Length.ofSixtyFourths(64 * 14 + 41 * i),
                    Length.ofSixtyFourths(64 * 4 + 23 * i)));
        }
        List<CostLine> lines = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (Department department : Department.values()) {
            lines.add(new CostLine(
                    department,
                    LONG_NAME,
                    LONG_NAME + " " + LONG_NAME,
                    Figure.of(12, "r", "s"),
                    Optional.empty(),
                    Optional.empty()));
            open.add(LONG_NAME);
        }
        List<Cost.KitComparison> kits = p.cost().compare().stream()
                .map(kit -> new Cost.KitComparison(
                        kit.name(),
                        kit.price(),
                        kit.freight(),
                        kit.total(),
                        Optional.empty(),
                        kit.lacks(),
                        Optional.empty()))
                .toList();
        Cost cost = new Cost(lines, Optional.empty(), Optional.empty(), open, kits, 1);
        List<PlannedStep> steps = new ArrayList<>();
        p.steps()
                .forEach(s -> steps.add(new PlannedStep(
                        s.number(),
                        LONG_NAME,
                        List.of(new PlannedStep.Take(Optional.of("A"), LONG_NAME)),
                        Optional.of(Duration.ofMinutes(725)),
                        2,
                        s.cautions(),
                        List.of(),
                        Optional.empty())));
        List<SawSetting> saws = new ArrayList<>();
        p.sawSettings()
                .forEach(s -> saws.add(new SawSetting(
                        s.saw() + " with a very long name",
                        List.of("A", "B", "C", "D", "E", "F", "G", "H", "J", "AA", "AB", "AC"),
                        LONG_NAME,
                        s.faceUp(),
                        s.tilt(),
                        s.scale(),
                        s.bladeDepth(),
                        s.straightedge(),
                        s.set().stream()
                                .map(r -> new Reading(LONG_NAME, r.value()))
                                .toList(),
                        s.guides(),
                        LONG_NAME)));
        List<Check> checks = new ArrayList<>();
        p.checks()
                .forEach(c -> checks.add(new Check(
                        LONG_NAME,
                        c.result() + " " + LONG_NAME,
                        c.margin(),
                        c.level(),
                        c.verdict(),
                        LONG_NAME,
                        LONG_NAME)));
        return copy(
                p,
                LONG_NAME + ", " + LONG_NAME,
                parts,
                List.of(sheet(parts, 0)),
                saws,
                cost,
                checks,
                steps,
                p.schedule(),
                p.cautions(),
                p.chains().stream().map(SampleStress::longChain).toList(),
                List.of(new Problem(
                        Origin.NOWHERE, "“Shelf” and “Back” are in one place: 1/4 × 7 1/4 × 18 7/8 in of both.")));
    }

    /** A plan of nothing. */
    public static Plan nothing() {
        Plan p = SamplePlan.inches();
        Cost none = new Cost(
                List.of(),
                Optional.of(Figure.of(org.joda.money.Money.zero(SamplePlan.USD), "r", "s")),
                Optional.of(Figure.of(org.joda.money.Money.zero(SamplePlan.USD), "r", "s")),
                List.of(),
                List.of(),
                1);
        return new Plan(
                "Empty",
                p.style(),
                p.day(),
                p.currency(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Fastening.NONE,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Paintwork.NONE,
                none,
                List.of(),
                List.of(),
                new Schedule(Figure.of(Duration.ZERO, "r", "s"), List.of(), List.of(), Optional.empty()),
                Buying.NOTHING,
                Optional.empty(),
                Loads.NONE,
                Optional.empty(),
                Doors.NONE,
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }

    private static Plan copy(
            Plan p,
            String title,
            List<PlannedPart> parts,
            List<SheetLayout> sheets,
            List<SawSetting> saws,
            Cost cost,
            List<Check> checks,
            List<PlannedStep> steps,
            Schedule schedule,
            List<Caution> cautions,
            List<Chain> chains,
            List<Problem> problems) {
        List<StockBound> bounds = new ArrayList<>(p.bounds());
        return new Plan(
                title,
                p.style(),
                p.day(),
                p.currency(),
                p.pricesOf(),
                p.sizes(),
                parts,
                List.of(),
                List.of(),
                Fastening.NONE,
                sheets,
                p.boards(),
                bounds,
                saws,
                p.hardware(),
                p.finish(),
                p.paintwork(),
                cost,
                checks,
                steps,
                schedule,
                p.buying(),
                p.site(),
                p.loads(),
                p.rain(),
                p.doors(),
                cautions,
                p.overall(),
                chains,
                p.weight(),
                problems);
    }

    private static String letter(int i) {
        String letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        int n = letters.length();
        return (i < n ? "" : letters.substring(i / n - 1, i / n)) + letters.charAt(i % n);
    }

    private static PlannedPart part(String letter, String name, Length length, Length width) {
        return new PlannedPart(
                letter,
                name,
                PartKind.PANEL,
                2,
                false,
                "exterior plywood",
                "exterior plywood",
                Figure.of(length, "r", Reason.GEOMETRY),
                Figure.of(width, "r", Reason.GEOMETRY),
                Figure.of(Length.ofSixtyFourths(46), "r", Reason.GEOMETRY),
                true,
                Figure.of(length.by(width), "r", Reason.GEOMETRY),
                List.of(),
                List.of("two holes 3/8 in"),
                Optional.empty(),
                Optional.empty());
    }

    /** As many rows of parts as fit, so that there are slim strips and many cuts. */
    private static SheetLayout sheet(List<PlannedPart> parts, int from) {
        SheetSize size = new SheetSize(
                "exterior plywood",
                Length.ofInches(96),
                Length.ofInches(48),
                Length.ofSixtyFourths(16),
                Length.ofSixtyFourths(8),
                Integer.MAX_VALUE);
        SampleSheet sheet = new SampleSheet(size);
        double x = 0.25;
        int next = from * 5;
        while (true) {
            List<SampleSheet.Piece> row = new ArrayList<>();
            double y = 0.25;
            double longest = 0;
            while (true) {
                PlannedPart part = parts.get(next % parts.size());
                double wide = part.width().value().inInches();
                if (y + wide > 47.75
                        || x + Math.max(longest, part.length().value().inInches()) > 95.75) {
                    break;
                }
                row.add(new SampleSheet.Piece(
                        part.name(), part.length().value(), part.width().value(), false));
                y += wide + 0.125;
                longest = Math.max(longest, part.length().value().inInches());
                next++;
            }
            if (row.isEmpty()) {
                return sheet.laidOut();
            }
            sheet.row(row.toArray(SampleSheet.Piece[]::new));
            x += longest + 0.125;
        }
    }
}
