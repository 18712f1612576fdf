package org.kerfleaf.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.PostHole;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Reach;

/** Whether it stands, whether people can use it and pass it, whether the ground was asked about. */
public final class SiteChecks {
    private static final Length TAMP_INCHES = Length.ofInches(4);
    private static final Length TAMP_MILLIMETRES = Length.ofMillimetres(100);
    private static final int NOTICE_DAYS = 2;

    private SiteChecks() {}

    /**
     * Check 49: what people use is within their reach: of an adult, standing or seated, 15 to 48 in (380 to 1220 mm); of children
     * of 3 to 4, 5 to 8 and 9 to 12 years 20 to 36, 18 to 40 and 16 to 44 in (510 to 915, 455 to 1015 and 405 to 1120 mm).
     *
     * @param rule the check's name: {@code Latch use}, {@code Reach}
     */
    public static Check reach(String rule, String of, Length height, Reach who, MeasureStyle style) {
        boolean adult = who == Reach.ADULT;
        Held held = new Held(
                rule,
                adult ? of : of + ", " + who.words(),
                adult ? "ADA 308.1 to 308.3 (seen in a copy)" : "ADA advisory 308.1 (seen in a copy)",
                style);
        Access.Band band = Access.band(who, style);
        Length low = band.low().value();
        Length high = band.high().value();
        String change = height.isLongerThan(high)
                ? "Set the post %s deeper, or cut it shorter.".formatted(Say.fine(height.minus(high), style))
                : "A post %s longer would bring it within reach.".formatted(Say.fine(low.minus(height), style));
        String what = rule.equals("Reach") ? of : "The latch";
        return held.between(
                "%s is %s above the ground, for %s.".formatted(what, height.in(style), who.words()),
                height,
                low,
                high,
                change);
    }

    /**
     * Check 50, two posts: what hangs between posts more than 12 in (305 mm) apart begins at 27 in (685 mm) above the ground or
     * lower, or at 80 in (2030 mm) or higher.
     *
     * @param apart the clear gap between them
     */
    public static Check betweenPosts(String of, Length apart, Length lowEdge, MeasureStyle style) {
        Held held = new Held("Between posts", of, "ADA 307.3 (seen in a copy)", style);
        Access asked = Access.of(List.of(), style);
        if (!apart.isLongerThan(asked.postsApart().value())) {
            return held.holds("The posts are %s apart: a cane finds one or the other.".formatted(apart.in(style)));
        }
        if (!lowEdge.isShorterThan(asked.overHead().value())) {
            return held.holds("It hangs %s above the ground, over people's heads.".formatted(lowEdge.in(style)));
        }
        return held.atMost(
                "The posts are %s apart, and what hangs between them begins %s above the ground."
                        .formatted(apart.in(style), lowEdge.in(style)),
                lowEdge,
                asked.cane().value(),
                "Add a low rail between the posts that a cane can find.");
    }

    /** Check 51: clear ground of 30 x 48 in (760 x 1220 mm) either way, sloping no more than 1 in 48. */
    public static Check groundSpace(
            Optional<Length> wide, Optional<Length> deep, Optional<Angle> slope, MeasureStyle style) {
        Held held = new Held("Ground space", "", "ADA 305 (seen in a copy)", style);
        String advice = "Say what is clear and how it slopes: clearGround(\"36 in\", \"48 in\").slopes(\"1 in 50\").";
        if (wide.isEmpty() || deep.isEmpty()) {
            return held.notKnown("How much clear ground there is in front of it was not said.", advice);
        }
        String ground = "%s by %s of clear ground in front of it."
                .formatted(wide.get().in(style), deep.get().in(style));
        Length less = wide.get().min(deep.get());
        Length more = wide.get().max(deep.get());
        Access asked = Access.of(List.of(), style);
        Length wantedWide = asked.groundWide().value();
        Length wantedDeep = asked.groundDeep().value();
        Length shortOf = wantedWide.minus(less).max(wantedDeep.minus(more));
        if (shortOf.isPositive()) {
            return held.falls(
                    "%s Wanted: %s by %s.".formatted(ground, wantedWide.in(style), wantedDeep.in(style)),
                    "Move it %s from what is in the way.".formatted(Say.fine(shortOf, style)));
        }
        if (slope.isEmpty()) {
            return held.notKnown(ground + " How it slopes was not said.", advice);
        }
        double rise = slope.get().tan();
        return held.level(
                "%s It rises 1 in %s. Allowed: 1 in 48."
                        .formatted(ground, rise == 0 ? "nothing" : Say.number(1 / rise, 0)),
                1 - rise * Access.FLATTEST,
                Say.number((1.0 / Access.FLATTEST - rise) * 100, 1) + " % of slope to spare",
                "too steep by " + Say.number((rise - 1.0 / Access.FLATTEST) * 100, 1) + " %",
                "Level it, or move it where the ground is flatter.");
    }

