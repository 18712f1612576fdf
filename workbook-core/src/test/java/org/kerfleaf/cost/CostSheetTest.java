package org.kerfleaf.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyMismatchException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

class CostSheetTest {
    /** The cold frame (prices invented, sum worked outside the program): $190.95; the kit with freight 217, so 26.05. */
    @Test
    void cost_coldFrame_isAddedUpAndCompared() {
        Cost cost = sheet().add(line(Department.TIMBER, "plywood", 1, "62.00", 1))
                .add(line(Department.TIMBER, "1x3", 2, "6.40", 1))
                .add(line(Department.GLAZING, "acrylic", 1, "54.00", 1))
                .add(line(Department.IRONMONGER, "hinges", 1, "9.50", 1))
                .add(line(Department.IRONMONGER, "screws", 1, "8.90", 0.5))
                .add(line(Department.FINISH, "primer", 1, "16.50", 0.111 * 4))
                .add(line(Department.FINISH, "paint", 1, "21.00", 0.222 * 4))
                .add(line(Department.FINISH, "glue", 1, "6.25", 1))
                .compare("kit", usd("169"), Optional.of(usd("48")), List.of())
                .cost();

        assertThat(cost.bought().orElseThrow().value()).isEqualTo(usd("190.95"));
        assertThat(cost.compare().get(0).total().value()).isEqualTo(usd("217"));
        assertThat(cost.compare().get(0).difference().orElseThrow().value()).isEqualTo(usd("26.05"));
    }

    /** The seed-swap cabinet's kit: 199 + 74. */
    @Test
    void compare_seedSwapCabinet_totalsPriceAndFreight() {
        Cost cost = sheet().compare(
                        "A ready-made cabinet", usd("199"), Optional.of(usd("74")), List.of("post", "paint"))
                .cost();

        assertThat(cost.compare().get(0).total().value()).isEqualTo(usd("273.00"));
        assertThat(cost.compare().get(0).lacks()).containsExactly("post", "paint");
    }

    @Test
    void cost_shares_areRoundedOnceAndHalfUp() {
        Cost cost = sheet().add(line(Department.FINISH, "a", 1, "1.00", 0.0025))
                .add(line(Department.FINISH, "b", 1, "1.00", 0.0025))
                .cost();

        assertThat(cost.used().orElseThrow().value()).isEqualTo(usd("0.01"));
    }

    @Test
    void cost_noPrice_isNamedAndLeftOut() {
        CostLine unpriced = new CostLine(Department.GROUND, "gravel", "", packs(2), share(1), Optional.empty());
        Cost cost = sheet().add(unpriced)
                .add(line(Department.TIMBER, "plywood", 1, "62.00", 0.5))
                .cost();

        assertThat(cost.notKnown()).containsExactly("gravel");
        assertThat(cost.bought().orElseThrow().value()).isEqualTo(usd("62.00"));
        assertThat(cost.used().orElseThrow().value()).isEqualTo(usd("31.00"));
    }

    @Test
    void cost_noShare_isBoughtButNotUsed() {
        CostLine whole =
                new CostLine(Department.FINISH, "brush", "", packs(1), Optional.empty(), Optional.of(usd("4.00")));
        Cost cost = sheet().add(whole).cost();

        assertThat(cost.bought().orElseThrow().value()).isEqualTo(usd("4.00"));
        assertThat(cost.used()).isEmpty();
        assertThat(cost.notKnown()).containsExactly("brush");
    }

    /** Nought would be read as free of charge, and a kit as dearer than it. */
    @Test
    void cost_noPriceAtAll_isNotKnown_norIsADifference() {
        CostLine gravel = new CostLine(
                Department.GROUND,
                "gravel",
                "",
                packs(1),
                Optional.of(Figure.of(Ratio.of(1), "f", "s")),
                Optional.empty());
        Cost cost = sheet().add(gravel)
                .compare("kit", usd("169"), Optional.empty(), List.of())
                .cost();

        assertThat(cost.bought()).isEmpty();
        assertThat(cost.used()).isEmpty();
        assertThat(cost.compare().get(0).total().value()).isEqualTo(usd("169"));
        assertThat(cost.compare().get(0).difference()).isEmpty();
    }

    @Test
    void cost_nothingToBuy_isNothing() {
        assertThat(sheet().cost().bought().orElseThrow().value()).isEqualTo(usd("0.00"));
    }

    @Test
    void cost_lines_comeByDepartmentThenAsAdded() {
        Cost cost = sheet().add(line(Department.FINISH, "glue", 1, "1", 1))
                .add(line(Department.TIMBER, "plywood", 1, "1", 1))
                .add(line(Department.TIMBER, "1x2", 1, "1", 1))
                .cost();

        assertThat(cost.lines()).extracting(CostLine::what).containsExactly("plywood", "1x2", "glue");
    }

    @Test
    void compare_noFreight_isThePrice() {
        Cost cost =
                sheet().compare("kit", usd("100"), Optional.empty(), List.of()).cost();

        assertThat(cost.compare().get(0).total().value()).isEqualTo(usd("100"));
    }

    @Test
    void add_otherCurrency_isRefused() {
        CostLine pounds =
                new CostLine(Department.TIMBER, "board", "", packs(1), share(1), Optional.of(Money.parse("GBP 7.20")));

        assertThatThrownBy(() -> sheet().add(pounds))
                .isInstanceOf(CurrencyMismatchException.class)
                .hasMessageContaining("USD")
                .hasMessageContaining("GBP");
    }

    private static CostSheet sheet() {
        return CostSheet.in(CurrencyUnit.USD);
    }

    private static CostLine line(Department department, String what, int packs, String each, double share) {
        return new CostLine(department, what, "", packs(packs), share(share), Optional.of(usd(each)));
    }

    private static Figure<Integer> packs(int number) {
        return Figure.said(number, "this test");
    }

    private static Optional<Figure<Ratio>> share(double value) {
        return Optional.of(Figure.said(Ratio.of(value), "this test"));
    }

    private static Money usd(String amount) {
        return Money.parse("USD " + amount);
    }
}
