package heeltap.menu;

/** Pavesic, 1983 and 1985: cost percent against total margin. */
public enum CostMarginClass {
    PRIME,
    STANDARD,
    SLEEPER,
    PROBLEM;

    static CostMarginClass of(boolean lowCost, boolean highTotalMargin) {
        if (highTotalMargin) {
            return lowCost ? PRIME : STANDARD;
        }
        return lowCost ? SLEEPER : PROBLEM;
    }
}
