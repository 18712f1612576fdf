package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.schedule.Diary;
import org.kerfleaf.schedule.FreeHours;
import org.kerfleaf.schedule.Net;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.schedule.Sitting;
import org.kerfleaf.schedule.Stretch;
import org.kerfleaf.sketch.Ahead;
import org.kerfleaf.sketch.CutAll;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.FreeTime;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Waiting;
import org.kerfleaf.sketch.WorkTime;

/** Says what must come before each step, how long it has to wait for it, and with that when each can be done. */
final class Scheduling {
    private final Sketch sketch;
    private final Handling handling;
    private final Waits waits;
    private final LocalDate day;
    private final Set<String> notKnown = new LinkedHashSet<>();
    private final Map<Integer, Set<String>> inHand = new LinkedHashMap<>();

    Scheduling(Sketch sketch, Handling handling, LocalDate day) {
        this.sketch = sketch;
        this.handling = handling;
        this.waits = new Waits(handling);
        this.day = day;
        for (Sketch.Step step : sketch.steps()) {
            Set<String> parts = new LinkedHashSet<>();
            handling.said(step.number()).forEach(said -> parts.addAll(handling.parts(said)));
            inHand.put(step.number(), parts);
        }
    }

    Schedule schedule() {
        List<WorkTime> times = sketch.all(WorkTime.class);
        Duration work = times.stream().map(WorkTime::work).reduce(Duration.ZERO, Duration::plus);
        List<Integer> silent = sketch.steps().stream()
                .map(Sketch.Step::number)
                .filter(number -> times.stream().noneMatch(t -> t.origin().step() == number))
                .toList();
        return new Schedule(
                Figure.of(
                        work,
                        "the sum of what the steps take",
                        Reason.THE_WORKBOOK,
                        given("steps with a time", times.size())),
                silent,
                sketch.all(Ahead.class).stream()
                        .map(a -> new Schedule.Ahead(a.what(), a.workingDays()))
                        .toList(),
                sketch.steps().isEmpty() ? Optional.empty() : Optional.of(course(silent)));
    }

    /**
     * The chain of one kit's work and waiting, one step after the other as written.
     *
     * @param cutBefore whether cutting is done beforehand, and does not count
     */
    Duration chain(boolean cutBefore) {
        return Net.of(oneAfterTheOther(stretches().stream()
                        .map(one -> cutBefore && cuts(one.step())
                                ? new Stretch(one.step(), Duration.ZERO, one.after(), one.rest())
                                : one)
                        .toList()))
                .finish();
    }

    /** What nobody said of times, in words; known once the schedule is made. */
    Set<String> notKnown() {
        return notKnown;
    }

    private List<Stretch> stretches() {
        Map<Integer, Integer> last = new LinkedHashMap<>();
        List<Stretch> stretches = new ArrayList<>();
        for (Sketch.Step step : sketch.steps()) {
            stretches.addAll(stretches(step.number(), first(step.number()), last, stretches.size()));
            last.put(step.number(), stretches.size() - 1);
        }
        return stretches;
    }

    private Schedule.Course course(List<Integer> silent) {
        List<Stretch> stretches = stretches();
        silent.stream()
                .filter(this::isWork)
                .forEach(number -> notKnown.add("how long step %d takes".formatted(number)));
        Net net = Net.of(stretches);
        Net alone = Net.of(oneAfterTheOther(stretches));
        List<Schedule.Line> lines = sketch.steps().stream()
                .filter(step -> isWork(step.number()))
                .map(step -> line(step.number(), stretches, net))
                .toList();
        return new Schedule.Course(
                lines,
                figure(
                        net.finish(),
                        "the longest chain of work and waiting, hands enough for all that may go on at once"),
                figure(alone.finish(), "the longest chain of work and waiting, one step after the other as written"),
                figure(alone.ready(), "the same, and until the last glue, paint and caulk has cured"),
                List.copyOf(notKnown),
                days(stretches));
    }

    private Figure<Duration> figure(Duration time, String rule) {
        return Figure.of(
                time,
                rule + (notKnown.isEmpty() ? "" : "; at least, since some times were not said"),
                "critical path method, from memory; times as said in the workbook",
                given("steps", sketch.steps().size()));
    }

    // ---- what must come first ------------------------------------------------------------------------------------

    /** What must come before a step; what another of them has to wait for already is left out. */
    private List<Schedule.First> first(int step) {
        List<Schedule.First> all = new ArrayList<>();
        for (int earlier : inHand.keySet()) {
            if (earlier >= step) {
                break;
            }
            needs(earlier, step).ifPresent(all::add);
        }
        List<Schedule.First> left = new ArrayList<>();
        for (Schedule.First one : all) {
            boolean implied = all.stream()
                    .filter(other -> other.step() > one.step())
                    .flatMap(other -> needs(one.step(), other.step()).stream())
                    .anyMatch(between -> between.waiting().compareTo(one.waiting()) >= 0);
            if (!implied) {
                left.add(one);
            }
        }
        return left;
    }

