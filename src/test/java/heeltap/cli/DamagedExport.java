package heeltap.cli;

import heeltap.record.Month;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A clean export of a few rows, each with one figure of its own, and what became of its text.
 *
 * @param rows by physical line in the damaged text: the figure that the clean row stands for
 * @param mayLoseRows whether the damage takes whole rows away
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record DamagedExport(Kind kind, byte[] bytes, Map<Integer, String> rows, boolean mayLoseRows) {
    private static final List<String> DRINKS =
            List.of("Negroni", "Café Noir", "Rum Punch", "House Lager", "Espresso Martini");
    private static final List<String> GOODS = List.of("Dry gin", "White rum", "Red bitter", "Tonic water", "Lime");

    /** What is exported. */
    enum Kind {
        SALES("sales.csv", "Ticket;Date;Item;Qty;Gross"),
        INVOICES("invoices.csv", "Supplier;Invoice;Date;Product;Pack;Quantity;Unit price;Line total"),
        STOCK("stock.csv", "Ingredient;Location;Unit;Count");

        private final String file;
        private final String heading;

        Kind(String file, String heading) {
            this.file = file;
            this.heading = heading;
        }

        String file() {
            return file;
        }

        private String row(int number, Random random) {
            int quantity = 1 + random.nextInt(9);
            int cents = 150 + random.nextInt(random.nextInt(4) == 0 ? 400_000 : 4_000);
            return switch (this) {
                case SALES ->
                    String.format(
                            Locale.ROOT,
                            "%d;2026-10-%02d 21:%02d;%s;%d;%d.%02d",
                            1000 + number,
                            1 + random.nextInt(28),
                            number,
                            DRINKS.get(random.nextInt(5)),
                            quantity,
                            cents / 100,
                            cents % 100);
                case INVOICES ->
                    String.format(
                            Locale.ROOT,
                            "North Wines;A%d;2026-10-%02d;%s;70cl;%d;%d.%02d;%d.%02d",
                            number,
                            1 + random.nextInt(28),
                            GOODS.get(random.nextInt(5)),
                            quantity,
                            cents / 100,
                            cents % 100,
                            cents * quantity / 100,
                            cents * quantity % 100);
                case STOCK ->
                    String.format(
                            Locale.ROOT,
                            "%s;Shelf %d;bottle;%d.%02d",
                            GOODS.get(random.nextInt(5)),
                            number,
                            quantity,
                            cents % 100);
            };
        }

        /** What a clean row stands for. */
        private String figure(String row) {
            String[] cells = row.split(";", -1);
            return switch (this) {
                case SALES -> cells[1].substring(0, 10) + " " + cells[2] + " " + cells[3] + " " + plain(cells[4]);
                case INVOICES -> cells[1] + " " + cells[3] + " " + cells[5] + " " + plain(cells[7]);
                case STOCK -> cells[0] + " " + cells[1] + " " + plain(cells[3]);
            };
        }

        private static String plain(String number) {
            return new java.math.BigDecimal(number).stripTrailingZeros().toPlainString();
        }

        /** The figures read, in no order. Sales of one drink and day are added up in a month: none are in these. */
        List<String> figures(Month month) {
            // a quotation mark that stands in a name is no other name
            return read(month).map(figure -> figure.replace("\"", "")).toList();
        }

        private Stream<String> read(Month month) {
            return switch (this) {
                case SALES ->
                    month.sales().stream()
                            .map(sale -> sale.day() + " " + sale.item() + " " + sale.quantity() + " " + sale.net());
                case INVOICES ->
                    month.invoices().stream()
                            .flatMap(invoice -> invoice.lines().stream()
                                    .map(line -> invoice.number() + " " + line.product() + " " + line.quantity() + " "
                                            + line.goods()));
                case STOCK ->
                    month.closing().stream().map(count -> count.item() + " " + count.location() + " " + count.count());
            };
        }

        private String total(List<String> rows) {
            java.math.BigDecimal sum = rows.stream()
                    .map(row -> new java.math.BigDecimal(row.substring(row.lastIndexOf(';') + 1)))
                    .reduce(java.math.BigDecimal.ZERO, java.math.BigDecimal::add);
            int blanks = (int) heading.chars().filter(c -> c == ';').count();
            return "Total" + ";".repeat(blanks) + sum.toPlainString();
        }
    }

    /** What happens to the text. */
    enum Damage {
        DELIMITER_DROPPED,
        DELIMITER_ADDED,
        QUOTE_ADDED,
        CUT,
        LINE_ENDS_MIXED,
        ENCODING_CHANGED,
        DECIMALS_CHANGED,
        PAGES_AND_TOTALS_ADDED,
        CELL_BROKEN
    }

    String text() {
        return kind + "\n" + new String(bytes, StandardCharsets.UTF_8);
    }

    static DamagedExport of(Kind kind, Damage damage, Random random) {
        List<String> rows = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        int count = 4 + random.nextInt(30);
        for (int i = 0; i < count || rows.size() < 3; i++) {
            String row = kind.row(i, random);
            String key = kind == Kind.SALES ? kind.figure(row).replaceAll(" \\d+ [\\d.]+$", "") : row;
            if (!keys.contains(key)) {
                keys.add(key);
                rows.add(row);
            }
        }
        Map<Integer, String> figures = new TreeMap<>();
        for (int i = 0; i < rows.size(); i++) {
            figures.put(i + 2, kind.figure(rows.get(i)));
        }
        int hit = random.nextInt(rows.size());
        String row = rows.get(hit);
        String end = "\n";
        Charset charset = StandardCharsets.UTF_8;
        boolean loses = false;
        List<String> lines = new ArrayList<>(rows);
        lines.add(0, kind.heading);
        switch (damage) {
            case DELIMITER_DROPPED -> {
                int at = nth(row, random);
                lines.set(hit + 1, row.substring(0, at) + row.substring(at + 1));
            }
            case DELIMITER_ADDED -> {
                int at = random.nextInt(row.length());
                lines.set(hit + 1, row.substring(0, at) + ";" + row.substring(at));
            }
            case QUOTE_ADDED -> {
                int at = random.nextInt(row.length());
                lines.set(hit + 1, row.substring(0, at) + "\"" + row.substring(at));
            }
            case CELL_BROKEN -> {
                String[] cells = row.split(";", -1);
                int cell = cells.length - 1 - random.nextInt(2);
                cells[cell] = List.of("#REF!", "1.2.3", "--", "n/a", "12..5").get(random.nextInt(5));
                boolean read = (kind == Kind.STOCK && cell == 2) || (kind == Kind.INVOICES && cell == 6);
                lines.set(hit + 1, read ? row : String.join(";", cells));
            }
            case DECIMALS_CHANGED -> lines.replaceAll(line -> commas(line, random.nextBoolean()));
            case PAGES_AND_TOTALS_ADDED -> {
                lines.add(kind.total(rows));
                lines.add(1 + hit, kind.heading);
                lines.add(1 + hit, "");
                lines.add(
                        1 + hit,
                        "Page 1"
                                + ";".repeat((int) kind.heading
                                        .chars()
                                        .filter(c -> c == ';')
                                        .count()));
                Map<Integer, String> moved = new TreeMap<>();
                figures.forEach((line, figure) -> moved.put(line > hit + 1 ? line + 3 : line, figure));
                figures.clear();
                figures.putAll(moved);
            }
            case ENCODING_CHANGED ->
                charset = Stream.of("windows-1252", "UTF-16LE", "UTF-16BE", "UTF-16", "ISO-8859-15")
                        .map(Charset::forName)
                        .toList()
                        .get(random.nextInt(5));
            default -> {}
        }
        String text = String.join(end, lines) + end;
        if (damage == Damage.LINE_ENDS_MIXED) {
            StringBuilder mixed = new StringBuilder();
            for (String line : lines) {
                mixed.append(line).append(List.of("\n", "\r\n", "\r").get(random.nextInt(3)));
            }
            text = mixed.toString();
        }
        if (damage == Damage.CUT) {
            // before the third row there is nothing to compare the last one with
            int from =
                    kind.heading.length() + rows.get(0).length() + rows.get(1).length() + 3;
            int cut = from + random.nextInt(text.length() - from);
            text = text.substring(0, cut);
            int whole = (int) text.chars().filter(c -> c == '\n').count();
            String last = text.substring(text.lastIndexOf('\n') + 1);
            int next = whole + 1;
            boolean complete = figures.containsKey(next) && rows.get(next - 2).equals(last);
            figures.keySet().removeIf(line -> line > next || (line == next && last.isEmpty()));
            loses = !complete;
        }
        return new DamagedExport(kind, text.getBytes(charset), figures, loses);
    }

    private static int nth(String row, Random random) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < row.length(); i++) {
            if (row.charAt(i) == ';') {
                places.add(i);
            }
        }
        return places.get(random.nextInt(places.size()));
    }

    /** Decimal commas, with or without points between the thousands. */
    private static String commas(String line, boolean grouped) {
        StringBuilder text = new StringBuilder();
        for (String cell : line.split(";", -1)) {
            String changed = cell.matches("\\d+\\.\\d\\d")
                    ? (grouped ? cell.replaceAll("(\\d)(\\d{3})\\.", "$1.$2.") : cell)
                            .replaceFirst("\\.(\\d\\d)$", ",$1")
                    : cell;
            text.append(text.isEmpty() ? "" : ";").append(changed);
        }
        return text.toString();
    }
}
