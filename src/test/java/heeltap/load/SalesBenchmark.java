package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.lang.management.ManagementFactory;
import java.util.List;

/** Not a test: loads a month of 1,000,000 generated sales rows and prints the rows a second of processor time. */
final class SalesBenchmark {
    private static final int ROWS = 1_000_000;
    private static final String[] ITEMS = {"Negroni", "Daiquiri", "Spritz", "House Lager", "Cola"};
    private static final String[] MONEY = {"12.00", "11.50", "9.00", "5.50", "4.00"};

    private SalesBenchmark() {}

    public static void main(String[] args) {
        for (int i = 0; i < 3; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            MonthFixture bar = MonthFixture.bar().add(new Generated("2026-10/sales.csv"));
            int totals = bar.load().value().sales().size();
            double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9;
            long used =
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            System.out.printf(
                    "%d totals, %.2f s, %.0f rows/s, heap %d MiB%n", totals, seconds, ROWS / seconds, used >> 20);
        }
    }

    /** Rows made up while they are read. */
    private record Generated(String file) implements Sheet {
        @Override
        public SheetFacts facts() {
            return new SheetFacts(Place.of(file, ""), "UTF-8", "comma", false, List.of());
        }

        @Override
        public void read(RowReader reader) {
            boolean more = reader.take(row(1, "Ticket", "Date", "Item", "Qty", "Gross", "Discount", "Type"));
            for (int i = 0; i < ROWS && more; i++) {
                int item = (i * 7 + i / 13) % ITEMS.length;
                String date = "2026-10-" + (10 + i % 20) + " " + (12 + i % 11) + ":" + (10 + i % 50);
                more = reader.take(row(
                        i + 2,
                        "T" + i / 3,
                        date,
                        ITEMS[item],
                        "1",
                        MONEY[item],
                        i % 10 == 0 ? "1.00" : "0.00",
                        "Sale"));
            }
        }

        private static Row row(int number, String... texts) {
            Cell[] cells = new Cell[texts.length];
            for (int i = 0; i < texts.length; i++) {
                cells[i] = Cell.text(i, texts[i]);
            }
            return new Row(number, List.of(cells));
        }
    }
}
