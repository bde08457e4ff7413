package heeltap.menu;

/** Miller, Menu Pricing and Strategy, 1980: cost percent against popularity; the words from memory. */
public enum CostClass {
    WINNER,
    MARGINAL,
    LOSER;

    static CostClass of(boolean popular, boolean lowCost) {
        if (popular == lowCost) {
            return popular ? WINNER : LOSER;
        }
        return MARGINAL;
    }
}
