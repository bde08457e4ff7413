package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** README's commands are run and the figures it shows are those of the program. */
class ReadmeTest {
    private static final Pattern BOLD_ROW = Pattern.compile("^\\| ([^|]+) \\|.*\\*\\*([0-9.]+)\\*\\* \\|$");

    private static List<String> readme() throws IOException {
        return Files.readAllLines(Path.of("README.md"));
    }

    @Test
    void theFirstCommandRunsTheSample(@TempDir Path temp) throws IOException {
        assertThat(readme()).contains("mvn -B -q -DskipTests package exec:exec@sample", "mvn -B verify");
        String pom = Files.readString(Path.of("pom.xml"));
        assertThat(pom)
                .contains("<id>sample</id>")
                .contains("<argument>-jar</argument><argument>target/heeltap.jar</argument><argument>review</argument>"
                        + "<argument>sample-input</argument>");
        Path bar = CommandsTest.copy(Path.of("sample-input"), temp.resolve("sample-input"));
        Run run = Run.of("review", bar.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Files read", "Money joined", "Set aside", "2026-10-review.pdf", "2026-10-review.xlsx");
    }

    @Test
    void theCommandsForOnesOwnBarWork(@TempDir Path temp) throws IOException {
        List<String[]> commands = new ArrayList<>();
        for (String line : readme()) {
            if (line.startsWith("java -jar target/heeltap.jar ")) {
                commands.add(
                        line.substring("java -jar target/heeltap.jar ".length()).split(" ", -1));
            }
        }
        assertThat(commands).extracting(command -> command[0]).containsExactly("start", "check", "review");
        String bar = temp.resolve("my-bar").toString();
        assertThat(Run.of("start", bar).code()).isZero();
        // the least a bar fills in before the other two can do their work
        Files.writeString(
                Path.of(bar, "book/settings.csv"), "Setting,Value\ncurrency,EUR\nmenu prices include tax,yes\n");
        Files.writeString(Path.of(bar, "book/drinks.csv"), "Drink,Price,Fixed cost\nHouse lager,5.00,1.20\n");
        Files.move(Path.of(bar, "month"), Path.of(bar, "2026-10"));
        Files.writeString(Path.of(bar, "2026-10/sales.csv"), "Item,Quantity,Gross\nHouse lager,10,50.00\n");
        for (String[] command : commands.subList(1, 3)) {
            assertThat(command[1]).isEqualTo("my-bar");
            Run run = Run.of(command[0], bar, command[2]);
            assertThat(run.code()).as(run.err()).isZero();
        }
        assertThat(temp.resolve("heeltap-out/2026-10-review.pdf")).isRegularFile();
    }

    @Test
    void theDrinkWorkedByHandIsTheProgramsOwn(@TempDir Path temp) throws IOException {
        assertThat(Run.of("review", "sample-input", "2026-10", "--out", temp.toString())
                        .code())
                .isZero();
        CSVRecord drink = drink(temp.resolve("tables/drinks.csv"), "Fog Signal");
        Map<String, String> columns = Map.of(
                "Cost of a serve", "cost",
                "Sold", "sold",
                "Net sales", "net_sales",
                "Net price", "net_price",
                "Cost percent", "cost_percent",
                "Margin of a serve", "margin",
                "Margin of the month", "total_margin");
        int checked = 0;
        for (String line : readme()) {
            Matcher row = BOLD_ROW.matcher(line);
            if (row.matches()) {
                BigDecimal shown = new BigDecimal(row.group(2));
                BigDecimal halfUnit = BigDecimal.valueOf(5, shown.scale() + 1);
                assertThat(new BigDecimal(drink.get(columns.get(row.group(1)))))
                        .as(row.group(1))
                        .isCloseTo(shown, within(halfUnit));
                checked++;
            }
        }
        assertThat(checked).isEqualTo(columns.size());
    }

    private static CSVRecord drink(Path file, String name) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                Files.readString(file),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords().stream()
                    .filter(row -> row.get("drink").equals(name))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
