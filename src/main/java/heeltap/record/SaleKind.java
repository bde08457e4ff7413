package heeltap.record;

/** What a sales row is about. */
public enum SaleKind {
    SALE,
    /** Money given back; the drink was poured. */
    REFUND,
    /** A row that never happened, or the row that takes it back. */
    VOID,
    /** Given away: use, not popularity. */
    COMPLIMENTARY
}
