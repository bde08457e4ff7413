package heeltap.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * Measures the review of a month of 1,000,000 sales rows of a text, or with the arguments {@code 500000 xlsx} of so many
 * rows of a workbook, and prints rows a second and peak memory. A benchmark, not a test: run its {@code main} with the
 * test class path, {@code -Xmx256m} to see that memory does not grow with rows.
 */
final class MillionRowsBenchmark {
    private static final int DRINKS = 60;

    private MillionRowsBenchmark() {}

    public static void main(String[] args) throws IOException {
        int rows = args.length > 0 ? Integer.parseInt(args[0]) : 1_000_000;
        boolean workbook = args.length > 1 && args[1].equals("xlsx");
        Path bar = Files.createTempDirectory("heeltap-benchmark");
        writeBook(bar);
        if (workbook) {
            writeWorkbook(bar.resolve("2026-10/sales.xlsx"), rows);
        } else {
            writeText(bar.resolve("2026-10/sales.csv"), rows);
        }
        System.gc();
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        long start = System.nanoTime();
        int code = Main.run(
                new Console(Screen.plain(out), Screen.plain(out)),
                "review",
                bar.toString(),
                "--out",
                bar.resolve("out").toString());
        double seconds = (System.nanoTime() - start) / 1e9;
        long peak = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(usage -> usage.getUsed())
                .sum();
        out.printf(
                Locale.ROOT,
                "exit %d: %,d rows in %.1f s, %,.0f rows a second, peak heap at most %d MiB%n",
                code,
                rows,
                seconds,
                rows / seconds,
                peak >> 20);
    }

    private static void writeBook(Path bar) throws IOException {
        Files.createDirectories(bar.resolve("book"));
        Files.createDirectories(bar.resolve("2026-10"));
        Files.writeString(
                bar.resolve("book/settings.csv"), "Setting,Value\ncurrency,EUR\nmenu prices include tax,yes\n");
        StringBuilder drinks = new StringBuilder("Drink,Price,Category,Fixed cost\n");
        for (int i = 0; i < DRINKS; i++) {
            drinks.append("House drink ")
                    .append(i)
                    .append(",")
                    .append(8 + i % 7)
                    .append(".50,Cocktails,");
            drinks.append(1 + i % 3).append(".2").append(i % 10).append('\n');
        }
        Files.writeString(bar.resolve("book/drinks.csv"), drinks);
    }

    /** Twelve columns; texts stand in the cells, as exports that are written row by row have them. */
    private static void writeWorkbook(Path file, int rows) throws IOException {
        try (SXSSFWorkbook workbook = new SXSSFWorkbook(100);
                OutputStream out = Files.newOutputStream(file)) {
            SXSSFSheet sheet = workbook.createSheet("Items");
            String[] headings = {
                "Date",
                "Time",
                "Ticket",
                "Item",
                "Quantity",
                "Unit price",
                "Gross",
                "Discount",
                "Kind",
                "Server",
                "Table",
                "Guests"
            };
            CellStyle day = workbook.createCellStyle();
            day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
            SXSSFRow heading = sheet.createRow(0);
            for (int i = 0; i < headings.length; i++) {
                heading.createCell(i).setCellValue(headings[i]);
            }
            for (int i = 0; i < rows; i++) {
                int drink = i % DRINKS;
                double price = 8.5 + drink % 7;
                SXSSFRow row = sheet.createRow(i + 1);
                row.createCell(0).setCellValue(LocalDate.of(2026, 10, 1 + (int) ((long) i * 30 / rows)));
                row.getCell(0).setCellStyle(day);
                row.createCell(1).setCellValue(String.format(Locale.ROOT, "%02d:%02d", 17 + i % 7, i % 60));
                row.createCell(2).setCellValue(Math.floorDiv(i, 3));
                row.createCell(3).setCellValue("House drink " + drink);
                row.createCell(4).setCellValue(1);
                row.createCell(5).setCellValue(price);
                row.createCell(6).setCellValue(price);
                row.createCell(7).setCellValue(0);
                row.createCell(8).setCellValue("sale");
                row.createCell(9).setCellValue("S" + i % 9);
                row.createCell(10).setCellValue(i % 24);
                row.createCell(11).setCellValue(1 + i % 6);
            }
            workbook.write(out);
        }
    }

    private static void writeText(Path file, int rows) throws IOException {
        try (BufferedWriter sales = Files.newBufferedWriter(file)) {
            sales.write("Date,Time,Ticket,Item,Quantity,Unit price,Gross,Discount,Kind,Server\n");
            for (int i = 0; i < rows; i++) {
                int drink = i % DRINKS;
                int day = 1 + (int) ((long) i * 30 / rows);
                sales.write(String.format(
                        Locale.ROOT,
                        "2026-10-%02d,%02d:%02d,%d,House drink %d,1,%d.50,%d.50,0.00,sale,S%d%n",
                        day,
                        17 + i % 7,
                        i % 60,
                        i / 3,
                        drink,
                        8 + drink % 7,
                        8 + drink % 7,
                        i % 9));
            }
        }
    }
}