    private Optional<Schedule.First> needs(int earlier, int later) {
        Optional<String> shared =
                inHand.get(later).stream().filter(inHand.get(earlier)::contains).findFirst();
        boolean asWritten = later == earlier + 1 && (isPlain(later) || isPlain(earlier));
        if (shared.isEmpty() && !asWritten) {
            return Optional.empty();
        }
        Duration longest = Duration.ZERO;
        String because = shared.map(part -> cuts(earlier) ? part + " is cut" : part + " is in hand in both")
                .orElse("as written");
        for (Waits.Wait wait : waits.between(earlier, later)) {
            know(wait);
            if (wait.known().compareTo(longest) > 0) {
                longest = wait.known();
                because = wait.because();
            }
        }
        for (Waiting said : said(Waiting.class, earlier)) {
            if (said.time().compareTo(longest) > 0) {
                longest = said.time();
                because = said.forWhat();
            }
        }
        return Optional.of(new Schedule.First(earlier, longest, because));
    }

    private void know(Waits.Wait wait) {
        if (wait.time().isEmpty()) {
            notKnown.add("how long " + wait.because());
        }
    }

    private boolean cuts(int step) {
        return !said(CutAll.class, step).isEmpty();
    }

    /** Work that has no part in hand: it is done where it is written. */
    private boolean isPlain(int step) {
        return inHand.get(step).isEmpty() && isWork(step);
    }

    /** Whether there is more to do in it than to ask or order something. */
    private boolean isWork(int step) {
        List<Declaration> said = handling.said(step);
        return said.isEmpty() || said.stream().anyMatch(one -> !(one instanceof Ahead));
    }

    private <T extends Declaration> List<T> said(Class<T> kind, int step) {
        return sketch.all(kind).stream()
                .filter(said -> said.origin().step() == step)
                .toList();
    }

    // ---- times ---------------------------------------------------------------------------------------------------

    /** A step's work, parted by the waiting between its coats. */
    private List<Stretch> stretches(int step, List<Schedule.First> first, Map<Integer, Integer> last, int at) {
        List<Waits.Wait> within = waits.within(step);
        within.forEach(this::know);
        Duration work = said(WorkTime.class, step).stream().map(WorkTime::work).reduce(Duration.ZERO, Duration::plus);
        long minutes = work.toMinutes();
        int parts = within.size() + 1;
        List<Stretch> all = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            Duration share = work.multipliedBy(i + 1)
                    .dividedBy(parts)
                    .minus(work.multipliedBy(i).dividedBy(parts));
            List<Stretch.After> after = i == 0
                    ? first.stream()
                            .map(f -> new Stretch.After(last.get(f.step()), f.waiting()))
                            .toList()
                    : List.of(new Stretch.After(at + i - 1, within.get(i - 1).known()));
            all.add(new Stretch(step, share, after, i == parts - 1 ? rest(step) : Duration.ZERO));
        }
        return all;
    }

    private Duration rest(int step) {
        List<Duration> rest = new ArrayList<>();
        waits.rest(step).forEach(wait -> rest.add(wait.known()));
        said(Waiting.class, step).forEach(said -> rest.add(said.time()));
        return rest.stream().max(Comparator.naturalOrder()).orElse(Duration.ZERO);
    }

    private static List<Stretch> oneAfterTheOther(List<Stretch> stretches) {
        List<Stretch> all = new ArrayList<>();
        for (Stretch stretch : stretches) {
            List<Stretch.After> after = new ArrayList<>(stretch.after());
            if (!all.isEmpty()) {
                after.add(new Stretch.After(all.size() - 1, Duration.ZERO));
            }
            all.add(new Stretch(stretch.step(), stretch.work(), after, stretch.rest()));
        }
        return all;
    }

    private Schedule.Line line(int step, List<Stretch> stretches, Net net) {
        List<Net.Times> times = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            if (stretches.get(i).step() == step) {
                times.add(net.times().get(i));
            }
        }
        return new Schedule.Line(
                step,
                times.get(0).start(),
                times.get(times.size() - 1).end(),
                times.get(0).slack(),
                first(step));
    }

    // ---- days ----------------------------------------------------------------------------------------------------

    private List<Sitting> days(List<Stretch> stretches) {
        List<FreeHours> free = sketch.all(FreeTime.class).stream()
                .map(said -> new FreeHours(days(said.when()), time(said.from()), time(said.to())))
                .toList();
        int ahead = sketch.all(Ahead.class).stream()
                .mapToInt(Ahead::workingDays)
                .max()
                .orElse(0);
        return Diary.of(stretches, free, workingDaysLater(ahead));
    }

    private LocalDate workingDaysLater(int many) {
        LocalDate on = day;
        for (int left = many; left > 0; ) {
            on = on.plusDays(1);
            left -= on.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) < 0 ? 1 : 0;
        }
        return on;
    }

    private static Set<DayOfWeek> days(FreeTime.When when) {
        return switch (when) {
            case EVENINGS -> EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
            case SATURDAYS -> EnumSet.of(DayOfWeek.SATURDAY);
            case SUNDAYS -> EnumSet.of(DayOfWeek.SUNDAY);
        };
    }

    private static LocalTime time(Duration fromMidnight) {
        return LocalTime.MIDNIGHT.plus(fromMidnight);
    }
}
