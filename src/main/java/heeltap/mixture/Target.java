package heeltap.mixture;

/**
 * A line {@code to target}: how much of an ingredient is to be added until the liquid holds so much of something.
 *
 * @param kind what the target is for
 * @param value of an acid g per 100 ml, of salt and sugar % by mass of the finished liquid (for sugar that is °Brix)
 * @param added the name of the ingredient that is added, for the reasons
 * @param perGram contents of one g of it
 */
public record Target(Kind kind, double value, String added, Contents perGram) {
    /** What a target is for. */
    public enum Kind {
        CITRIC("citric acid", false),
        MALIC("malic acid", false),
        TARTARIC("tartaric acid", false),
        SALT("salt", true),
        SUGAR("sugar", true);

        private final String word;
        private final boolean byMass;

        Kind(String word, boolean byMass) {
            this.word = word;
            this.byMass = byMass;
        }

        /** For sentences: "citric acid". */
        public String word() {
            return word;
        }

        /** Whether the target is % by mass; else it is g per 100 ml. */
        public boolean byMass() {
            return byMass;
        }

        /** g of it in some contents. */
        public double in(Contents contents) {
            return switch (this) {
                case CITRIC -> contents.citricG();
                case MALIC -> contents.malicG();
                case TARTARIC -> contents.tartaricG();
                case SALT -> contents.saltG();
                case SUGAR -> contents.sugarG();
            };
        }

        /** How strong some contents are, in the target's own terms. */
        double strength(Contents contents) {
            return byMass ? contents.massPercent(in(contents)) : contents.per100Ml(in(contents));
        }

        String unit() {
            return byMass ? "% by mass" : "g per 100 ml";
        }
    }
}
