package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.record.SaleKind;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * The numbers, the day and the kind of one sales row, read from its fields; filled anew for each row. Money as printed is
 * gross less discount, else net, else quantity times price.
 */
final class SaleRow {
    private final Layout layout;
    private final Reading reading;
    private final Fields fields;
    private final PriceList prices;
    private final SectionDate sections;
    private final boolean anyMoney;
    private final boolean pricesIncludeTax;
    private final @Nullable BigDecimal taxPercent;
    private final LocalTime dayStart;
    private final String currency;

    private boolean section;
    private @Nullable String misfit;

    @Nullable BigDecimal quantity;

    @Nullable BigDecimal money;
    /** What the till itself says of tax in the row, beside {@link #rate}; null: nothing. */
    @Nullable BigDecimal tax;

    /** Without tax where {@link #rate} is null. */
    @Nullable BigDecimal net;

    @Nullable BigDecimal rate;

    Reading.@Nullable Moment moment;

    @Nullable LocalDate day;

    SaleKind kind = SaleKind.SALE;

    @Nullable Flaw flaw;

    /**
     * Why a row cannot be read.
     *
     * @param field where; null for the whole row
     * @param reason one sentence
     */
    record Flaw(ProblemKind kind, @Nullable Field field, String raw, String reason) {}

    SaleRow(Layout layout, Reading reading, Fields fields, PriceList prices, MonthContext context) {
        Settings settings = context.settings();
        this.sections = new SectionDate(layout, reading, context.month());
        this.layout = layout;
        this.reading = reading;
        this.fields = fields;
        this.prices = prices;
        this.anyMoney = layout.hasAny(Field.GROSS, Field.NET, Field.UNIT_PRICE);
        this.pricesIncludeTax = settings.find(Setting.MENU_PRICES_INCLUDE_TAX).orElse(false);
        this.taxPercent = decimal(settings.get(Setting.SALES_TAX_PERCENT));
        this.dayStart = settings.get(Setting.DAY_STARTS_AT);
        this.currency = settings.get(Setting.CURRENCY).getCurrencyCode();
    }

    private static BigDecimal decimal(Exact percent) {
        return percent.round(12, RoundingMode.HALF_EVEN).stripTrailingZeros();
    }

    boolean hasMoney() {
        return anyMoney || money != null;
    }

    /** Takes the cells of the row. */
    void load(Row row) {
        fields.load(row);
        section = sections.take(row);
        misfit = reading.misfit(row, layout);
    }

    /** Whether the row is nothing but the date of the rows below it. */
    boolean isSectionDate() {
        return section;
    }

    /** Reads the row; {@link #flaw} says what is wrong with it, the first thing only. */
    void read(@Nullable SaleKind given, String code) {
        flaw = null;
        money = null;
        net = null;
        rate = null;
        tax = null;
        moment = null;
        day = null;
        kind = SaleKind.SALE;
        readQuantity();
        readMoney(code);
        readDay();
        readKind(given);
        if (misfit != null) {
            flaw = new Flaw(ProblemKind.VALUE_DOUBTFUL, null, "", misfit);
        }
    }

    private void readQuantity() {
        if (!layout.has(Field.QUANTITY)) {
            quantity = BigDecimal.ONE;
            return;
        }
        quantity = reading.number(fields, Field.QUANTITY);
        if (quantity == null) {
            flaw(Field.QUANTITY, "quantity");
        } else if (fields.has(Field.VOID_QUANTITY)) {
            BigDecimal voided = reading.number(fields, Field.VOID_QUANTITY);
            if (voided == null) {
                flaw(Field.VOID_QUANTITY, "voided quantity");
            } else {
                quantity = quantity.subtract(voided.abs());
            }
        }
    }

    private void readMoney(String code) {
        BigDecimal gross = number(Field.GROSS);
        BigDecimal price = number(Field.UNIT_PRICE);
        BigDecimal printedNet = number(Field.NET);
        boolean broken = flaw != null && flaw.field() != Field.QUANTITY;
        if (!anyMoney) {
            price = prices.price(code);
        }
        BigDecimal before = gross != null ? gross : price != null && quantity != null ? quantity.multiply(price) : null;
        BigDecimal discount = before == null ? null : discount(before);
        BigDecimal paid = before == null || discount == null ? before : less(before, discount);
        if (broken || (flaw != null && flaw.field() == Field.DISCOUNT)) {
            return;
        }
        if (discount != null && before != null && discount.compareTo(before.abs()) > 0) {
            setFlaw(
                    ProblemKind.VALUE_INVALID,
                    Field.DISCOUNT,
                    "The discount is larger than the money it is taken off.");
            return;
        }
        money = gross != null || printedNet == null ? paid : printedNet;
        if (printedNet != null) {
            net = printedNet;
            printedTax(printedNet);
        } else if (paid != null) {
            withoutTax(paid);
        } else if (anyMoney && quantity != null) {
            Field field = layout.has(Field.GROSS) ? Field.GROSS : layout.has(Field.NET) ? Field.NET : Field.UNIT_PRICE;
            setFlaw(ProblemKind.VALUE_MISSING, field, "The row has no money.");
        }
    }

