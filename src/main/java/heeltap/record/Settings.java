package heeltap.record;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The bar's settings, with defaults where the book says nothing. */
public final class Settings {
    private final Map<Setting<?>, Object> values;

    private Settings(Map<Setting<?>, Object> values) {
        this.values = Map.copyOf(values);
    }

    public static Settings standard() {
        return new Settings(Map.of());
    }

    public <T> Settings with(Setting<T> setting, T value) {
        Map<Setting<?>, Object> copy = new LinkedHashMap<>(values);
        copy.put(setting, value);
        return new Settings(copy);
    }

    /** The value of the book, else the default, else empty. */
    @SuppressWarnings("unchecked")
    public <T> Optional<T> find(Setting<T> setting) {
        Object value = values.get(setting);
        return Optional.ofNullable(value != null ? (T) value : setting.standard());
    }

    /**
     * @throws IllegalStateException if the setting has neither a value nor a default; the loader refuses a book that
     *     lacks a required one
     */
    public <T> T get(Setting<T> setting) {
        return find(setting).orElseThrow(() -> new IllegalStateException("setting without a value: " + setting.name()));
    }

    /** Whether the book itself sets it. */
    public boolean isSet(Setting<?> setting) {
        return values.containsKey(setting);
    }
}
