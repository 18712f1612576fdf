package org.kerfleaf.schedule;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.testing.Property.forAll;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class DiaryTest {
    /** A Monday. */
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 13);

    private static final FreeHours EVENINGS =
            new FreeHours(EnumSet.range(MONDAY, FRIDAY), LocalTime.of(19, 0), LocalTime.of(21, 0));
    private static final FreeHours SATURDAYS =
            new FreeHours(EnumSet.of(SATURDAY), LocalTime.of(9, 0), LocalTime.of(15, 0));

    private static Stretch stretch(int step, int minutes, Stretch.After... after) {
        return new Stretch(step, Duration.ofMinutes(minutes), List.of(after), Duration.ZERO);
    }

    private static Stretch.After after(int stretch, int hours) {
        return new Stretch.After(stretch, Duration.ofHours(hours));
    }

    private static Sitting sitting(int step, String from, String to, boolean ends) {
        return new Sitting(step, LocalDateTime.parse("2026-04-" + from), LocalDateTime.parse("2026-04-" + to), ends);
    }

    @Test
    void of_aNightCountsAsWaiting() {
        assertThat(Diary.of(List.of(stretch(1, 60), stretch(2, 30, after(0, 22))), List.of(EVENINGS), FIRST))
                .containsExactly(sitting(1, "13T19:00", "13T20:00", true), sitting(2, "14T19:00", "14T19:30", true));
        assertThat(Diary.of(List.of(stretch(1, 60), stretch(2, 30, after(0, 24))), List.of(EVENINGS), FIRST))
                .last()
                .isEqualTo(sitting(2, "14T20:00", "14T20:30", true));
    }

    @Test
    void of_workThatFitsAnotherEvening_isNotBegunTooLate() {
        assertThat(Diary.of(List.of(stretch(1, 90), stretch(2, 45)), List.of(EVENINGS), FIRST))
                .containsExactly(sitting(1, "13T19:00", "13T20:30", true), sitting(2, "14T19:00", "14T19:45", true));
    }

    @Test
    void of_workLongerThanAnyEvening_isGoneOnWith() {
        assertThat(Diary.of(List.of(stretch(1, 180)), List.of(EVENINGS), FIRST))
                .containsExactly(sitting(1, "13T19:00", "13T21:00", false), sitting(1, "14T19:00", "14T20:00", true));
    }

    @Test
    void of_workThatFitsASaturday_waitsForIt() {
        assertThat(Diary.of(List.of(stretch(1, 180)), List.of(EVENINGS, SATURDAYS), FIRST))
                .containsExactly(sitting(1, "18T09:00", "18T12:00", true));
    }

    @Test
    void of_nothingFree_isEmpty() {
        assertThat(Diary.of(List.of(stretch(1, 30)), List.of(), FIRST)).isEmpty();
    }

    @Test
    void of_moreThanTheMostDays_endsThere() {
        List<Sitting> sittings = Diary.of(List.of(stretch(1, 10_000_000)), List.of(SATURDAYS), FIRST);

        assertThat(sittings).hasSize(143).noneMatch(Sitting::ends);
    }

    /** No sitting outside free hours, none before its wait is over, none while another goes on, all work done. */
    @Test
    void of_randomWork_keepsEveryPromise() {
        forAll(59, 200, DiaryTest::drawn, stretches -> {
            List<Sitting> sittings = Diary.of(stretches, List.of(EVENINGS, SATURDAYS), FIRST);
            LocalDateTime before = FIRST.atStartOfDay();
            for (Sitting one : sittings) {
                boolean saturday = one.from().getDayOfWeek() == SATURDAY;
                FreeHours hours = saturday ? SATURDAYS : EVENINGS;
                assertThat(hours.days()).contains(one.from().getDayOfWeek());
                assertThat(one.from().toLocalTime()).isAfterOrEqualTo(hours.from());
                assertThat(one.to().toLocalTime()).isBeforeOrEqualTo(hours.to());
                assertThat(one.from()).isBefore(one.to()).isAfterOrEqualTo(before);
                before = one.to();
            }
            for (int i = 0; i < stretches.size(); i++) {
                int step = stretches.get(i).step();
                List<Sitting> own =
                        sittings.stream().filter(s -> s.step() == step).toList();
                assertThat(own.stream()
                                .map(s -> Duration.between(s.from(), s.to()))
                                .reduce(Duration.ZERO, Duration::plus))
                        .isEqualTo(stretches.get(i).work());
                for (Stretch.After after : stretches.get(i).after()) {
                    int first = stretches.get(after.stretch()).step();
                    LocalDateTime end = sittings.stream()
                            .filter(s -> s.step() == first)
                            .map(Sitting::to)
                            .max(LocalDateTime::compareTo)
                            .orElseThrow();
                    assertThat(own.get(0).from()).isAfterOrEqualTo(end.plus(after.waiting()));
                }
            }
        });
    }

    private static List<Stretch> drawn(RandomGenerator random) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(7); i++) {
            List<Stretch.After> after = i == 0 ? List.of() : List.of(after(random.nextInt(i), random.nextInt(4) * 12));
            stretches.add(new Stretch(i + 1, Duration.ofMinutes(1 + random.nextInt(500)), after, Duration.ZERO));
        }
        return stretches;
    }
}