    private @Nullable BigDecimal number(Field field) {
        Cell cell = fields.find(field);
        if (cell == null) {
            return null;
        }
        BigDecimal value = reading.number(cell, field);
        if (value == null) {
            flaw(field, field.word());
        } else if (isForeign(cell)) {
            setFlaw(ProblemKind.CURRENCY_OTHER, field, "The money is in another currency than " + currency + ".");
        }
        return value;
    }

    private boolean isForeign(Cell cell) {
        String mark = cell.number() != null ? "" : CurrencyMarks.in(cell.text());
        return !mark.isEmpty() && !mark.equals(currency) && !CurrencyMarks.isOf(mark, currency);
    }

    /** Always positive; a discount in percent is one of the money before it. */
    private @Nullable BigDecimal discount(BigDecimal before) {
        Cell cell = fields.find(Field.DISCOUNT);
        if (cell == null) {
            return null;
        }
        if (cell.text().indexOf('%') >= 0) {
            BigDecimal percent = reading.percent(cell, Field.DISCOUNT);
            if (percent != null) {
                return before.multiply(percent).movePointLeft(2).abs();
            }
        }
        BigDecimal value = reading.number(cell, Field.DISCOUNT);
        if (value == null) {
            flaw(Field.DISCOUNT, "discount");
        }
        return value == null ? null : value.abs();
    }

    private static BigDecimal less(BigDecimal before, BigDecimal discount) {
        return discount.signum() == 0 ? before : before.signum() < 0 ? before.add(discount) : before.subtract(discount);
    }

    /** An amount of tax beside a printed net, where guests read prices with it. */
    private void printedTax(BigDecimal printedNet) {
        Cell cell = fields.find(Field.TAX);
        if (pricesIncludeTax && cell != null && cell.text().indexOf('%') < 0) {
            BigDecimal amount = reading.number(cell, Field.TAX);
            tax = amount == null ? null : printedNet.signum() < 0 ? amount.abs().negate() : amount.abs();
        }
    }

    /** {@code net = paid - tax}, else {@code paid / (1 + rate/100)}, where menu prices include tax. */
    private void withoutTax(BigDecimal paid) {
        net = paid;
        if (!pricesIncludeTax) {
            return;
        }
        Cell rateCell = fields.find(Field.TAX_RATE);
        Cell taxCell = fields.find(Field.TAX);
        if (taxCell != null && taxCell.text().indexOf('%') < 0) {
            BigDecimal amount = reading.number(taxCell, Field.TAX);
            if (amount == null) {
                flaw(Field.TAX, "tax");
            } else {
                net = less(paid, amount.abs());
                tax = paid.subtract(net);
            }
            return;
        }
        Cell percent = taxCell != null ? taxCell : rateCell;
        rate = percent == null ? taxPercent : reading.percent(percent, taxCell != null ? Field.TAX : Field.TAX_RATE);
        if (rate == null) {
            flaw(taxCell != null ? Field.TAX : Field.TAX_RATE, "tax");
        } else if (rate.signum() == 0) {
            rate = null;
            tax = BigDecimal.ZERO;
        }
    }

    private void readDay() {
        Cell cell = fields.find(Field.DATE);
        Reading.Moment read = cell == null ? sections.present() : reading.moment(cell);
        if (read == null && !layout.has(Field.DATE)) {
            return;
        }
        if (read == null) {
            flaw(Field.DATE, "date");
            return;
        }
        Cell clock = reading.hasTimeColumn() ? fields.find(Field.TIME) : null;
        if (clock != null) {
            LocalTime time = Reading.time(clock);
            if (time == null) {
                flaw(Field.TIME, "time");
                return;
            }
            read = new Reading.Moment(read.date(), time);
        }
        moment = read;
        day = read.businessDay(dayStart);
    }

    private void readKind(@Nullable SaleKind given) {
        SaleKind said = given;
        if (reading.hasKinds() && fields.has(Field.KIND)) {
            said = reading.kind(fields.text(Field.KIND));
            if (said == null) {
                setFlaw(ProblemKind.VALUE_INVALID, Field.KIND, "The kind of sale is not known.");
            }
            said = given != null && said == SaleKind.SALE ? given : said;
        }
        if (reading.hasVoidMarks() && isMarkedVoid()) {
            said = SaleKind.VOID;
        }
        boolean back = (quantity != null && quantity.signum() < 0) || (money != null && money.signum() < 0);
        if (said == null) {
            boolean free =
                    hasMoney() && money != null && money.signum() == 0 && quantity != null && quantity.signum() != 0;
            kind = back ? SaleKind.REFUND : free ? SaleKind.COMPLIMENTARY : SaleKind.SALE;
        } else {
            kind = said == SaleKind.SALE && back ? SaleKind.REFUND : said;
        }
    }

    boolean isMarkedVoid() {
        return reading.hasVoidMarks() && fields.has(Field.VOID) && RowWords.is("yes", fields.text(Field.VOID));
    }

    private void flaw(Field field, String what) {
        boolean blank = !fields.has(field);
        setFlaw(
                blank ? ProblemKind.VALUE_MISSING : ProblemKind.VALUE_INVALID,
                field,
                blank ? "The " + what + " is missing." : "The " + what + " cannot be read.");
    }

    private void setFlaw(ProblemKind problem, Field field, String reason) {
        if (flaw == null) {
            flaw = new Flaw(problem, field, fields.text(field), reason);
        }
    }
}