    /**
     * Check 50: what hangs on a post between 27 and 80 in (685 and 2030 mm) above the ground reaches no more than 12 in
     * (305 mm) over a path, since a cane does not find it.
     *
     * @param proud how far it stands out from the post's face towards the path
     * @param toPath from the post's face to the path
     * @param lowEdge its underside above the ground
     */
    public static Check besidePath(String of, Length proud, Length toPath, Length lowEdge, MeasureStyle style) {
        Held held = new Held("Beside a path", of, "ADA 307.3 (seen in a copy)", style);
        Length over = proud.minus(toPath);
        Access asked = Access.of(List.of(), style);
        Length cane = asked.cane().value();
        Length head = asked.overHead().value();
        if (!lowEdge.isLongerThan(cane)) {
            return held.holds("Its low edge is %s above the ground, so a cane finds it.".formatted(lowEdge.in(style)));
        }
        if (!lowEdge.isShorterThan(head)) {
            return held.holds("Its low edge is %s above the ground, over people's heads.".formatted(lowEdge.in(style)));
        }
        String sentence = over.isPositive()
                ? "It stands out %s from the post and reaches %s over the path, %s above the ground."
                        .formatted(proud.in(style), Say.fine(over, style), lowEdge.in(style))
                : "It stands out %s from the post, and the path begins %s away."
                        .formatted(proud.in(style), toPath.in(style));
        return held.atMost(
                sentence,
                over.max(Length.ZERO),
                asked.proud().value(),
                "Turn it, move it back, or add a low rail a cane can find.");
    }

    /**
     * Check 52: the post stands deep enough against the wind. The margin is against the depth with the soil's bearing doubled,
     * which IBC 1806.3.4 allows an isolated pole that may move 1/2 in at the ground; both depths are said.
     *
     * @param plain the depth needed without the doubling; empty beyond the rule's 12 ft
     * @param doubled the depth needed with it; empty beyond the rule's 12 ft
     * @param doubledWithPost the same with the wind on post and arms as well
     */
    public static Check postDepth(
            String of,
            Length inGround,
            Optional<Length> plain,
            Optional<Length> doubled,
            Optional<Length> doubledWithPost,
            MeasureStyle style) {
        Held held = new Held("Post depth", of, "IBC 1807.3.2.1 and 1806.3.4, ASCE 7-16 (seen in copies)", style);
        if (doubled.isEmpty()) {
            return held.falls(
                    "The wind asks for a depth beyond the rule's 12 ft (3.66 m). " + SitePlan.DEFERS,
                    "A smaller box, a lower post or a concrete pier would be right; ask a professional.");
        }
        String alone = plain.map(depth -> Say.fine(depth, style)).orElse("more than 12 ft (3.66 m)");
        boolean without = plain.isPresent() && !inGround.isShorterThan(plain.get());
        boolean with = !inGround.isShorterThan(doubled.get());
        String how = without
                ? "It holds without doubling the soil's bearing."
                : with ? "It holds only if the soil's bearing may be doubled." : "It holds neither way.";
        return held.atLeast(
                "The post stands %s in the ground. Against the wind on the box it needs %s, or %s with the soil's bearing doubled%s. %s %s"
                        .formatted(
                                inGround.in(style),
                                alone,
                                Say.fine(doubled.get(), style),
                                doubledWithPost
                                        .map(depth -> " (%s%s with the wind on post and arms as well)"
                                                .formatted(
                                                        Say.fine(depth, style),
                                                        depth.isLongerThan(inGround) ? ", more than it has," : ""))
                                        .orElse(""),
                                how,
                                SitePlan.DEFERS),
                inGround,
                doubled.get(),
                "%s in the ground, or a concrete pier, would hold."
                        .formatted(Say.fine(plain.orElse(doubled.get()), style)));
    }

    /** Check 52, where the wind is said and the ground is not. */
    public static Check postDepthNotKnown(String of, MeasureStyle style) {
        return new Held("Post depth", of, "IBC 1807.3.2.1, ASCE 7-16 (seen in copies)", style)
                .notKnown(
                        "How deep the post must stand against the wind is not known, for the ground is not.",
                        "Say what is dug in: site().ground(SAND), or what is tamped back.");
    }

