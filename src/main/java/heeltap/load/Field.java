package heeltap.load;

import java.util.Locale;

/** The fields of the month's files, by the names of the sheet Columns. */
enum Field {
    ITEM,
    CODE,
    QUANTITY,
    DATE,
    TIME,
    TICKET,
    UNIT_PRICE,
    GROSS,
    DISCOUNT,
    NET,
    TAX,
    TAX_RATE,
    KIND,
    VOID,
    VOID_QUANTITY,
    VARIANT,
    SUPPLIER,
    INVOICE,
    PRODUCT,
    PACK,
    LINE_TOTAL,
    DEPOSIT,
    DELIVERY,
    INVOICE_TOTAL,
    CURRENCY,
    COUNT,
    UNIT,
    LOCATION,
    AMOUNT,
    REASON;

    static final int SIZE = values().length;

    /** Its place in arrays by field, which are faster than maps in the loop over rows. */
    @SuppressWarnings("EnumOrdinal")
    int at() {
        return ordinal();
    }

    /** {@code unit price}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether its cells hold numbers. */
    boolean isNumber() {
        return switch (this) {
            case QUANTITY,
                    VOID_QUANTITY,
                    UNIT_PRICE,
                    GROSS,
                    DISCOUNT,
                    NET,
                    TAX,
                    TAX_RATE,
                    LINE_TOTAL,
                    DEPOSIT,
                    DELIVERY,
                    INVOICE_TOTAL,
                    COUNT,
                    AMOUNT -> true;
            default -> false;
        };
    }
}
