package org.kerfleaf.export.planform;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.joda.money.Money;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Vector;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** An object of the document while it is being filled; it knows its place, so that reasons can be told by place. */
final class Member {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final ObjectNode node = NODES.objectNode();
    private final String place;
    private final ObjectNode reasons;
    private final MeasureStyle style;

    private Member(String place, ObjectNode reasons, MeasureStyle style) {
        this.place = place;
        this.reasons = reasons;
        this.style = style;
    }

    static Member document(MeasureStyle style) {
        return new Member("", NODES.objectNode(), style);
    }

    ObjectNode node() {
        return node;
    }

    ObjectNode withReasons() {
        return node.set("reasons", reasons);
    }

    Member words(String name, String words) {
        node.put(name, words);
        return this;
    }

    Member words(String name, Optional<String> words) {
        return set(name, words.<JsonNode>map(NODES::stringNode));
    }

    Member number(String name, long number) {
        node.put(name, number);
        return this;
    }

    Member number(String name, OptionalDouble number) {
        return set(name, number.isPresent() ? Optional.of(decimal(number.getAsDouble())) : Optional.empty());
    }

    Member isTrue(String name, boolean holds) {
        node.put(name, holds);
        return this;
    }

    Member length(String name, Length length) {
        node.set(name, millimetres(length));
        return this;
    }

    Member lengthOrNull(String name, Optional<Length> length) {
        return set(name, length.map(Member::millimetres));
    }

    /** A point of the build as three numbers, x, y and z. */
    Member point(String name, Vector point) {
        ArrayNode list = node.putArray(name);
        for (double at : new double[] {point.x(), point.y(), point.z()}) {
            list.add(millimetres(Length.ofMillimetres(at)));
        }
        return this;
    }

    Member quantity(String name, Optional<Quantity> quantity) {
        return set(name, quantity.map(this::measured));
    }

    Member money(String name, Optional<Money> money) {
        return set(name, money.map(Member::amount));
    }

    <T> Member figure(String name, Figure<T> figure, Function<? super T, JsonNode> form) {
        node.set(name, form.apply(figure.value()));
        because(place + "/" + name, figure.reason());
        return this;
    }

    <T> Member figure(String name, Optional<Figure<T>> figure, Function<? super T, JsonNode> form) {
        figure.ifPresentOrElse(known -> figure(name, known, form), () -> node.putNull(name));
        return this;
    }

    private void because(String where, Reason reason) {
        ObjectNode told = reasons.putObject(where);
        told.put("because", reason.rule());
        ArrayNode given = told.putArray("given");
        reason.given()
                .forEach(one -> given.addObject()
                        .put("name", one.name())
                        .put("value", one.value().in(style)));
        told.put("source", reason.source());
    }

    <T> Member list(String name, List<T> items, BiConsumer<Member, T> form) {
        ArrayNode list = node.putArray(name);
        for (int at = 0; at < items.size(); at++) {
            Member item = new Member("%s/%s/%d".formatted(place, name, at), reasons, style);
            form.accept(item, items.get(at));
            list.add(item.node);
        }
        return this;
    }

    Member texts(String name, List<String> texts) {
        ArrayNode list = node.putArray(name);
        texts.forEach(list::add);
        return this;
    }

    Member numbers(String name, List<Integer> numbers) {
        ArrayNode list = node.putArray(name);
        numbers.forEach(list::add);
        return this;
    }

    /** An object of its own inside this one. */
    Member inside(String name) {
        Member inner = new Member(place + "/" + name, reasons, style);
        node.set(name, inner.node);
        return inner;
    }

    /** An object of its own, or null. */
    <T> Member optional(String name, Optional<T> known, BiConsumer<Member, T> form) {
        known.ifPresentOrElse(value -> form.accept(inside(name), value), () -> node.putNull(name));
        return this;
    }

    Member nothing(String name) {
        node.putNull(name);
        return this;
    }

    private Member set(String name, Optional<? extends JsonNode> value) {
        node.set(name, value.isPresent() ? value.get() : NODES.nullNode());
        return this;
    }

    /** In the form's unit for its kind; what is no measure is told in words. */
    JsonNode measured(Quantity quantity) {
        if (quantity instanceof Length length) {
            return millimetres(length);
        }
        if (quantity instanceof Area area) {
            return squareMillimetres(area);
        }
        if (quantity instanceof Volume volume) {
            return millilitres(volume);
        }
        if (quantity instanceof Angle angle) {
            return degrees(angle);
        }
        return quantity instanceof Count count
                ? NODES.numberNode(count.number())
                : NODES.stringNode(quantity.in(style));
    }

    static JsonNode count(int count) {
        return NODES.numberNode(count);
    }

    static JsonNode millimetres(Length length) {
        return plain(length.exactMillimetres());
    }

    static JsonNode degrees(Angle angle) {
        return plain(BigDecimal.valueOf(angle.nanodegrees(), 9));
    }

    static JsonNode squareMillimetres(Area area) {
        return decimal(area.squareMillimetres());
    }

    static JsonNode millilitres(Volume volume) {
        return decimal(volume.cubicMillimetres() / 1000);
    }

    static JsonNode grams(Mass mass) {
        return decimal(mass.grams());
    }

    static JsonNode ratio(Ratio ratio) {
        return decimal(ratio.value());
    }

    static JsonNode newtons(Force force) {
        return decimal(force.newtons());
    }

    static JsonNode minutes(Duration work) {
        return NODES.numberNode(work.toMinutes());
    }

    static JsonNode amount(Money money) {
        return NODES.numberNode(money.getAmount());
    }

    static JsonNode decimal(double number) {
        return plain(BigDecimal.valueOf(number));
    }

    private static JsonNode plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return NODES.numberNode(stripped.scale() < 0 ? stripped.setScale(0) : stripped);
    }
}
