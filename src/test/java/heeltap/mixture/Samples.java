package heeltap.mixture;

import heeltap.quantity.Exact;
import org.jspecify.annotations.Nullable;

/** Ingredients that several tests use: one g or one ml of each. */
final class Samples {
    static final Contents SUGAR =
            analysis(null, null, "100", null, null, null, null).ofGram();
    static final Contents CITRIC =
            analysis(null, null, null, "100", null, null, null).ofGram();
    static final Contents MALIC =
            analysis(null, null, null, null, "100", null, null).ofGram();
    static final Contents TARTARIC =
            analysis(null, null, null, null, null, "100", null).ofGram();
    static final Contents SALT =
            analysis(null, null, null, null, null, null, "100").ofGram();
    static final Contents WATER_ML =
            analysis(null, "0", null, null, null, null, null).ofMl();
    static final Contents SPIRIT_ML =
            analysis(null, "40", null, null, null, null, null).ofMl();
    /** With 4.586 g of citric acid per 100 ml (Penniston et al. 2008) and USDA's density and sugars. */
    static final Contents LIME_ML =
            analysis("1.0229", null, "1.73", "4.586", null, null, null).ofMl();

    private Samples() {}

    static Analysis analysis(
            @Nullable String density,
            @Nullable String abv,
            @Nullable String sugar,
            @Nullable String citric,
            @Nullable String malic,
            @Nullable String tartaric,
            @Nullable String salt) {
        return new Analysis(
                exact(density),
                exact(abv),
                exact(sugar),
                exact(citric),
                exact(malic),
                exact(tartaric),
                null,
                exact(salt));
    }

    private static @Nullable Exact exact(@Nullable String text) {
        return text == null ? null : Exact.of(text);
    }
}
