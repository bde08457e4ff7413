package heeltap.review;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.match.Spelling;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.FileAccount;
import heeltap.record.SetAside;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What was read, what was set aside, and whether the sums hold. */
final class FileTables {
    private static final Comparator<SetAside> BY_PLACE = Comparator.comparing(SetAside::place)
            .thenComparing(SetAside::reason)
            .thenComparing(SetAside::text);

    private FileTables() {}

    static Table files(List<FileAccount> files, List<Problem> problems, Texts texts) {
        Filling table = Shapes.FILES.fill(texts);
        files.stream().sorted(Comparator.comparing(FileAccount::place)).forEach(file -> {
            boolean refused = file.kind().equals("refused");
            table.add(
                    refused || !holds(file, problems) ? Emphasis.MARKED : Emphasis.PLAIN,
                    new Cells()
                            .set("file", CellValue.of(file.place().file()))
                            .set("sheet", CellValue.of(file.place().sheet()))
                            .set("kind", kind(file.kind(), texts))
                            .set("encoding", CellValue.of(file.encoding()))
                            .set("delimiter", CellValue.of(file.delimiter()))
                            .set("heading_row", positive(file.headingRow()))
                            .set("dates", CellValue.of(file.dates()))
                            .set("decimals", CellValue.of(file.decimals()))
                            .set("rows", CellValue.of(file.rows()))
                            .set("used", CellValue.of(file.used()))
                            .set("ignored", CellValue.of(file.ignored()))
                            .set("set_aside", CellValue.of(file.setAside()))
                            .set("quantity", CellValue.of(file.quantity()))
                            .set("money", CellValue.of(file.money()))
                            .set("printed_total", CellValue.of(file.printedTotal()))
                            .set("holds", CellValue.of(holds(file, problems)))
                            .set("used_quantity", CellValue.of(file.usedQuantity()))
                            .set("used_money", CellValue.of(file.usedMoney()))
                            .set("ignored_money", CellValue.of(file.ignoredMoney()))
                            .set("set_aside_money", CellValue.of(file.setAsideMoney())));
        });
        return table.done();
    }

    /** A month's file in the bar's language; a sheet of the book by its name, which is one in every language. */
    private static CellValue kind(String kind, Texts texts) {
        return texts.find("file-kind." + kind.replace(' ', '-'))
                .<CellValue>map(said -> new CellValue.Term(kind, said))
                .orElseGet(() -> CellValue.of(kind));
    }

    static Table setAside(List<SetAside> rows, Texts texts) {
        Filling table = Shapes.SET_ASIDE.fill(texts).totalFormula("money", "SUM({money:all})");
        rows.stream()
                .sorted(BY_PLACE)
                .forEach(row -> table.add(new Cells()
                        .set("file", CellValue.of(row.place().file()))
                        .set("sheet", CellValue.of(row.place().sheet()))
                        .set("row", positive(row.place().row()))
                        .set("reason", CellValue.of(row.reason()))
                        .set("text", CellValue.of(row.text()))
                        .set("quantity", CellValue.of(row.quantity()))
                        .set("money", CellValue.of(row.money()))
                        .set("nearest", CellValue.of(String.join("; ", row.nearest())))));
        Money money = rows.stream()
                .flatMap(row -> Optional.ofNullable(row.money()).stream())
                .reduce(Money.ZERO, Money::plus);
        return rows.isEmpty()
                ? table.done()
                : table.total(new Cells()
                                .set("file", CellValue.of(texts.say("word.total")))
                                .set("money", CellValue.of(money)))
                        .done();
    }

    /** A row for each unknown name of the month, with the nearest known one to be checked by a person. */
    static Table namesToAdd(List<SetAside> rows, List<FileAccount> files, Texts texts) {
        Map<String, List<SetAside>> byName = new TreeMap<>();
        for (SetAside row : rows) {
            if (!row.nearest().isEmpty()) {
                byName.computeIfAbsent(in(row, files) + "\n" + row.text(), name -> new ArrayList<>())
                        .add(row);
            }
        }
        Filling table = Shapes.NAMES_TO_ADD
                .fill(texts)
                .totalFormula("rows", "SUM({rows:all})")
                .totalFormula("money", "SUM({money:all})");
        byName.forEach((key, same) -> {
            SetAside first = same.get(0);
            Money money = same.stream()
                    .map(row -> Optional.ofNullable(row.money()).orElse(Money.ZERO))
                    .reduce(Money.ZERO, Money::plus);
            table.add(new Cells()
                    .set("as_written", CellValue.of(first.text()))
                    .set("means", CellValue.of(likely(first)))
                    .set("in", CellValue.of(in(first, files)))
                    .set("times", CellValue.of(1))
                    .set("rows", CellValue.of(same.size()))
                    .set("money", money.isZero() ? CellValue.BLANK : CellValue.of(money))
                    .set("nearest", CellValue.of(String.join("; ", first.nearest()))));
        });
        List<SetAside> named = byName.values().stream().flatMap(List::stream).toList();
        return named.isEmpty()
                ? table.done()
                : table.total(new Cells()
                                .set("as_written", CellValue.of(texts.say("word.total")))
                                .set("rows", CellValue.of(named.size()))
                                .set(
                                        "money",
                                        CellValue.of(named.stream()
                                                .flatMap(row -> Optional.ofNullable(row.money()).stream())
                                                .reduce(Money.ZERO, Money::plus))))
                        .done();
    }

