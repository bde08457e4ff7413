package heeltap.cost;

/** What says how much water a drink takes from ice. */
public enum WaterFrom {
    /** The drink's own {@code Water percent}. */
    DRINK("own percent"),
    HEAT_BALANCE("heat balance"),
    /** The usual percent of its method; common practice, no source. */
    METHOD("usual percent"),
    /** Its method uses no ice. */
    NOTHING("none");

    private final String text;

    WaterFrom(String text) {
        this.text = text;
    }

    /** As the tables print it. */
    public String text() {
        return text;
    }
}
