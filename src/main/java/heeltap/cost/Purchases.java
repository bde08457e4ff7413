package heeltap.cost;

import heeltap.match.Match;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.record.Book;
import heeltap.record.Folding;
import heeltap.record.Ingredient;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import heeltap.record.NameRule.Where;
import heeltap.record.Setting;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.WithProblems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Joins invoice lines to ingredients and brings them to base quantities and cost.
 *
 * <p>Base quantity = packs × what a pack holds × {@code Times} of the name, in the ingredient's measure. Cost = goods
 * without tax, less the share of the invoice's discount, plus the share of its delivery, both by value; deposits are no
 * cost. Nothing is rounded.
 */
public final class Purchases {
    /** Words for packs of several and for single ones, of e-invoices' unit codes and of price lists. */
    private static final Set<String> CASES =
            Set.of("case", "cases", "carton", "box", "crate", "tray", "sleeve", "kiste", "karton", "caisse");

    private static final Set<String> BOTTLES = Set.of("bottle", "bottles", "can", "cans");

    private final Book book;
    private final NameBook names;
    private final Map<String, Ingredient> ingredients = new HashMap<>();
    private final Map<String, Traits> traits = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private Purchases(Book book, NameBook names) {
        this.book = book;
        this.names = names;
        book.ingredients().forEach(ingredient -> ingredients.put(ingredient.name(), ingredient));
    }

    /**
     * One purchase for each line, in the order of the invoices.
     *
     * <p>Faults: a pack that cannot be read or is not there, a pack that does not fit the ingredient's measure. Such a line
     * keeps its money and has no base quantity. A product that nothing claims is no fault here.
     */
    public static WithProblems<List<Purchase>> of(Book book, NameBook names, List<Invoice> invoices) {
        Purchases purchases = new Purchases(book, names);
        List<Purchase> all = new ArrayList<>();
        for (Invoice invoice : invoices) {
            all.addAll(purchases.of(invoice));
        }
        return new WithProblems<>(List.copyOf(all), purchases.problems);
    }

    private List<Purchase> of(Invoice invoice) {
        InvoiceShares shares = InvoiceShares.of(invoice, book.settings());
        checkCharges(invoice, shares);
        List<Purchase> lines = new ArrayList<>();
        for (int i = 0; i < invoice.lines().size(); i++) {
            lines.add(line(
                    invoice,
                    invoice.lines().get(i),
                    shares.goods().get(i),
                    shares.delivery().get(i)));
        }
        return lines;
    }

    private void checkCharges(Invoice invoice, InvoiceShares shares) {
        if (!shares.byValue() && !invoice.lines().isEmpty()) {
            problems.add(Problem.notice(
                    ProblemKind.VALUE_DOUBTFUL,
                    invoice.place(),
                    invoice.number(),
                    "No line of the invoice has a value, so its delivery and discount were shared over the lines alike.",
                    "Check the lines' money."));
        }
        boolean taxKnown = invoice.tax() != null
                || book.settings().isSet(Setting.INVOICE_TAX_PERCENT)
                || invoice.lines().stream().anyMatch(line -> line.tax() != null);
        if (invoice.pricesIncludeTax() && !taxKnown) {
            problems.add(Problem.notice(
                    ProblemKind.SETTING_MISSING,
                    invoice.place(),
                    invoice.number(),
                    "The prices hold tax, but no tax is printed and no rate is set, so the tax was taken as cost.",
                    "Set \"" + Setting.INVOICE_TAX_PERCENT.name() + "\" on the sheet Settings."));
        }
    }

    private Purchase line(Invoice invoice, InvoiceLine line, Money goods, Money delivery) {
        Optional<Match> match = names.find(Where.INVOICES, line.product(), "");
        boolean ignored = match.map(found -> found.kind() == Match.Kind.IGNORED).orElse(false);
        Ingredient ingredient =
                match.map(found -> ingredients.get(found.name())).orElse(null);
        if (ignored) {
            ingredient = null;
        }
        // a credit of money alone moves no goods, so it needs no pack
        boolean moneyAlone = line.quantity().isZero();
        Pack pack = ingredient == null || moneyAlone ? line.pack() : pack(line, ingredient);
        Exact times = match.map(Match::times).orElse(Exact.ONE);
        return new Purchase(
                line.place(),
                invoice.supplier(),
                invoice.number(),
                invoice.date(),
                invoice.creditNote(),
                line.product(),
                ingredient == null ? null : ingredient.name(),
                ignored,
                line.quantity(),
                pack,
                line.packText(),
                baseQuantity(line, pack, ingredient, times),
                goods,
                delivery);
    }

    /** A text with a number in it was meant to say what the pack holds; a bare word such as {@code BAG} was not. */
    private @Nullable Pack pack(InvoiceLine line, Ingredient ingredient) {
        if (line.pack() != null) {
            return line.pack();
        }
        if (line.packText().chars().anyMatch(Character::isDigit)) {
            problems.add(Problem.fault(
                    ProblemKind.PACK_UNREADABLE,
                    line.place(),
                    line.packText(),
                    "What the pack of " + ingredient.name() + " holds cannot be read, so the line prices nothing.",
                    "Write it like 6 x 70cl, 5 kg or case of 40."));
            return null;
        }
        if (ingredient.listPack() == null) {
            problems.add(Problem.fault(
                    ProblemKind.PACK_UNREADABLE,
                    line.place(),
                    line.packText(),
                    "The line does not say what a pack of " + ingredient.name()
                            + " holds and the ingredient has no list pack, so the line prices nothing.",
                    "Fill in the pack on the line, or List pack on the sheet Ingredients."));
        }
        return counted(line, ingredient, ingredient.listPack());
    }

    /** A line that counts cases cannot be priced by a list pack of one bottle; one that counts bottles takes one of a case. */
    private @Nullable Pack counted(InvoiceLine line, Ingredient ingredient, @Nullable Pack listed) {
        String word = Folding.words(line.packText());
        if (listed == null) {
            return null;
        }
        boolean several = !listed.units().equals(Exact.ONE);
        if (CASES.contains(word) && !several) {
            problems.add(Problem.fault(
                    ProblemKind.PACK_UNREADABLE,
                    line.place(),
                    line.packText(),
                    "The line counts packs of several, but the list pack of " + ingredient.name()
                            + " is a single one, so the line prices nothing.",
                    "Write how many the pack holds, like 6 x 70cl."));
            return null;
        }
        return BOTTLES.contains(word) && several
                ? new Pack(Exact.ONE, listed.unitSize(), word, line.packText())
                : listed;
    }

    private @Nullable Exact baseQuantity(
            InvoiceLine line, @Nullable Pack pack, @Nullable Ingredient ingredient, Exact times) {
        if (ingredient == null) {
            return null;
        }
        if (line.quantity().isZero()) {
            return Exact.ZERO;
        }
        if (pack == null) {
            return null;
        }
        Traits.Converted held = traits.computeIfAbsent(ingredient.name(), name -> Traits.of(ingredient))
                .toMeasure(pack.total());
        if (held.value() == null) {
            problems.add(Conversions.unfit(
                    line.place(), pack.text(), ingredient.name(), ingredient.measure(), held.missing(), pack.total()));
            return null;
        }
        return held.value().times(line.quantity()).times(times);
    }
}
