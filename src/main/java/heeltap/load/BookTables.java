package heeltap.load;

import heeltap.load.Column.Need;
import heeltap.load.Column.OnFault;
import java.util.List;

/** The sheets of the book. */
public final class BookTables {
    static final Column SETTING =
            Column.text("Setting", "The name of the setting.").needs(Need.VALUE);
    static final Column VALUE =
            Column.text("Value", "Its value; empty: the default.").needs(Need.HEADING);
    static final Column MEANING = Column.text("Meaning", "For the reader only; nothing is read from it.");
    public static final ColumnTable SETTINGS =
            new ColumnTable("Settings", true, "What holds for the whole bar.", List.of(SETTING, VALUE, MEANING));

    static final Column CATEGORY_NAME =
            Column.text("Category", "As the sheet Drinks names it.").needs(Need.VALUE);
    static final Column TARGET_COST = Column.percent(
            "Target cost percent",
            ColumnBounds.ABOVE_0_TO_100,
            "Cost in percent of the net price; empty: the setting.");
    static final Column COMPARE_WITHIN =
            Column.text("Compare within", "The group in which popularity is measured; empty: the category itself.");
    static final Column CATEGORY_ANALYSIS = Column.of(
                    "In menu analysis",
                    Column.Type.YES_NO,
                    "Whether its drinks are classed, where a drink does not say otherwise.")
            .standing("yes");
    static final Column ELASTICITY = Column.number(
            "Group price elasticity",
            "",
            ColumnBounds.NEGATIVE,
            "The group's own, such as -0.8: how its sales answer its prices; empty: the setting.");
    public static final ColumnTable CATEGORIES = new ColumnTable(
            "Categories",
            false,
            "Targets and groups of the menu's categories; a category without a row is allowed.",
            List.of(CATEGORY_NAME, TARGET_COST, COMPARE_WITHIN, CATEGORY_ANALYSIS, ELASTICITY));

    static final Column DRINK = Column.text("Drink", "Its name.").needs(Need.VALUE);
    static final Column PRICE = Column.money(
                    "Price", ColumnBounds.POSITIVE, "As the guest reads it; empty: shown, but not classed.")
            .needs(Need.HEADING);
    static final Column CATEGORY = Column.text("Category", "Where it stands on the menu.");
    static final Column CODE = Column.text("Code", "The till's code for it.");
    static final Column METHOD = Column.choice(
                    "Method",
                    "How it is mixed; decides the water from ice.",
                    "shaken",
                    "stirred",
                    "built",
                    "blended",
                    "thrown",
                    "none")
            .standing("none");
    static final Column WATER = Column.percent(
            "Water percent",
            ColumnBounds.NOT_NEGATIVE,
            "Water from ice in percent of the mixed volume; empty: as the setting water from ice says.");
    static final Column SERVE_ML = Column.number(
            "Serve ml", "ml", ColumnBounds.POSITIVE, "What a serve holds before ice: for lines to top and in parts.");
    static final Column MINUTES = Column.number("Minutes", "minutes", ColumnBounds.NOT_NEGATIVE, "Labour a serve.")
            .standing("0");
    static final Column ON_FROM =
            Column.of("On menu from", Column.Type.DATE, "First day on the menu; empty: always was.");
    static final Column ON_UNTIL =
            Column.of("On menu until", Column.Type.DATE, "Last day on the menu; empty: still is.");
    static final Column HOLD = Column.of("Hold price", Column.Type.YES_NO, "yes: never suggest another price.")
            .standing("no");
    static final Column FIXED_COST = Column.money(
            "Fixed cost", ColumnBounds.NOT_NEGATIVE, "What a serve of a bought-in item costs, instead of a spec.");
    static final Column DRINK_ANALYSIS =
            Column.of("In menu analysis", Column.Type.YES_NO, "Whether it is classed; empty: as its category says.");
    public static final ColumnTable DRINKS = new ColumnTable(
            "Drinks",
            true,
            "Everything on the menu: one row a drink.",
            List.of(
                    DRINK,
                    PRICE,
                    CATEGORY,
                    CODE,
                    METHOD,
                    WATER,
                    SERVE_ML,
                    MINUTES,
                    ON_FROM,
                    ON_UNTIL,
                    HOLD,
                    FIXED_COST,
                    DRINK_ANALYSIS));

    static final Column PRICE_DRINK =
            Column.text("Drink", "A drink of the sheet Drinks.").needs(Need.VALUE);
    static final Column PRICE_FROM =
            Column.of("From", Column.Type.DATE, "The first day of the price.").needs(Need.VALUE);
    static final Column DATED_PRICE = Column.money(
                    "Price", ColumnBounds.POSITIVE, "As the guest reads it from that day on.")
            .needs(Need.VALUE);
    public static final ColumnTable PRICES = new ColumnTable(
            "Prices",
            false,
            "Prices by date; from that day on they override the price in Drinks.",
            List.of(PRICE_DRINK, PRICE_FROM, DATED_PRICE));

