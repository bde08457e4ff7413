package heeltap.cost;

/** Where an ingredient's price comes from. */
public enum PriceBasis {
    LATEST("latest"),
    AVERAGE("average"),
    FIFO("fifo"),
    EARLIER_MONTH("earlier month"),
    LIST("list"),
    NONE("none");

    private final String text;

    PriceBasis(String text) {
        this.text = text;
    }

    /** As the tables print it. */
    public String text() {
        return text;
    }
}
