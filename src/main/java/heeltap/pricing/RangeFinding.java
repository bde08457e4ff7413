package heeltap.pricing;

/** Where a group's prices leave the principles. */
public enum RangeFinding {
    /** Highest over lowest price above 2.5 for up to nine drinks, above 3 for more. */
    TOO_WIDE,
    /** Fewer prices in the middle band than in the two others together. */
    MIDDLE_TOO_THIN,
    /** More prices in the high band than in the low one. */
    MORE_HIGH_THAN_LOW,
    /** Average price paid below 0.9 of the average offered: guests look for cheaper drinks than the menu has. */
    PAID_BELOW,
    /** Average price paid above the average offered: guests would take dearer ones. */
    PAID_ABOVE,
    /** No price was paid, so nothing is said about the response. */
    NOTHING_SOLD
}