    /**
     * Check 52, the post's top: it is left 2 to 3 in (50 to 75 mm) long, and cut at the height line once it stands.
     *
     * @param left how much longer it is cut, if said
     * @param line where it is cut, above the ground
     */
    public static Check leftLong(String of, Optional<Length> left, Length line, MeasureStyle style) {
        Held held = new Held("Post cut last", of, Reason.COMMON_PRACTICE, style);
        if (left.isEmpty()) {
            return held.notKnown(
                    "Nothing is said of leaving the post long. A hole is never as deep as planned.",
                    "Leave it 2 to 3 in long (50 to 75 mm): leftLong(\"3 in\"). Strike the height line once it stands.");
        }
        if (!line.isPositive()) {
            return held.falls(
                    "At its height line nothing of the post is above the ground.",
                    "A longer post, or a hole less deep, would do.");
        }
        return held.atLeast(
                "It is cut %s long, and at the height line %s above the ground once it stands."
                        .formatted(left.get().in(style), line.in(style)),
                left.get(),
                Say.rule(style, Length.ofInches(2L), Length.ofMillimetres(50L)),
                "Two or three inches more (50 to 75 mm) cost little.");
    }

    /** Check 52, where no wind is said: a third of the post, 24 in (610 mm) at least, by rule of thumb. */
    public static Check postDepthByThumb(String of, Length inGround, Length byThumb, MeasureStyle style) {
        Held held = new Held("Post depth", of, "rule of thumb; common practice, no source", style);
        return held.atLeast(
                "The post stands %s in the ground; by thumb a third of it would. No wind speed was said. %s"
                        .formatted(inGround.in(style), SitePlan.DEFERS),
                inGround,
                byThumb,
                "%s in the ground would be the usual depth.".formatted(Say.fine(byThumb, style)));
    }

    /** Check 52, frost: the hole goes down to the frost line. */
    public static Check frostDepth(String of, Length hole, Length frost, MeasureStyle style) {
        Held held = new Held(
                "Frost", of, "IRC R403.1.4 (seen in a copy); local frost depth as said in the workbook", style);
        return held.atLeast(
                "The hole is %s deep; the ground freezes to %s.".formatted(hole.in(style), frost.in(style)),
                hole,
                frost,
                "A hole of %s would stand below the frost.".formatted(frost.in(style)));
    }

    /** Check 53: there is room to tamp: the hole is 4 in (100 mm) wider than the post; its volumes are said. */
    public static Check holeRoom(String of, Length across, Length post, Volume hole, MeasureStyle style) {
        Held held =
                new Held("Hole", of, "common practice; IBC 1807.3.3 asks the same of concrete (from memory)", style);
        Length wanted = Say.rule(style, TAMP_INCHES, TAMP_MILLIMETRES);
        return held.atLeast(
                "A hole of %s is %s; %s to put somewhere. It is %s wider than the post."
                        .formatted(
                                across.in(style),
                                ground(hole, style),
                                ground(PostHole.spoil(hole).value(), style),
                                Say.fine(across.minus(post), style)),
                across.minus(post),
                wanted,
                "A hole %s across leaves room to tamp.".formatted(Say.fine(post.plus(wanted), style)));
    }

    private static String ground(Volume volume, MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Say.number(volume.inCubicFeet(), 1) + " cubic feet"
                : Say.number(volume.inLitres(), 0) + " l";
    }

    /** Check 54: buried lines are asked for before the first hole, two working days ahead or more. */
    public static Check services(String of, OptionalInt workingDaysAhead, MeasureStyle style) {
        Held held = new Held(
                "Buried lines", of, "29 CFR 1926.651(b); state law asks 2 to 3 working days (seen in copies)", style);
        String advice = "Ask for buried lines to be located 2 to 3 working days before you dig (in the USA: 811).";
        if (workingDaysAhead.isEmpty()) {
            return held.falls("A hole is dug and nobody asks for buried lines first.", advice);
        }
        int days = workingDaysAhead.getAsInt();
        return held.level(
                "Buried lines are asked for %d working days ahead. Wanted: %d.".formatted(days, NOTICE_DAYS),
                (days - NOTICE_DAYS) / (double) NOTICE_DAYS,
                days == NOTICE_DAYS ? "nothing to spare" : days - NOTICE_DAYS + " days to spare",
                "short by " + (NOTICE_DAYS - days) + " days",
                advice);
    }
}
