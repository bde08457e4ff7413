package heeltap.mixture;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The built-in table, read from the resource {@code published-compositions.txt}. */
final class PublishedTable {
    /** A name that ends with a strength: "Gin 43 %", "vodka (37,5 % vol)". */
    private static final Pattern STRENGTH =
            Pattern.compile("(.*?)[\\s,(]+(\\d{1,2}(?:[.,]\\d+)?)\\s*%\\s*(?:vol\\.?|abv)?\\s*\\)?\\s*");

    private static final Map<String, String> HEADINGS = headings();

    static final PublishedTable BUILT_IN = read("published-compositions.txt");

    private final Map<String, Entry> byName = new HashMap<>();

    /** @param strength where from, if the entry holds only for names that state a strength; null if not */
    private record Entry(
            String name,
            Measure measure,
            Map<String, Exact> values,
            Map<String, String> sources,
            @Nullable String strength) {}

    private PublishedTable() {}

    Optional<PublishedComposition> find(String name) {
        Entry entry = byName.get(fold(name));
        if (entry != null && entry.strength() == null) {
            return Optional.of(composition(entry, entry.name(), entry.values(), entry.sources()));
        }
        Matcher stated = STRENGTH.matcher(name.toLowerCase(Locale.ROOT));
        if (!stated.matches()) {
            return Optional.empty();
        }
        Entry spirit = byName.get(fold(stated.group(1)));
        return spirit == null || spirit.strength() == null
                ? Optional.empty()
                : Optional.of(ofStrength(
                        spirit, fold(stated.group(1)), Exact.of(stated.group(2).replace(',', '.'))));
    }

    /** Every entry that holds without a strength, for checking. */
    List<PublishedComposition> entries() {
        return byName.values().stream()
                .distinct()
                .filter(entry -> entry.strength() == null)
                .map(entry -> composition(entry, entry.name(), entry.values(), entry.sources()))
                .toList();
    }

    private static PublishedComposition ofStrength(Entry spirit, String name, Exact abvPercent) {
        Map<String, Exact> values = new HashMap<>(spirit.values());
        Map<String, String> sources = new LinkedHashMap<>();
        String source = Objects.requireNonNull(spirit.strength());
        double density = EthanolWater.density(EthanolWater.massFraction(abvPercent.toDouble(), 20));
        values.put("density", Exact.ofPhysical(density));
        values.put("abv", abvPercent);
        sources.put("Density", source);
        sources.put("ABV", source);
        sources.putAll(spirit.sources());
        return composition(spirit, name + " " + abvPercent + " % vol", values, sources);
    }

    private static PublishedComposition composition(
            Entry entry, String name, Map<String, Exact> values, Map<String, String> sources) {
        Analysis analysis = new Analysis(
                values.get("density"),
                values.get("abv"),
                values.get("sugar"),
                values.get("citric"),
                values.get("malic"),
                values.get("tartaric"),
                values.get("other acid"),
                values.get("salt"));
        return new PublishedComposition(name, entry.measure(), analysis, sources);
    }

    private static PublishedTable read(String resource) {
        Map<String, List<String[]>> rows = new LinkedHashMap<>();
        for (String line : lines(resource)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                String[] cells = line.split("\\s*\\|\\s*", 4);
                rows.computeIfAbsent(cells[0], name -> new ArrayList<>()).add(cells);
            }
        }
        PublishedTable table = new PublishedTable();
        rows.forEach(table::add);
        return table;
    }

    private void add(String name, List<String[]> rows) {
        Measure measure = Measure.ML;
        String strength = null;
        Map<String, Exact> values = new HashMap<>();
        Map<String, String> sources = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(List.of(name));
        for (String[] row : rows) {
            switch (row[1]) {
                case "measure" -> measure = Measure.valueOf(row[2].toUpperCase(Locale.ROOT));
                case "also" -> names.add(row[2]);
                case "strength" -> strength = row[3];
                default -> {
                    values.put(row[1], Exact.of(row[2]));
                    sources.put(Objects.requireNonNull(HEADINGS.get(row[1]), row[1]), row[3]);
                }
            }
        }
        Entry entry = new Entry(name, measure, values, sources, strength);
        for (String each : names) {
            if (byName.put(fold(each), entry) != null) {
                throw new IllegalStateException("two entries are called " + each);
            }
        }
    }

    private static List<String> lines(String resource) {
        try (InputStream stream = PublishedTable.class.getResourceAsStream(resource);
                BufferedReader reader = new BufferedReader(
                        new InputStreamReader(Objects.requireNonNull(stream, resource), StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Small letters and digits, words apart by one space. */
    private static String fold(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replace("ß", "ss")
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    private static Map<String, String> headings() {
        return Map.of(
                "density", "Density",
                "abv", "ABV",
                "sugar", "Sugar",
                "citric", "Citric acid",
                "malic", "Malic acid",
                "tartaric", "Tartaric acid",
                "other acid", "Other acid",
                "salt", "Salt");
    }
}