    static final Column ITEM = Column.text("Item", "The drink or preparation that the line belongs to.")
            .needs(Need.VALUE);
    static final Column SPEC_FROM = Column.of(
                    "From", Column.Type.DATE, "First day of this version of the spec; empty: from the beginning.")
            .costing(OnFault.ITEM);
    static final Column SPEC_INGREDIENT = Column.text("Ingredient", "An ingredient, a preparation or another drink.")
            .needs(Need.VALUE)
            .costing(OnFault.ITEM);
    static final Column AMOUNT = Column.of(
                    "Amount", Column.Type.AMOUNT, "Such as 22.5, 3/4, 1 1/2, to top, to target, rinse, juice of 1/2.")
            .costing(OnFault.ITEM);
    static final Column UNIT = Column.of(
            "Unit",
            Column.Type.UNIT,
            "Such as ml, oz, dash, each, part, serve, batch; empty: the ingredient's measure.");
    static final Column WASTE = Column.percent("Waste percent", ColumnBounds.NOT_NEGATIVE, "Added to the amount.")
            .standing("0")
            .costing(OnFault.ITEM);
    static final Column NOTE = Column.text("Note", "For the spec card.");
    public static final ColumnTable SPECS = new ColumnTable(
            "Specs",
            false,
            "What is in a drink or preparation: one row a line.",
            List.of(ITEM, SPEC_FROM, SPEC_INGREDIENT, AMOUNT, UNIT, WASTE, NOTE));

    static final Column AS_WRITTEN = Column.text(
                    "As written", "The name in a sales export, on an invoice, a count or a list of losses.")
            .needs(Need.VALUE);
    static final Column MEANS =
            Column.text("Means", "A name of the book, or (ignore).").needs(Need.VALUE);
    static final Column IN = Column.choice("In", "In which files.", "sales", "invoices", "stock", "losses", "any")
            .standing("any")
            .costing(OnFault.ROW);
    static final Column TIMES = Column.number(
                    "Times", "", ColumnBounds.POSITIVE, "How many of it one is: a double is 2.")
            .standing("1")
            .costing(OnFault.ROW);
    public static final ColumnTable NAMES = new ColumnTable(
            "Names", false, "Other spellings of the book's names.", List.of(AS_WRITTEN, MEANS, IN, TIMES));

    static final Column FILE =
            Column.text("File", "How the names of the files begin.").needs(Need.VALUE);
    static final Column FIELD = Column.text("Field", "What the column holds, such as quantity or net.")
            .costing(OnFault.ROW);
    static final Column HEADING = Column.text("Heading", "The heading above it in the file.");
    static final Column DATES = Column.choice(
                    "Dates", "How dates are written.", "day-month", "month-day", "year-month-day")
            .costing(OnFault.ROW);
    static final Column DECIMALS = Column.choice("Decimals", "How decimals are written.", "point", "comma")
            .costing(OnFault.ROW);
    public static final ColumnTable COLUMNS = new ColumnTable(
            "Columns",
            false,
            "How to read a file where the program's own reading is not right.",
            List.of(FILE, FIELD, HEADING, DATES, DECIMALS));

    static final Column MEASURE_UNIT = Column.text(
                    "Unit", "Such as dash, drop, bar spoon, shot, or a measure of your own.")
            .needs(Need.VALUE);
    static final Column MEASURE_ML = Column.number(
                    "ml", "ml", ColumnBounds.POSITIVE, "What one of it holds; for a pinch what it weighs, in g.")
            .needs(Need.VALUE);
    public static final ColumnTable MEASURES = new ColumnTable(
            "Measures", false, "The bar's own size of measures without a standard.", List.of(MEASURE_UNIT, MEASURE_ML));

    static final Column ACCOUNT =
            Column.text("Account", "The program's name for it, such as Stock.").needs(Need.VALUE);
    static final Column ACCOUNT_NAME =
            Column.text("Name", "What your ledger calls it.").needs(Need.VALUE);
    public static final ColumnTable ACCOUNTS =
            new ColumnTable("Accounts", false, "Names of accounts for the journal.", List.of(ACCOUNT, ACCOUNT_NAME));

    /** In the order of the blank template. */
    public static final List<ColumnTable> ALL = List.of(
            SETTINGS,
            PRICES,
            CATEGORIES,
            BookGoods.INGREDIENTS,
            BookGoods.PREPARATIONS,
            DRINKS,
            SPECS,
            NAMES,
            COLUMNS,
            MEASURES,
            ACCOUNTS);

    private BookTables() {}
}
