package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.Block;
import heeltap.document.Column;
import heeltap.document.Format;
import heeltap.document.Table;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {
    private static final String LETTERS = "Unitéwiderfahrenmngklo";

    /** Tables of few and many columns, on pages of every width at which they fit by a hair or by much. */
    @Test
    void noColumnIsNarrowerThanItsLongestWord() {
        Faces faces = new Faces();
        Printing printing = new Printing(Locale.FRANCE, Currency.getInstance("EUR"));
        for (int count = 2; count <= 14; count++) {
            List<Column> columns = IntStream.range(0, count)
                    .mapToObj(c -> Column.of(
                            "c" + c, LETTERS.substring(c, c + 5 + c % 4), "", c % 3 == 0 ? Format.TEXT : Format.AMOUNT))
                    .toList();
            Table table = new Table("t", "T", "", columns, List.of(), Optional.empty());
            Block.TableView view =
                    new Block.TableView(table, columns.stream().map(Column::key).toList());
            List<Integer> all = IntStream.range(0, count).boxed().toList();
            for (float available = 60; available < 760; available += 3.7f) {
                TableLayout layout = new TableLayout(faces, printing, available, view);
                ColumnWidths.of(layout, all).ifPresent(widths -> {
                    for (int c : all) {
                        assertThat(widths.of(c)).isGreaterThanOrEqualTo(layout.wants(c, widths.size())[1]);
                    }
                });
            }
        }
    }
}
