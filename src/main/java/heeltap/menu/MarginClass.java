package heeltap.menu;

/** Kasavana and Smith, Menu Engineering, 1982: popularity against contribution margin. */
public enum MarginClass {
    STAR,
    PLOWHORSE,
    PUZZLE,
    DOG;

    static MarginClass of(boolean popular, boolean profitable) {
        if (popular) {
            return profitable ? STAR : PLOWHORSE;
        }
        return profitable ? PUZZLE : DOG;
    }
}