    /**
     * The one near name that is but another spelling of the unknown one; else a person has to say what it means, since a word
     * that differs may change the drink.
     */
    private static String likely(SetAside row) {
        List<String> spellings = row.nearest().stream()
                .filter(known -> Spelling.isVariant(row.text(), known))
                .toList();
        return spellings.size() == 1 ? spellings.get(0) : "";
    }

    /** The word of the column In: the kind of file the name stands in. */
    private static String in(SetAside row, List<FileAccount> files) {
        return files.stream()
                .filter(file -> file.place().file().equals(row.place().file())
                        && file.place().sheet().equals(row.place().sheet()))
                .map(FileAccount::kind)
                .findFirst()
                .map(kind -> kind.startsWith("stock") ? "stock" : kind)
                .orElse("any");
    }

    static Table controls(List<Control> controls, Texts texts) {
        Filling table = Shapes.CONTROLS
                .fill(texts)
                .formula("difference", "{found}-{expected}")
                // what binary numbers lose on the way is no difference
                .formula("holds", "IF(ROUND({difference},6)=0,{yes},{no})");
        for (Control control : controls) {
            table.add(
                    control.holds() ? Emphasis.PLAIN : Emphasis.MARKED,
                    new Cells()
                            .set("control", texts.term("control", control.name()))
                            .set("scope", control.scope())
                            .set("expected", control.cell(control.expected()))
                            .set("found", control.cell(control.found()))
                            .set("difference", control.cell(control.difference()))
                            .set("holds", CellValue.of(control.holds())));
        }
        return table.done();
    }

    /** The identities of one file; a printed total must agree with what was read too. */
    private static boolean holds(FileAccount file, List<Problem> problems) {
        return file.rows() == file.used() + file.ignored() + file.setAside()
                && moneyHolds(file)
                && printedHolds(file, problems);
    }

    private static boolean moneyHolds(FileAccount file) {
        Money parts = Optional.ofNullable(file.usedMoney())
                .orElse(Money.ZERO)
                .plus(Optional.ofNullable(file.ignoredMoney()).orElse(Money.ZERO))
                .plus(Optional.ofNullable(file.setAsideMoney()).orElse(Money.ZERO));
        return file.money() == null || file.money().equals(parts);
    }

    /** The loader compares a printed total in every way it may be meant, such as without voids, and says if none fits. */
    private static boolean printedHolds(FileAccount file, List<Problem> problems) {
        return problems.stream()
                .filter(problem -> problem.kind() == ProblemKind.TOTAL_DIFFERS)
                .noneMatch(problem -> problem.place().file().equals(file.place().file())
                        && problem.place().sheet().equals(file.place().sheet()));
    }

    /** The controls of one file: rows in their three parts, money in its three parts, the printed total. */
    static List<Control> controlsOf(FileAccount file, List<Problem> problems) {
        Place place = file.place();
        String scope = place.sheet().isEmpty() ? place.file() : place.file() + ", " + place.sheet();
        List<Control> controls = new ArrayList<>();
        controls.add(Control.ofNumbers(
                "rows in = used + ignored + set aside",
                scope,
                Exact.of(file.rows()),
                Exact.of((long) file.used() + file.ignored() + file.setAside())));
        if (file.money() != null) {
            Money parts = Optional.ofNullable(file.usedMoney())
                    .orElse(Money.ZERO)
                    .plus(Optional.ofNullable(file.ignoredMoney()).orElse(Money.ZERO))
                    .plus(Optional.ofNullable(file.setAsideMoney()).orElse(Money.ZERO));
            controls.add(Control.of("money in = used + ignored + set aside", scope, file.money(), parts));
            if (file.printedTotal() != null
                    && (!printedHolds(file, problems) || file.printedTotal().equals(file.money()))) {
                controls.add(Control.of("printed total = money read", scope, file.printedTotal(), file.money()));
            }
        }
        return controls;
    }

    private static CellValue positive(int number) {
        return number > 0 ? CellValue.of(number) : CellValue.BLANK;
    }
}
