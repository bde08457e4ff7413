package heeltap.quantity;

/**
 * A unit in which someone writes an amount.
 *
 * @param name the normal spelling, such as {@code fl oz}
 * @param kind what it measures
 * @param factor how many ml, g or pieces one unit is, exactly; 1 for serve, batch and part
 */
public record Unit(String name, Kind kind, Exact factor) {
    /** What a unit measures. */
    public enum Kind {
        /** In ml. */
        VOLUME,
        /** In g. */
        MASS,
        /** In pieces. */
        COUNT,
        /** Of a drink. */
        SERVE,
        /** Of a preparation. */
        BATCH,
        /** A share of the drink's serve. */
        PART
    }
}
