package org.kerfleaf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Problem;

/**
 * Everything that follows from a sketch, ready to be printed.
 *
 * @param title the workbook's title
 * @param style unit and print step
 * @param day the day the plan is made for
 * @param currency of all prices
 * @param pricesOf the day the prices were true, if said
 * @param sizes the maker's sizes, in document order
 * @param parts what is cut, in the order of their letters (first use in the document)
 * @param placed every piece in its place, in the order of placing; the whole is square in one frame
 * @param movement how boards move across their grain, where enough was said of them and of the place
 * @param fastening where every fastener goes, and what is marked on the parts
 * @param sheets one layout for each sheet bought
 * @param boards one layout for each board or moulding bought
 * @param bounds how few would do, for each stock
 * @param sawSettings set-ups, grouped so that each is made once
 * @param hardware screws, bolts, hinges and the like
 * @param finish paint, caulk, glue
 * @param paintwork what is painted face by face, by when, and what stays bare for glue
 * @param cost what is bought, what of it is used, and the kit it is compared with
 * @param checks in the order of job.md's list of checks
 * @param steps the build steps
 * @param schedule hours of work and waiting
 * @param buying what to know in the shop, and how it all gets home
 * @param site post, hole and reach, if the build stands in the ground
 * @param loads what parts carry and people lift
 * @param rain where rain goes on the finished build; empty if it stands under a roof or that was not said
 * @param doors what hangs on hinges, and what is glazed
 * @param cautions what can hurt somebody in this build
 * @param overall outside width, depth and height of the build where it is placed
 * @param chains how the sizes of each build add up, direction by direction
 * @param weight of everything made of wood and glazing, if every density is known
 * @param problems what does not make sense, each with the cell that said it
 */
public record Plan(
        String title,
        MeasureStyle style,
        LocalDate day,
        CurrencyUnit currency,
        Optional<LocalDate> pricesOf,
        List<PlannedSize> sizes,
        List<PlannedPart> parts,
        List<PlacedPart> placed,
        List<Moving> movement,
        Fastening fastening,
        List<SheetLayout> sheets,
        List<BoardLayout> boards,
        List<StockBound> bounds,
        List<SawSetting> sawSettings,
        List<HardwareLine> hardware,
        List<FinishLine> finish,
        Paintwork paintwork,
        Cost cost,
        List<Check> checks,
        List<PlannedStep> steps,
        Schedule schedule,
        Buying buying,
        Optional<SitePlan> site,
        Loads loads,
        Optional<Rain> rain,
        Doors doors,
        List<Caution> cautions,
        Optional<Overall> overall,
        List<Chain> chains,
        Optional<Figure<Mass>> weight,
        List<Problem> problems) {

    /** Stands for a currency where the workbook says none (ISO 4217: no currency). */
    public static final CurrencyUnit NO_CURRENCY = CurrencyUnit.of("XXX");

    /** A size as it stands in this plan; the range is what its owner allows. */
    public record PlannedSize(String label, Quantity value, Optional<Quantity> least, Optional<Quantity> most) {}

    /** Outside sizes of the placed build. */
    public record Overall(Figure<Length> wide, Figure<Length> deep, Figure<Length> high) {}

    /** This plan with further problems before its own: those found before there was anything to plan. */
    public Plan withProblems(List<Problem> further) {
        List<Problem> all = new ArrayList<>(further);
        all.addAll(problems);
        return with(buying, all);
    }

    /** This plan with what it would come to with another stock. */
    Plan withInstead(List<Buying.OneOf> choices) {
        return with(buying.with(choices), problems);
    }

    private Plan with(Buying bought, List<Problem> wrong) {
        return new Plan(
                title,
                style,
                day,
                currency,
                pricesOf,
                sizes,
                parts,
                placed,
                movement,
                fastening,
                sheets,
                boards,
                bounds,
                sawSettings,
                hardware,
                finish,
                paintwork,
                cost,
                checks,
                steps,
                schedule,
                bought,
                site,
                loads,
                rain,
                doors,
                cautions,
                overall,
                chains,
                weight,
                List.copyOf(wrong));
    }

    /** How many kits are made in one go, 1 or more: parts are those of one kit, what is cut out and bought is for all of them. */
    public int kits() {
        return cost.kits();
    }

    /** The fasteners of every contact, each in its place in the build, in the order of the joints. */
    public List<Fastened> fastened() {
        return fastening.joints();
    }

    /** The fasteners that a step drives, contact by contact. */
    public List<Fastened> fastened(int step) {
        return fastened().stream().filter(f -> f.step() == step).toList();
    }

    /** What is marked on the parts before they are put together, in the order of their letters. */
    public List<Marking> markings() {
        return fastening.markings();
    }

    /** What a step puts in place. */
    public List<PlacedPart> added(int step) {
        return placed.stream().filter(p -> p.step() == step).toList();
    }

    /** What is in sight in a step and was put in place before: the builds it works on, and what is mounted on them by then. */
    public List<PlacedPart> there(int step) {
        Set<String> bound = fastened(step).stream()
                .flatMap(f -> Stream.concat(Stream.of(f.through()), f.into().stream()))
                .map(Fastened.Bound::part)
                .collect(Collectors.toSet());
        Set<Integer> builds = placed.stream()
                .filter(p -> p.step() == step || bound.contains(p.solid().part()))
                .map(PlacedPart::build)
                .collect(Collectors.toSet());
        boolean mounts = placed.stream().anyMatch(p -> p.mounted() > 0 && p.mounted() <= step);
        return placed.stream()
                .filter(p -> p.step() < step)
                .filter(p -> mounts || builds.contains(p.build()))
                .toList();
    }

    /** The currency's code, empty if the workbook says none. */
    public Optional<String> currencyCode() {
        return Optional.of(currency.getCode()).filter(code -> !currency.equals(NO_CURRENCY));
    }

    /** The part of that name. */
    public Optional<PlannedPart> part(String name) {
        return parts.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** The check of that name. */
    public Optional<Check> check(String name) {
        return checks.stream().filter(c -> c.name().equals(name)).findFirst();
    }
}
