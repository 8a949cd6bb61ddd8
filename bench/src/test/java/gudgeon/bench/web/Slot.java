package gudgeon.bench.web;

import gudgeon.rebuild.journal.Fact;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A place for text in a kind of fact.
 *
 * @param field its name: the kind's and the component's, with those of the fact inside, if it is inside one
 * @param name the component's name
 * @param text reads it; empty where it is no text by itself
 * @param plant gives the same fact with another text there
 */
record Slot(String field, String name, Function<Fact, String> text, BiFunction<Fact, String, Fact> plant) {
    String text(Fact fact) {
        return text.apply(fact);
    }

    Fact with(Fact fact, String other) {
        return plant.apply(fact, other);
    }

    /** All such places of a fact. */
    static List<Slot> of(Fact fact) {
        List<Slot> slots = new ArrayList<>();
        for (RecordComponent component : fact.getClass().getRecordComponents()) {
            Object value = value(fact, component);
            String field = fact.getClass().getSimpleName() + "." + component.getName();
            if (value instanceof String) {
                slots.add(new Slot(
                        field,
                        component.getName(),
                        one -> (String) value(one, component),
                        (one, other) -> replaced(one, component, other)));
            } else if (value instanceof List<?> && isOfTexts(component)) {
                slots.add(whole(field, component, (before, other) -> plus((List<?>) before, other)));
            } else if (value instanceof Map<?, ?> map) {
                slots.add(whole(field + " (key)", component, (before, other) -> keyed((Map<?, ?>) before, other)));
                if (map.values().stream().allMatch(String.class::isInstance)) {
                    slots.add(whole(field, component, (before, other) -> valued((Map<?, ?>) before, other)));
                }
            } else if (value instanceof Optional<?> optional && optional.isPresent()) {
                inside(field, component, optional.get(), slots);
            }
        }
        return slots;
    }

    private static Slot whole(String field, RecordComponent component, BiFunction<Object, String, Object> planted) {
        return new Slot(
                field,
                component.getName(),
                one -> "",
                (one, other) -> replaced(one, component, planted.apply(value(one, component), other)));
    }

    private static void inside(String field, RecordComponent component, Object value, List<Slot> slots) {
        if (value instanceof Fact inner) {
            of(inner)
                    .forEach(slot -> slots.add(new Slot(
                            field + "." + slot.field(),
                            slot.name(),
                            one -> "",
                            (one, other) ->
                                    replaced(one, component, Optional.of(slot.with(innerOf(one, component), other))))));
        } else if (value instanceof String) {
            slots.add(whole(field, component, (before, other) -> Optional.of(other)));
        }
    }

    private static Fact innerOf(Fact fact, RecordComponent component) {
        return (Fact) ((Optional<?>) value(fact, component)).orElseThrow();
    }

    private static boolean isOfTexts(RecordComponent component) {
        return component.getGenericType().getTypeName().endsWith("<java.lang.String>");
    }

    private static List<Object> plus(List<?> list, String other) {
        List<Object> with = new ArrayList<>(list);
        with.add(other);
        return with;
    }

    private static Map<Object, Object> keyed(Map<?, ?> map, String other) {
        Map<Object, Object> with = new LinkedHashMap<>(map);
        with.put(other, map.values().iterator().next());
        return with;
    }

    private static Map<Object, Object> valued(Map<?, ?> map, String other) {
        Map<Object, Object> with = new LinkedHashMap<>(map);
        with.replaceAll((key, before) -> other);
        return with;
    }

    private static Object value(Fact fact, RecordComponent component) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Fact replaced(Fact fact, RecordComponent component, Object other) {
        RecordComponent[] components = fact.getClass().getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = components[i].getName().equals(component.getName()) ? other : value(fact, components[i]);
        }
        try {
            return fact.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
