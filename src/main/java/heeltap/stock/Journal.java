package heeltap.stock;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The month's entries for the ledger: what was booked to purchases when the invoices came is spread over stock, cost of
 * goods, deposits and tax. Debits equal credits exactly, each entry in the currency's decimals; purchases are what the
 * invoices come to, and the cents that rounding leaves go to the largest cost of goods. Common practice, no source:
 * periodic stock method.
 */
public final class Journal {
    private Journal() {}

    /**
     * One entry; one of debit and credit is zero.
     *
     * @param account the program's name of the account
     * @param group the ingredient group for cost of goods; empty otherwise
     */
    public record Entry(Account account, String group, Money debit, Money credit) {}

    /** The accounts; the bar may name them in the sheet Accounts. */
    public enum Account {
        STOCK("Stock"),
        COST_OF_GOODS("Cost of goods"),
        NOT_STOCK("Purchases not for stock"),
        UNEXPLAINED("Unexplained difference"),
        GIVEN_AWAY("Complimentary and staff"),
        TRANSFERS("Transfers"),
        DEPOSITS("Returnable deposits"),
        INPUT_TAX("Input tax"),
        PURCHASES("Purchases");

        private final String standardName;

        Account(String standardName) {
            this.standardName = standardName;
        }

        public String standardName() {
            return standardName;
        }
    }

    /**
     * The month in money.
     *
     * @param stockChange closing less opening value
     * @param costOfGoodsByGroup of everything sold and of losses that are not gifts, by ingredient group, in order
     * @param notStock invoice lines that the book says to leave aside
     * @param unexplained cost of use that nothing explains
     * @param givenAway complimentary serves, staff and complimentary pours
     * @param transfers value of goods that came from elsewhere in the house; negative: went there
     * @param deposits returnable deposits paid less those returned
     * @param inputTax recoverable tax on the invoices
     * @param invoices what all invoices come to, with deposits and tax
     * @param roundedParts of how many rounded figures the others are made: so many cents may be left
     */
    public record MonthMoney(
            Money stockChange,
            Map<String, Money> costOfGoodsByGroup,
            Money notStock,
            Money unexplained,
            Money givenAway,
            Money transfers,
            Money deposits,
            Money inputTax,
            Money invoices,
            int roundedParts) {}

    /**
     * The entries, those of zero left out; purchases last, as the sum of the others. More than rounding can leave stays in
     * purchases, so that they differ from the invoices for all to see.
     */
    public static List<Entry> of(MonthMoney month, Currency currency) {
        List<Entry> entries = entries(month, month.costOfGoodsByGroup(), currency);
        Money left = Money.of(month.invoices().rounded(currency)).minus(balance(entries));
        Money cents = Money.of(BigDecimal.ONE.movePointLeft(Math.max(0, currency.getDefaultFractionDigits())))
                .times(Exact.of(month.roundedParts() + (long) entries.size()));
        Optional<String> largest = month.costOfGoodsByGroup().entrySet().stream()
                .max(Comparator.comparing((Map.Entry<String, Money> group) ->
                                group.getValue().abs())
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey);
        if (!left.isZero() && left.abs().compareTo(cents) <= 0 && largest.isPresent()) {
            Map<String, Money> costOfGoods = new LinkedHashMap<>();
            month.costOfGoodsByGroup().forEach((group, cost) -> {
                Money rounded = Money.of(cost.rounded(currency));
                costOfGoods.put(group, group.equals(largest.get()) ? rounded.plus(left) : rounded);
            });
            entries = entries(month, costOfGoods, currency);
        }
        add(entries, Account.PURCHASES, "", balance(entries).negated(), currency);
        return List.copyOf(entries);
    }

    private static List<Entry> entries(MonthMoney month, Map<String, Money> costOfGoods, Currency currency) {
        List<Entry> entries = new ArrayList<>();
        add(entries, Account.STOCK, "", month.stockChange(), currency);
        costOfGoods.forEach((group, cost) -> add(entries, Account.COST_OF_GOODS, group, cost, currency));
        add(entries, Account.NOT_STOCK, "", month.notStock(), currency);
        add(entries, Account.UNEXPLAINED, "", month.unexplained(), currency);
        add(entries, Account.GIVEN_AWAY, "", month.givenAway(), currency);
        add(entries, Account.TRANSFERS, "", month.transfers().negated(), currency);
        add(entries, Account.DEPOSITS, "", month.deposits(), currency);
        add(entries, Account.INPUT_TAX, "", month.inputTax(), currency);
        return entries;
    }

    private static Money balance(List<Entry> entries) {
        Money balance = Money.ZERO;
        for (Entry entry : entries) {
            balance = balance.plus(entry.debit()).minus(entry.credit());
        }
        return balance;
    }

    private static void add(List<Entry> entries, Account account, String group, Money amount, Currency currency) {
        BigDecimal rounded = amount.rounded(currency);
        if (rounded.signum() != 0) {
            Money money = Money.of(rounded);
            entries.add(
                    rounded.signum() > 0
                            ? new Entry(account, group, money, Money.ZERO)
                            : new Entry(account, group, Money.ZERO, money.negated()));
        }
    }
}
