package heeltap.review;

import heeltap.cost.Purchase;
import heeltap.record.Folding;
import heeltap.record.Invoice;
import heeltap.source.Place;
import heeltap.stock.InvoiceTie;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is odd about one invoice of the month.
 *
 * @param first where the same number of the same supplier stood before; empty: nowhere
 * @param alike an invoice under another spelling of the supplier that has its number, date, lines and total; empty: none
 * @param undated whether it has no date
 * @param outside whether its date lies outside the month
 * @param unclaimed lines that no ingredient claims
 * @param aside lines of an ingredient of which nothing says how much they hold
 * @param moves its lines whose price moved
 */
record InvoiceFindings(
        InvoiceTie tie,
        Optional<Place> first,
        Optional<Invoice> alike,
        boolean undated,
        boolean outside,
        long unclaimed,
        long aside,
        List<PriceMove> moves) {
    private static final Comparator<InvoiceTie> ORDER = Comparator.comparing(
                    (InvoiceTie tie) -> tie.invoice().supplier())
            .thenComparing(tie -> tie.invoice().date(), Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(tie -> tie.invoice().number())
            .thenComparing(tie -> tie.invoice().place());

    /** One for each invoice, by supplier, date and number. */
    static List<InvoiceFindings> of(ReviewFigures review) {
        Map<String, Place> seen = new HashMap<>();
        for (MonthFigures month : review.months().subList(0, review.months().size() - 1)) {
            month.ties().stream()
                    .sorted(ORDER)
                    .forEach(tie ->
                            seen.putIfAbsent(key(tie.invoice()), tie.invoice().place()));
        }
        MonthFigures now = review.now();
        List<PriceMove> moves = PriceMove.of(review.book(), review.months());
        List<InvoiceFindings> findings = new ArrayList<>();
        for (InvoiceTie tie : now.ties().stream().sorted(ORDER).toList()) {
            Invoice invoice = tie.invoice();
            LocalDate date = invoice.date();
            Place first = invoice.number().isEmpty() ? null : seen.putIfAbsent(key(invoice), invoice.place());
            findings.add(new InvoiceFindings(
                    tie,
                    Optional.ofNullable(first),
                    findings.stream()
                            .map(before -> before.tie().invoice())
                            .filter(before -> isAlike(before, invoice))
                            .findFirst(),
                    date == null,
                    date != null && !YearMonth.from(date).equals(now.month()),
                    now.purchases().purchases().stream()
                            .filter(line -> line.ingredient() == null && !line.ignored())
                            .filter(line -> holds(invoice, line.place()))
                            .count(),
                    now.purchases().purchases().stream()
                            .filter(Purchase::isSetAside)
                            .filter(line -> holds(invoice, line.place()))
                            .count(),
                    moves.stream()
                            .filter(move -> holds(invoice, move.purchase().place()))
                            .toList()));
        }
        return findings;
    }

    /** A credit note may bear the number of the invoice it takes back. */
    private static String key(Invoice invoice) {
        return Folding.fold(invoice.supplier()) + "\n" + Folding.fold(invoice.number()) + "\n" + invoice.creditNote();
    }

    /** The suppliers' names differ, and nothing else does. */
    private static boolean isAlike(Invoice before, Invoice invoice) {
        return !invoice.number().isEmpty()
                && !key(before).equals(key(invoice))
                && Folding.fold(before.number()).equals(Folding.fold(invoice.number()))
                && before.creditNote() == invoice.creditNote()
                && Objects.equals(before.date(), invoice.date())
                && Objects.equals(before.printedTotal(), invoice.printedTotal())
                && lines(before).equals(lines(invoice));
    }

    private static List<String> lines(Invoice invoice) {
        return invoice.lines().stream()
                .map(line -> Folding.fold(line.product()) + "\n" + line.quantity() + "\n" + line.goods())
                .sorted()
                .toList();
    }

    private static boolean holds(Invoice invoice, Place line) {
        return invoice.lines().stream().anyMatch(printed -> printed.place().equals(line));
    }

    /** Whether its number may be that of two invoices: its rows bear several dates or stand in several files. */
    boolean spread() {
        return tie.invoice().dates().size() > 1 || tie.invoice().files().size() > 1;
    }

    /** The dates, else the files. */
    String spreadOver(Words words) {
        return tie.invoice().dates().size() > 1
                ? tie.invoice().dates().stream().map(words::date).collect(Collectors.joining("; "))
                : String.join("; ", tie.invoice().files());
    }

    /** In sentences; empty where nothing is odd. */
    List<String> sentences(Words words) {
        List<String> sentences = new ArrayList<>();
        tie.difference()
                .filter(difference -> !difference.isZero())
                .ifPresent(difference -> sentences.add(words.say(
                        "invoice.differs",
                        words.money(difference.abs()),
                        words.say(difference.isPositive() ? "word.more" : "word.less"))));
        first.ifPresent(place -> sentences.add(words.say("invoice.twice", place.toString())));
        alike.ifPresent(other -> sentences.add(
                words.say("invoice.alike", other.supplier(), other.place().toString())));
        if (spread()) {
            sentences.add(
                    words.say(tie.invoice().dates().size() > 1 ? "invoice.dates" : "invoice.files", spreadOver(words)));
        }
        if (undated) {
            sentences.add(words.say("invoice.undated"));
        }
        LocalDate date = tie.invoice().date();
        if (outside && date != null) {
            sentences.add(words.say("invoice.outside", words.date(date)));
        }
        if (unclaimed > 0) {
            sentences.add(words.say("invoice.unclaimed", String.valueOf(unclaimed)));
        }
        if (aside > 0) {
            sentences.add(words.say("invoice.aside", String.valueOf(aside)));
        }
        for (PriceMove move : moves) {
            sentences.add(words.say(
                    "invoice.moved",
                    move.ingredient().name(),
                    words.percent(move.percent().abs()),
                    words.say(move.percent().isPositive() ? "word.more" : "word.less")));
        }
        return sentences;
    }
}
