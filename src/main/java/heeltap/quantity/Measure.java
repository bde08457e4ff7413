package heeltap.quantity;

/** The base measure in which an ingredient is bought, costed and counted. */
public enum Measure {
    ML("ml"),
    G("g"),
    EACH("each");

    private final String symbol;

    Measure(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
