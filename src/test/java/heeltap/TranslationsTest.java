package heeltap;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every text stands in every language, with the same places for figures. */
class TranslationsTest {
    private static final Path RESOURCES = Path.of("src/main/resources/heeltap");
    private static final List<String> OTHERS = List.of("de", "es", "fr", "it");
    private static final Pattern LANGUAGE = Pattern.compile("(.*)_(de|es|fr|it)\\.properties");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)[^}]*}");

    /** Titles that name a sheet of the workbook; the tables to try prices share one. */
    private static final Pattern SHEET_NAME = Pattern.compile(
            "table\\.(?!what_if)\\w+\\.title|sheet\\.(summary|plots|what-if|methods)|section\\.(spec-cards|preparation-sheets)");

    /** A base file and its translation. */
    record Pair(Path base, Path translation) {}

    static List<Pair> pairs() throws IOException {
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            return files.filter(file -> LANGUAGE.matcher(file.toString()).matches())
                    .sorted()
                    .map(file -> new Pair(base(file), file))
                    .toList();
        }
    }

    private static Path base(Path translation) {
        String stem = LANGUAGE.matcher(translation.toString()).replaceAll("$1");
        Path plain = Path.of(stem + ".properties");
        return Files.exists(plain) ? plain : Path.of(stem + "_en.properties");
    }

    @Test
    void everyFileOfTextsHasEveryLanguage() throws IOException {
        Map<Path, Set<String>> languages = pairs().stream()
                .collect(Collectors.groupingBy(
                        Pair::base,
                        TreeMap::new,
                        Collectors.mapping(
                                pair -> LANGUAGE.matcher(pair.translation().toString())
                                        .replaceAll("$2"),
                                Collectors.toCollection(TreeSet::new))));
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            assertThat(languages.keySet())
                    .containsExactlyInAnyOrderElementsOf(files.filter(
                                    file -> file.toString().endsWith(".properties"))
                            .filter(file -> !LANGUAGE.matcher(file.toString()).matches())
                            .toList())
                    .hasSizeGreaterThanOrEqualTo(3);
        }
        assertThat(languages.values()).allSatisfy(found -> assertThat(found).containsExactlyElementsOf(OTHERS));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void nothingIsMissingOrSurplus(Pair pair) throws IOException {
        assertThat(read(pair.translation()).keySet())
                .as("keys of %s", pair.translation())
                .containsExactlyInAnyOrderElementsOf(read(pair.base()).keySet());
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void figuresHaveTheSamePlaces(Pair pair) throws IOException {
        Map<String, String> base = read(pair.base());
        read(pair.translation())
                .forEach((key, text) -> assertThat(places(text))
                        .as("%s in %s", key, pair.translation())
                        .isEqualTo(places(base.getOrDefault(key, ""))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void apostrophesAreDoubledWhereTextsAreFormatted(Pair pair) throws IOException {
        for (Path file : List.of(pair.base(), pair.translation())) {
            // the report's own words are formatted only where they have places
            boolean always = !file.getFileName().toString().startsWith("words_");
            read(file).forEach((key, text) -> {
                if (always || text.contains("{")) {
                    assertThat(text.replace("''", "")).as("%s in %s", key, file).doesNotContain("'");
                    assertThat(new MessageFormat(text, Locale.ROOT).format(new Object[] {3, 4, 5, 6, 7, 8, 9}))
                            .as("%s in %s", key, file)
                            .doesNotContain("''", "{", "}");
                } else {
                    assertThat(text).as("%s in %s", key, file).doesNotContain("''");
                }
            });
        }
    }

    /** A workbook allows 31 characters in the name of a sheet (Microsoft, Excel specifications and limits); more is cut. */
    @ParameterizedTest
    @MethodSource("pairs")
    void titlesFitTheTabsOfTheWorkbook(Pair pair) throws IOException {
        for (Path file : List.of(pair.base(), pair.translation())) {
            read(file).forEach((key, text) -> {
                if (SHEET_NAME.matcher(key).matches()) {
                    assertThat(text.replace("''", "'"))
                            .as("%s in %s", key, file)
                            .hasSizeLessThanOrEqualTo(31);
                }
            });
        }
    }

    /** The words of the published methods are names and stay as they are; everything long is translated. */
    @ParameterizedTest
    @MethodSource("pairs")
    void classesKeepTheirNamesAndSentencesDoNotStayEnglish(Pair pair) throws IOException {
        Map<String, String> base = read(pair.base());
        read(pair.translation()).forEach((key, text) -> {
            if (key.startsWith("class.") && !key.equals("class.none")) {
                assertThat(text).isEqualTo(base.get(key));
            } else if (text.split(" ", -1).length > 4) {
                assertThat(text).as("%s in %s", key, pair.translation()).isNotEqualTo(base.get(key));
            }
        });
    }

    private static Set<String> places(String text) {
        Set<String> places = new TreeSet<>();
        Matcher matcher = PLACE.matcher(text);
        while (matcher.find()) {
            places.add(matcher.group(1));
        }
        return places;
    }

    /** Read line by line, so that a key that stands twice is seen. */
    private static Map<String, String> read(Path file) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                int equals = line.indexOf('=');
                assertThat(equals).as(line).isPositive();
                assertThat(texts.put(line.substring(0, equals), line.substring(equals + 1)))
                        .as("twice in %s: %s", file, line)
                        .isNull();
            }
        }
        return texts;
    }
}
