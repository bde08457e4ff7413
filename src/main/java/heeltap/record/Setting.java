package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalTime;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One setting of the book: its name, type, default and meaning in one place, for the reader, the blank template and the
 * messages alike.
 *
 * @param name as it stands in the column {@code Setting}
 * @param type the class of its value
 * @param required whether the book must have it
 * @param standard the value where the book has none; null where there is none
 * @param standardText the default as a person would type it; empty where there is none
 * @param meaning one line for the blank template
 */
public record Setting<T>(
        String name,
        Class<T> type,
        boolean required,
        @Nullable T standard,
        String standardText,
        String meaning) {
    private static final String END = "°C, or where it freezes if that is warmer (common practice)";
    private static final String HEAT = "kJ to 100 g of drink from tin, hands and air (common practice: left out)";

    public static final Setting<String> BAR =
            optional("bar", String.class, "printed on the reports; else the folder's name");
    public static final Setting<Currency> CURRENCY =
            required("currency", Currency.class, "ISO 4217 code, such as EUR; its minor unit gives the decimals");
    public static final Setting<Locale> LANGUAGE = standard(
            "language", Locale.class, Locale.ENGLISH, "en", "language tag: how numbers, dates and money are printed");
    public static final Setting<Boolean> MENU_PRICES_INCLUDE_TAX =
            required("menu prices include tax", Boolean.class, "yes or no");
    public static final Setting<Exact> SALES_TAX_PERCENT =
            number("sales tax percent", "0", "for prices, and for sales that carry no tax column");
    public static final Setting<Boolean> INVOICE_PRICES_INCLUDE_TAX =
            standard("invoice prices include tax", Boolean.class, false, "no", "yes or no, with invoice tax percent");
    public static final Setting<Exact> INVOICE_TAX_PERCENT =
            number("invoice tax percent", "0", "for invoices that carry no tax column");
    public static final Setting<PriceRule> DRINK_COST_PRICE = standard(
            "drink cost price",
            PriceRule.class,
            PriceRule.LATEST,
            "latest",
            "latest, average or fifo: which invoice price costs the drinks");
    public static final Setting<PriceRule> STOCK_VALUE_PRICE = standard(
            "stock value price",
            PriceRule.class,
            PriceRule.AVERAGE,
            "average",
            "average, fifo or latest: which values stock and cost of goods used");
    public static final Setting<Exact> TARGET_COST_PERCENT =
            number("target cost percent", "22", "where the category sets none");
    public static final Setting<Money> LABOUR_COST_PER_HOUR = money("labour cost per hour", "0", "0 leaves labour out");
    public static final Setting<Exact> POPULARITY_RULE_PERCENT =
            number("popularity rule percent", "70", "share of the equal share from which a drink counts as popular");
    public static final Setting<Money> PRICE_STEP = money("price step", "0.50", "suggested prices are multiples of it");

    @SuppressWarnings({"unchecked", "rawtypes"})
    public static final Setting<List<Money>> PRICE_ENDINGS = (Setting) new Setting<List>(
            "price endings", List.class, false, List.of(), "", "such as .00 .50 or .95; overrides the step");

    public static final Setting<Exact> LARGEST_PRICE_CHANGE_PERCENT =
            number("largest price change percent", "8", "in one review");
    public static final Setting<Money> LOWEST_PRICE_PER_GRAM =
            money("legal lowest price per gram of alcohol", "0", "tax-inclusive floor, 0 is none: see local law");
    public static final Setting<Exact> STANDARD_DRINK_GRAMS =
            number("grams of alcohol in a standard drink", "10", "national definitions differ");
    public static final Setting<Exact> VARIANCE_TOLERANCE_PERCENT =
            number("variance tolerance percent", "2", "of theoretical use");
    public static final Setting<Exact> PRICE_MOVE_PERCENT = number(
            "price move percent", "5", "a purchase whose price moved more than this since the one before is a finding");
    public static final Setting<Exact> SLOW_STOCK_DAYS =
            number("slow stock days", "60", "stock that lasts for more days than this at the month's use is slow");
    public static final Setting<LocalTime> DAY_STARTS_AT = standard(
            "day starts at",
            LocalTime.class,
            LocalTime.of(5, 0),
            "05:00",
            "sales before this hour belong to the day before");
    public static final Setting<Exact> LARGEST_AVERAGE_RISE_PERCENT = optional(
            "largest average price rise percent",
            Exact.class,
            "cap on a group's average rise in one review, weighted by units sold");
    public static final Setting<Exact> LEAST_CHANCE_PERCENT = number(
            "least chance of gain percent", "70", "a change is suggested only if its chance to pay is at least this");
    public static final Setting<Money> LEAST_GAIN =
            money("least gain a month", "0", "smaller expected gains are not worth a new menu");
    public static final Setting<Exact> GROUP_ELASTICITY = optional(
            "group price elasticity",
            Exact.class,
            "such as -0.8: how a group's sales answer its prices; else published means, marked as such");
    public static final Setting<Exact> TASTE_TOLERANCE_PERCENT = number(
            "taste tolerance percent",
            "10",
            "how far a cheaper way to make a drink may move its alcohol, sugar and acidity");
    public static final Setting<PublishedElasticity> PUBLISHED_ELASTICITY = standard(
            "published price elasticity",
            PublishedElasticity.class,
            PublishedElasticity.REPORTED,
            "reported",
            "reported (means of what studies found) or corrected (for publication bias; smaller)");
    public static final Setting<Exact> VARIABLE_COST_PERCENT = number(
            "variable cost percent",
            "30",
            "other variable cost in percent of sales, for the goal value method (an assumption of the bar)");
    public static final Setting<AcidTargets> ACID_TARGETS = standard(
            "acid targets",
            AcidTargets.class,
            AcidTargets.RULE,
            "rule",
            "rule (for each 100 ml of base, common practice) or exact (in the finished liquid)");
    public static final Setting<IceWater> WATER_FROM_ICE = standard(
            "water from ice",
            IceWater.class,
            IceWater.HEAT_BALANCE,
            "heat balance",
            "heat balance (where it is known what a drink is made of) or usual percent (of its method); a drink's own"
                    + " Water percent wins over both");
    public static final Setting<Exact> LIQUIDS_START_AT =
            number("liquids start at", "20", "°C, before they meet the ice (common practice)");
    public static final Setting<Exact> BUILT_LIQUIDS_START_AT =
            number("liquids of built drinks start at", "10", "°C, as most of them are chilled (common practice)");
    public static final Setting<Exact> ICE_STARTS_AT =
            number("ice starts at", "0", "°C: 0 for ice that lay in a bin, below 0 from the freezer (common practice)");
    public static final Setting<Exact> WET_ICE_PERCENT = number(
            "wet ice percent", "0", "water that clings to ice at 0 °C, in percent of its weight (common practice)");
    public static final Setting<Exact> ICE_TO_DRINK =
            number("weight of ice to drink", "1.5", "g of ice to one g of drink in the tin (common practice)");
    public static final Setting<Exact> ICE_TO_BUILT_DRINK =
            number("weight of ice to built drink", "1", "g of ice to one g of drink in the glass (common practice)");
    public static final Setting<Exact> SHAKEN_ENDS_AT = number("shaken drinks end at", "-4", END);
    public static final Setting<Exact> STIRRED_ENDS_AT = number("stirred drinks end at", "-2", END);
    public static final Setting<Exact> THROWN_ENDS_AT = number("thrown drinks end at", "0", END);
    public static final Setting<Exact> BUILT_ENDS_AT = number("built drinks end at", "3", END);
    public static final Setting<Exact> SHAKEN_HEAT = number("heat gained when shaken", "0", HEAT);
    public static final Setting<Exact> STIRRED_HEAT = number("heat gained when stirred", "0", HEAT);
    public static final Setting<Exact> THROWN_HEAT = number("heat gained when thrown", "0", HEAT);
    public static final Setting<Exact> BUILT_HEAT = number("heat gained when built", "0", HEAT);
    public static final Setting<Exact> RINSE_LEFT_PERCENT = number(
            "rinse left in glass percent",
            "20",
            "of a rinse, what is not poured out again and is drunk (common practice, no source); all of it is paid for");
    public static final Setting<Money> FIXED_COST_A_SERVE =
            optional("fixed cost a serve", Money.class, "for the contribution-margin price");
    public static final Setting<Exact> TARGET_PRIME_COST_PERCENT =
            optional("target prime cost percent", Exact.class, "cost and labour over price, for the prime-cost price");

    /** In the order of the blank template. */
    public static final List<Setting<?>> ALL = List.of(
            BAR,
            CURRENCY,
            LANGUAGE,
            MENU_PRICES_INCLUDE_TAX,
            SALES_TAX_PERCENT,
            INVOICE_PRICES_INCLUDE_TAX,
            INVOICE_TAX_PERCENT,
            DRINK_COST_PRICE,
            STOCK_VALUE_PRICE,
            TARGET_COST_PERCENT,
            LABOUR_COST_PER_HOUR,
            POPULARITY_RULE_PERCENT,
            PRICE_STEP,
            PRICE_ENDINGS,
            LARGEST_PRICE_CHANGE_PERCENT,
            LOWEST_PRICE_PER_GRAM,
            STANDARD_DRINK_GRAMS,
            VARIANCE_TOLERANCE_PERCENT,
            PRICE_MOVE_PERCENT,
            SLOW_STOCK_DAYS,
            DAY_STARTS_AT,
            LARGEST_AVERAGE_RISE_PERCENT,
            LEAST_CHANCE_PERCENT,
            LEAST_GAIN,
            GROUP_ELASTICITY,
            VARIABLE_COST_PERCENT,
            ACID_TARGETS,
            FIXED_COST_A_SERVE,
            TARGET_PRIME_COST_PERCENT,
            WATER_FROM_ICE,
            LIQUIDS_START_AT,
            BUILT_LIQUIDS_START_AT,
            ICE_STARTS_AT,
            WET_ICE_PERCENT,
            ICE_TO_DRINK,
            ICE_TO_BUILT_DRINK,
            SHAKEN_ENDS_AT,
            STIRRED_ENDS_AT,
            THROWN_ENDS_AT,
            BUILT_ENDS_AT,
            SHAKEN_HEAT,
            STIRRED_HEAT,
            THROWN_HEAT,
            BUILT_HEAT,
            PUBLISHED_ELASTICITY,
            TASTE_TOLERANCE_PERCENT,
            RINSE_LEFT_PERCENT);

    private static <T> Setting<T> required(String name, Class<T> type, String meaning) {
        return new Setting<>(name, type, true, null, "", meaning);
    }

    private static <T> Setting<T> optional(String name, Class<T> type, String meaning) {
        return new Setting<>(name, type, false, null, "", meaning);
    }

    private static <T> Setting<T> standard(String name, Class<T> type, T value, String text, String meaning) {
        return new Setting<>(name, type, false, value, text, meaning);
    }

    private static Setting<Exact> number(String name, String value, String meaning) {
        return standard(name, Exact.class, Exact.of(value), value, meaning);
    }

    private static Setting<Money> money(String name, String value, String meaning) {
        return standard(name, Money.class, Money.of(value), value, meaning);
    }
}
