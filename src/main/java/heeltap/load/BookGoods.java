package heeltap.load;

import heeltap.load.Column.Need;
import heeltap.load.Column.OnFault;
import java.util.List;

/** The two sheets of the book that say what things are made of: what is bought, and what is made in house. */
final class BookGoods {
    private static final String PER_100 = "g per 100 ml, or per 100 g where Measure is g";

    static final Column INGREDIENT = Column.text("Ingredient", "Its name.").needs(Need.VALUE);
    static final Column GROUP = Column.text(
                    "Group", "Spirits, Wine, Beer, Soft, Fresh, Dry, Other or your own: for stock and cost of goods.")
            .standing("Other");
    static final Column MEASURE = Column.choice("Measure", "What it is costed and counted in.", "ml", "g", "each")
            .standing("ml")
            .costing(OnFault.ROW);
    static final Column DENSITY =
            Column.number("Density", "g/ml", ColumnBounds.DENSITY, "Needed where weight and volume meet.");
    static final Column ABV = Column.percent("ABV", ColumnBounds.TO_100, "Alcohol by volume.");
    static final Column SUGAR = content("Sugar");
    static final Column CITRIC = content("Citric acid");
    static final Column MALIC = content("Malic acid");
    static final Column TARTARIC = content("Tartaric acid");
    static final Column OTHER_ACID = content("Other acid");
    static final Column SALT = content("Salt");
    static final Column USABLE = Column.percent(
                    "Usable percent", ColumnBounds.ABOVE_0_TO_100, "What is left of what was bought.")
            .standing("100")
            .costing(OnFault.ROW);
    static final Column ALLERGENS = Column.text("Allergens", "With ; or , between them.");
    static final Column JUICE_ML =
            Column.number("Juice ml", "ml", ColumnBounds.POSITIVE, "What one piece yields, measured.");
    static final Column EACH_G = Column.number("Each g", "g", ColumnBounds.POSITIVE, "What one piece weighs.");
    static final Column LIST_PRICE = Column.money(
            "List price", ColumnBounds.NOT_NEGATIVE, "Of one List pack: used while no invoice has priced it.");
    static final Column LIST_PACK =
            Column.of("List pack", Column.Type.PACK, "Such as 70cl, 6 x 70cl, 5 kg, case of 40.");
    static final Column FULL_G =
            Column.number("Full bottle g", "g", ColumnBounds.POSITIVE, "To count open bottles by weight.");
    static final Column EMPTY_G =
            Column.number("Empty bottle g", "g", ColumnBounds.NOT_NEGATIVE, "To count open bottles by weight.");
    static final Column BOTTLE_ML =
            Column.number("Bottle ml", "ml", ColumnBounds.POSITIVE, "What a full bottle holds.");
    static final Column PAR = Column.number("Par", "the Measure", ColumnBounds.NOT_NEGATIVE, "Stock to keep.");
    static final Column PEEL_COST = Column.percent(
            "Peel cost percent",
            ColumnBounds.TO_100,
            "Of a piece both peeled and juiced in the month: what its peel, zest or twist bears of its cost, the juice the"
                    + " rest; empty: nothing.");
    static final ColumnTable INGREDIENTS = new ColumnTable(
            "Ingredients",
            false,
            "What the bar buys.",
            List.of(
                    INGREDIENT,
                    GROUP,
                    MEASURE,
                    DENSITY,
                    ABV,
                    SUGAR,
                    CITRIC,
                    MALIC,
                    TARTARIC,
                    OTHER_ACID,
                    SALT,
                    USABLE,
                    ALLERGENS,
                    JUICE_ML,
                    EACH_G,
                    LIST_PRICE,
                    LIST_PACK,
                    FULL_G,
                    EMPTY_G,
                    BOTTLE_ML,
                    PAR,
                    PEEL_COST));

    static final Column PREPARATION = Column.text("Preparation", "Its name.").needs(Need.VALUE);
    static final Column MAKES = Column.number(
                    "Makes",
                    "",
                    ColumnBounds.POSITIVE,
                    "The measured yield of its spec; empty: computed from the lines.")
            .costing(OnFault.ITEM);
    static final Column MAKES_UNIT =
            Column.of("Unit", Column.Type.UNIT, "Of Makes; empty: the Measure.").costing(OnFault.ITEM);
    static final Column LOSS = Column.percent(
                    "Loss percent", ColumnBounds.BELOW_100, "Off a computed yield, such as what stays in the strainer.")
            .standing("0")
            .costing(OnFault.ITEM);
    static final Column BATCH_MINUTES = Column.number(
                    "Minutes", "minutes", ColumnBounds.NOT_NEGATIVE, "Labour a batch.")
            .standing("0");
    static final Column KEEPS = Column.number("Keeps days", "days", ColumnBounds.NOT_NEGATIVE, "How long it keeps.");
    static final Column TARGET_CITRIC = target("Target citric", "g per 100 ml of the base liquid");
    static final Column TARGET_MALIC = target("Target malic", "g per 100 ml of the base liquid");
    static final Column TARGET_SALT = target("Target salt", "% by mass of the finished liquid");
    static final Column TARGET_SUGAR = target("Target sugar", "% by mass of the finished liquid");
    static final Column PREPARATION_MEASURE = MEASURE.costing(OnFault.ITEM);
    static final Column CAUTION = Column.text("Caution", "Printed on its sheet.");
    static final ColumnTable PREPARATIONS = new ColumnTable(
            "Preparations",
            false,
            "What the bar makes itself: juices, syrups, infusions, batches. Their lines stand in Specs.",
            List.of(
                    PREPARATION,
                    MAKES,
                    MAKES_UNIT,
                    LOSS,
                    BATCH_MINUTES,
                    KEEPS,
                    TARGET_CITRIC,
                    TARGET_MALIC,
                    TARGET_SALT,
                    TARGET_SUGAR,
                    PREPARATION_MEASURE,
                    CAUTION));

    private BookGoods() {}

    private static Column content(String heading) {
        return Column.number(heading, PER_100, ColumnBounds.NOT_NEGATIVE, "What it contains; empty: not known.");
    }

    private static Column target(String heading, String unit) {
        return Column.number(heading, unit, ColumnBounds.TO_100, "For lines whose amount is to target.");
    }
}
