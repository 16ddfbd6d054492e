package org.hosewright.field.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hosewright.hydraulics.error.InvalidInput;

/** A value in a question and where it stands, so that what is wrong can be said where it is. */
public final class Place {
    private final Object value;
    private final String where;
    private final Set<String> read = new LinkedHashSet<>();
    private final Map<String, Place> inner = new LinkedHashMap<>();

    private Place(Object value, String where) {
        this.value = value;
        this.where = where;
    }

    /** A whole question. */
    public static Place of(Object value) {
        return new Place(value, "");
    }

    /** What stands under a key.
     *
     * @throws InvalidInput nothing does
     */
    public Place get(String key) {
        return find(key).orElseThrow(() -> new InvalidInput(key, "", "a value under this key", where));
    }

    /** What stands under a key, where something does. */
    public Optional<Place> find(String key) {
        read.add(key);
        Object member = members().get(key);
        return member == null ? Optional.empty() : Optional.of(within(member, "." + key));
    }

    /** The one of several keys that is there.
     *
     * @param what they say, for the error
     * @throws InvalidInput none or several are
     */
    public String one(String what, List<String> keys) {
        List<String> found = keys.stream().filter(key -> find(key).isPresent()).toList();
        if (found.size() != 1) {
            throw new InvalidInput(what, String.join(", ", found), "exactly one of " + String.join(", ", keys), where);
        }
        return found.get(0);
    }

    public boolean isList() {
        return value instanceof List<?>;
    }

    /** The items of a list. */
    public List<Place> list() {
        if (!(value instanceof List<?> items)) {
            throw wrong("a list");
        }
        List<Place> places = new ArrayList<>();
        for (Object item : items) {
            places.add(within(item, "[" + places.size() + "]"));
        }
        return places;
    }

    /** The keys of an object, all of them read. */
    public Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>();
        for (Object key : members().keySet()) {
            keys.add(String.valueOf(key));
        }
        read.addAll(keys);
        return keys;
    }

    public String text() {
        if (value instanceof String text) {
            return text;
        }
        throw wrong("a text");
    }

    public double number() {
        if (value instanceof Double number) {
            return number;
        }
        throw wrong("a number");
    }

    public boolean truth() {
        if (value instanceof Boolean truth) {
            return truth;
        }
        throw wrong("true or false");
    }

    /** What a reader makes of it; an error says where.
     *
     * @throws InvalidInput the reader refuses it
     */
    public <T> T as(Function<Place, T> reader) {
        try {
            return reader.apply(this);
        } catch (InvalidInput wrong) {
            throw wrong.where().isEmpty() ? wrong.at(where) : wrong;
        }
    }

    /** The text under a key, read.
     *
     * @throws InvalidInput it is missing, or refused
     */
    public <T> T quantity(String key, Function<String, T> reader) {
        return get(key).as(place -> reader.apply(place.text()));
    }

    /** The text under a key, read, where there is one. */
    public <T> Optional<T> findQuantity(String key, Function<String, T> reader) {
        return find(key).map(found -> found.as(place -> reader.apply(place.text())));
    }

    /** Refuses keys that nobody asked for, here and further in. */
    public void requireAllRead() {
        if (value instanceof Map<?, ?> members) {
            for (Object key : members.keySet()) {
                if (!read.contains(String.valueOf(key))) {
                    throw new InvalidInput("key", String.valueOf(key), String.join(", ", read), where);
                }
            }
        }
        inner.values().forEach(Place::requireAllRead);
    }

    private Place within(Object member, String step) {
        String path = where + step;
        return inner.computeIfAbsent(step, any -> new Place(member, path.startsWith(".") ? path.substring(1) : path));
    }

    private Map<?, ?> members() {
        if (value instanceof Map<?, ?> members) {
            return members;
        }
        throw wrong("an object");
    }

    private InvalidInput wrong(String allowed) {
        String given = value instanceof String || value instanceof Double || value instanceof Boolean
                ? String.valueOf(value)
                : value instanceof List ? "a list" : "an object";
        return new InvalidInput("value", given, allowed, where);
    }
}
