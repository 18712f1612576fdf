package org.kerfleaf.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.kerfleaf.testing.Property.forAll;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.schedule.Net.Times;

class NetTest {
    private static Duration hours(double hours) {
        return Duration.ofMinutes(Math.round(hours * 60));
    }

    /** {@code 6} for a stretch of six, {@code 2<0,1} for one of two after the first and the second, {@code 1<0+24} with a wait. */
    private static List<Stretch> net(String text) {
        List<Stretch> stretches = new ArrayList<>();
        for (String one : text.split(" ")) {
            String[] parts = one.split("<");
            List<Stretch.After> after = new ArrayList<>();
            for (String first : parts.length > 1 ? parts[1].split(",") : new String[0]) {
                String[] wait = first.split("\\+");
                after.add(new Stretch.After(
                        Integer.parseInt(wait[0]), hours(wait.length > 1 ? Double.parseDouble(wait[1]) : 0)));
            }
            stretches.add(new Stretch(stretches.size() + 1, hours(Double.parseDouble(parts[0])), after, Duration.ZERO));
        }
        return stretches;
    }

    /** Published networks: a course text's prototype; a shopping centre; a foundry's filter (from memory); a textbook exercise. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 2<0 2<0 3<1 2<2 4<3,4 1<5 | 16 | 0 6 6 8 8 11 15 | 0 0 1 0 1 0 0 | 0 0 0 0 1 0 0",
                "5 6 4<0 3<0 1<0 4<4 14<3,5 12<1,2 2<6,7 | 26 | 0 0 5 5 5 6 10 9 24 | 0 6 3 2 0 0 0 3 0 | 0 3 0 2 0 0 0 3 0",
                "2 3 2<0 4<0,1 4<2 3<2 5<3,4 2<5,6 | 15 | 0 0 2 3 4 4 8 13 | 0 1 0 1 0 6 0 0 | 0 0 0 1 0 6 0 0",
                "2 3.5 1.5<0,1 4.5<0 5.5<2 0.5<3,4 7<5 5.5<4 | 18 | 0 0 3.5 2 5 10.5 11 10.5 | 1.5 0 0 4 0 0 0 2 | 0 0 0 4 0 0 0 2"
            })
    void of_publishedNetwork(String net, double finish, String starts, String slack, String free) {
        Net found = Net.of(net(net.strip()));

        assertThat(found.finish()).isEqualTo(hours(finish));
        assertThat(found.times()).extracting(Times::start).containsExactlyElementsOf(all(starts));
        assertThat(found.times()).extracting(Times::slack).containsExactlyElementsOf(all(slack));
        assertThat(found.times()).extracting(Times::free).containsExactlyElementsOf(all(free));
    }

    private static List<Duration> all(String hours) {
        List<Duration> all = new ArrayList<>();
        for (String one : hours.strip().split(" ")) {
            all.add(hours(Double.parseDouble(one)));
        }
        return all;
    }

    /** Post and box: dig, set, cut, glue (clamped 1 h, hard after 24 more), prime, paint, hang; concrete 24 h, two coats 4 h each. */
    @Test
    void of_waitsAreElapsedTime_notWork() {
        Net net = Net.of(net("2 1<0 3 1<2 1<3+25 1<4+4 1<1+24,5+4"));

        assertThat(net.finish()).isEqualTo(hours(40));
        assertThat(net.times()).extracting(Times::slack).containsExactlyElementsOf(all("12 12 0 0 0 0 0"));
    }

    @Test
    void ready_restOfAnEarlyStretch_mayBeTheLast() {
        Net net = Net.of(List.of(
                new Stretch(1, hours(1), List.of(), hours(24)), new Stretch(2, hours(2), List.of(), Duration.ZERO)));

        assertThat(net.finish()).isEqualTo(hours(2));
        assertThat(net.ready()).isEqualTo(hours(25));
    }

    @Test
    void of_whatComesFirstStandsFurtherDown_isRefused() {
        assertThatThrownBy(() -> Net.of(net("1<1 1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stretch 1");
    }

    // ---- a second derivation: every way through the net is walked ------------------------------------------------

    @Test
    void of_randomNets_agreeWithEveryWayWalked() {
        forAll(57, 300, NetTest::drawn, stretches -> {
            Net net = Net.of(stretches);
            long finish = 0;
            for (int i = 0; i < stretches.size(); i++) {
                finish = Math.max(
                        finish, before(stretches, i) + minutes(stretches.get(i).work()));
            }
            assertThat(net.finish()).isEqualTo(Duration.ofMinutes(finish));
            for (int i = 0; i < stretches.size(); i++) {
                assertThat(net.times().get(i).start()).isEqualTo(Duration.ofMinutes(before(stretches, i)));
                // The longest way through a stretch is as much shorter than the longest of all as it has slack.
                long through = before(stretches, i) + behind(stretches, i);
                assertThat(net.times().get(i).slack()).isEqualTo(Duration.ofMinutes(finish - through));
            }
        });
    }

    /** Starting a stretch later by its slack moves nothing at the end; a minute more does. */
    @Test
    void slack_isUsedUpByOneDelay() {
        forAll(58, 100, NetTest::drawn, stretches -> {
            Net net = Net.of(stretches);
            for (int i = 0; i < stretches.size(); i++) {
                long slack = minutes(net.times().get(i).slack());
                assertThat(Net.of(delayed(stretches, i, slack)).finish()).isEqualTo(net.finish());
                assertThat(Net.of(delayed(stretches, i, slack + 1)).finish()).isGreaterThan(net.finish());
            }
        });
    }

    private static List<Stretch> delayed(List<Stretch> stretches, int at, long minutes) {
        List<Stretch> all = new ArrayList<>(stretches);
        Stretch one = stretches.get(at);
        all.set(at, new Stretch(one.step(), one.work().plusMinutes(minutes), one.after(), one.rest()));
        return all;
    }

    private static List<Stretch> drawn(RandomGenerator random) {
        List<Stretch> stretches = new ArrayList<>();
        int many = 1 + random.nextInt(9);
        for (int i = 0; i < many; i++) {
            List<Stretch.After> after = new ArrayList<>();
            for (int first = 0; first < i; first++) {
                if (random.nextInt(3) == 0) {
                    after.add(new Stretch.After(first, Duration.ofMinutes(random.nextInt(3) * 100L)));
                }
            }
            stretches.add(new Stretch(i + 1, Duration.ofMinutes(random.nextInt(90)), after, Duration.ZERO));
        }
        return stretches;
    }

    /** The longest way that leads to a stretch. */
    private static long before(List<Stretch> stretches, int at) {
        long longest = 0;
        for (Stretch.After after : stretches.get(at).after()) {
            longest = Math.max(
                    longest,
                    before(stretches, after.stretch())
                            + minutes(stretches.get(after.stretch()).work())
                            + minutes(after.waiting()));
        }
        return longest;
    }

    /** The longest way from a stretch's beginning on. */
    private static long behind(List<Stretch> stretches, int at) {
        long longest = 0;
        for (int next = at + 1; next < stretches.size(); next++) {
            for (Stretch.After after : stretches.get(next).after()) {
                if (after.stretch() == at) {
                    longest = Math.max(longest, minutes(after.waiting()) + behind(stretches, next));
                }
            }
        }
        return longest + minutes(stretches.get(at).work());
    }

    private static long minutes(Duration time) {
        return time.toMinutes();
    }
}
