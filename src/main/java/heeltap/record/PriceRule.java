package heeltap.record;

/** Which invoice price costs the drinks, or values the stock. */
public enum PriceRule {
    LATEST,
    AVERAGE,
    FIFO
}
