package org.kerfleaf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.CostChecks;
import org.kerfleaf.rules.SiteChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.site.Embedment;
import org.kerfleaf.site.PostHole;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.site.WindLoad;
import org.kerfleaf.sketch.Ahead;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.OfSite;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Prices;
import org.kerfleaf.sketch.Reach;

/** Whether it can be reached, stands clear of a path, and stands at all; and whether a kit is compared like for like. */
final class SiteChecking {
    private final Planned planned;
    private final MeasureStyle style;

    SiteChecking(Planned planned) {
        this.planned = planned;
        this.style = planned.style();
    }

    List<Check> all(Cost cost, LocalDate day) {
        List<Check> checks = new ArrayList<>();
        planned.siting().hole().ifPresent(hole -> checks.addAll(hole(hole)));
        cost.compare()
                .forEach(kit -> checks.add(CostChecks.likeForLike(
                        kit.name(),
                        kit.lacks(),
                        kit.likeForLike().map(both -> both.lacked().value()),
                        cost.notKnown(),
                        style)));
        if (cost.lines().stream().anyMatch(line -> line.each().isPresent())) {
            checks.add(CostChecks.priceAge(
                    planned.sketch().all(Prices.class).stream().map(Prices::day).findFirst(), day, style));
        }
        return checks;
    }

    private List<Check> hole(Hole hole) {
        List<Check> checks = new ArrayList<>();
        checks.addAll(reach());
        betweenPosts().ifPresent(checks::add);
        groundSpace().ifPresent(checks::add);
        besidePath(hole).ifPresent(checks::add);
        List<Piece> post = hole.post().map(planned.assembly()::of).orElse(List.of());
        if (!post.isEmpty()) {
            Box box = Assembly.hull(post);
            String name = post.get(0).part();
            Length inGround = PostHole.inGround(hole.deep(), hole.gravel()).value();
            checks.add(depth(name, inGround, box));
            checks.add(SiteChecks.leftLong(
                    name, hole.leftLong(), box.extent(Axis.Z).minus(inGround), style));
            hole.frost().ifPresent(frost -> checks.add(SiteChecks.frostDepth(name, hole.deep(), frost, style)));
            Length side = box.extent(Axis.X).max(box.extent(Axis.Y));
            checks.add(SiteChecks.holeRoom(
                    name,
                    hole.across(),
                    side,
                    PostHole.volume(hole.across(), hole.deep()).value(),
                    style));
        }
        checks.add(SiteChecks.services("Hole", asked(), style));
        return checks;
    }

    /** Knob, and whatever was said to be in reach, against the band of everybody who reaches; of an adult if nobody was named. */
    private List<Check> reach() {
        List<Check> checks = new ArrayList<>();
        List<Reach> people = planned.siting().people();
        List<Origin> things = Siting.said(planned.sketch(), OfSite.InReach.class)
                .map(OfSite.InReach::things)
                .orElse(List.of());
        for (Reach who : people) {
            planned.siting()
                    .latch()
                    .ifPresent(latch -> checks.add(SiteChecks.reach("Latch use", "Knob", latch.value(), who, style)));
            for (Origin thing : things) {
                for (Piece piece : planned.assembly().of(thing)) {
                    checks.add(
                            SiteChecks.reach("Reach", piece.part(), piece.box().high(Axis.Z), who, style));
                }
            }
        }
        return checks;
    }

    /** Of two posts or more, the widest clear gap between neighbours and what hangs lowest there. */
    private Optional<Check> betweenPosts() {
        List<Box> posts = planned.sketch().all(Hole.class).stream()
                .flatMap(hole -> planned.siting().post(hole).stream())
                .sorted(Comparator.comparing(box -> box.low(Axis.X)))
                .toList();
        List<Piece> above = aboveGround();
        if (posts.size() < 2 || above.isEmpty()) {
            return Optional.empty();
        }
        Length apart = Length.ZERO;
        for (int i = 1; i < posts.size(); i++) {
            apart = apart.max(posts.get(i).low(Axis.X).minus(posts.get(i - 1).high(Axis.X)));
        }
        return Optional.of(SiteChecks.betweenPosts(
                above.get(0).part(), apart, Assembly.hull(above).low(Axis.Z), style));
    }

    private List<Piece> aboveGround() {
        return planned.assembly().all().stream()
                .filter(p -> p.box().low(Axis.Z).isPositive())
                .toList();
    }

    /** Asked for where somebody comes up to it: a knob, or people named. */
    private Optional<Check> groundSpace() {
        Optional<OfSite.Clear> clear = Siting.said(planned.sketch(), OfSite.Clear.class);
        boolean used = planned.siting().latch().isPresent()
                || Siting.said(planned.sketch(), OfSite.ReachedBy.class).isPresent();
        return used || clear.isPresent()
                ? Optional.of(SiteChecks.groundSpace(
                        clear.map(OfSite.Clear::wide),
                        clear.map(OfSite.Clear::deep),
                        Siting.said(planned.sketch(), OfSite.Slopes.class).map(OfSite.Slopes::by),
                        style))
                : Optional.empty();
    }

    /** Against the wind if that was said, else by thumb. */
    private Check depth(String post, Length inGround, Box box) {
        SitePlan site = planned.siting().plan().orElseThrow();
        if (site.wind().isEmpty()) {
            return SiteChecks.postDepthByThumb(
                    post, inGround, Embedment.byThumb(box.extent(Axis.Z)).value(), style);
        }
        return site.wind()
                .get()
                .needs()
                .map(needs -> SiteChecks.postDepth(
                        post,
                        inGround,
                        needs.plain().map(Figure::value),
                        needs.doubled().map(Figure::value),
                        site.windOnAll()
                                .flatMap(WindLoad::needs)
                                .flatMap(WindLoad.Needs::doubled)
                                .map(Figure::value),
                        style))
                .orElseGet(() -> SiteChecks.postDepthNotKnown(post, style));
    }

    /** How many working days before the first step the buried lines are asked for. */
    private OptionalInt asked() {
        return planned.sketch().all(Ahead.class).stream()
                .filter(ahead -> ahead.what().toLowerCase(Locale.ROOT).contains("buried"))
                .mapToInt(Ahead::workingDays)
                .findFirst();
    }

    private Optional<Check> besidePath(Hole hole) {
        Optional<Length> toPath =
                Siting.said(planned.sketch(), OfSite.BesidePath.class).map(OfSite.BesidePath::distance);
        List<Piece> post = hole.post().map(planned.assembly()::of).orElse(List.of());
        List<Piece> above = aboveGround();
        if (toPath.isEmpty() || post.isEmpty() || above.isEmpty()) {
            return Optional.empty();
        }
        Box stands = Assembly.hull(post);
        Box hull = Assembly.hull(above);
        Length proud = stands.low(Axis.Y).minus(hull.low(Axis.Y));
        return Optional.of(SiteChecks.besidePath(above.get(0).part(), proud, toPath.get(), hull.low(Axis.Z), style));
    }
}
