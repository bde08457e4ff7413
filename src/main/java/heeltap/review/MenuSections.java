package heeltap.review;

import heeltap.document.Block;
import heeltap.document.Table;
import heeltap.record.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The sections on drinks and on their prices. */
final class MenuSections {
    private final Tables tables;
    private final Words words;

    private MenuSections(Tables tables, Words words) {
        this.tables = tables;
        this.words = words;
    }

    static List<Block> drinks(ReviewFigures review, Tables tables, Words words) {
        return new MenuSections(tables, words).drinks(review);
    }

    static List<Block> prices(Tables tables, Words words) {
        return new MenuSections(tables, words).prices();
    }

    private List<Block> drinks(ReviewFigures review) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                view(
                        tables.drinks(),
                        "drink sold complimentary net_sales net_price cost cost_percent margin total_margin popularity_percent margin_class cost_class cost_margin_class certainty_percent"));
        blocks.add(text("drinks.read"));
        blocks.add(heading("drinks.doubt"));
        blocks.add(new Block.Points(List.of(
                names("drinks.on-the-line", review, DrinkRow::isOnTheLine),
                names("drinks.hang", review, row -> row.classed().hangsOnPopularityRule()),
                names("drinks.disagree", review, row -> row.classed().classes().disagree()))));
        if (review.book().settings().get(Setting.LABOUR_COST_PER_HOUR).isPositive()) {
            blocks.add(heading("drinks.labour"));
            blocks.add(text("drinks.labour.read"));
            blocks.add(view(
                    tables.drinks(),
                    "drink cost labour margin margin_after_labour margin_class margin_class_after_labour"));
        }
        blocks.add(heading("drinks.notes"));
        blocks.add(notes(review));
        return blocks;
    }

    /** A sentence with the drinks of which something holds, or that there are none. */
    private String names(String key, ReviewFigures review, Predicate<DrinkRow> holds) {
        List<String> names =
                review.rows().stream().filter(holds).map(DrinkRow::name).toList();
        return words.say(key, names.isEmpty() ? words.say("word.none") : String.join("; ", names));
    }

    private Block notes(ReviewFigures review) {
        List<String> notes = review.rows().stream()
                .filter(row -> !row.note().isEmpty())
                .map(row -> row.name() + ": " + row.note())
                .toList();
        return notes.isEmpty() ? text("drinks.no-notes") : new Block.Points(notes);
    }

    private List<Block> prices() {
        return List.of(
                text("prices.read"),
                view(
                        tables.prices(),
                        "drink price_now price_suggested change_percent expected_units_percent expected_margin_change margin_change_low margin_change_high reason"),
                new Block.Caution(words.say("caution.prices")),
                heading("table.price_groups.title"),
                view(
                        tables.priceGroups(),
                        "group drinks changed average_price_change_percent expected_margin_change margin_change_low margin_change_high chance_of_gain_percent"),
                heading("prices.each"),
                view(
                        tables.prices(),
                        "drink price_now price_suggested cost_percent_now cost_percent_new margin_now margin_new break_even_units_percent chance_of_gain_percent floor floor_reason"),
                heading("prices.compare"),
                text("prices.compare.read"),
                view(
                        tables.prices(),
                        "drink price_now price_suggested target_cost_price margin_price prime_cost_price elasticity_low elasticity elasticity_high elasticity_source"),
                heading("table.cheaper_ways.title"),
                tables.cheaperWays().rows().isEmpty()
                        ? text("cheaper.none")
                        : view(
                                tables.cheaperWays(),
                                "drink cost_percent_new target_cost_percent ingredient written cost share_percent way saving_a_serve saving_a_month labour_change new_allergens"),
                new Block.Caution(words.say("caution.cheaper")),
                heading("table.demand.title"),
                text("demand.read"),
                view(
                        tables.demand(),
                        "group months price_changes made_of published_reported published_corrected prior prior_source elasticity_low elasticity elasticity_high elasticity_source"),
                heading("table.last_review.title"),
                tables.lastReview().rows().isEmpty()
                        ? text("last-review.none")
                        : view(
                                tables.lastReview(),
                                "drink price_before price_now units_expected units_low units_high sold inside"),
                heading("table.price_range.title"),
                text("price-range.read"),
                view(
                        tables.priceRange(),
                        "group items lowest highest range_ratio low_band middle_band high_band offered_average sold_average response_ratio finding"));
    }

    private static Block.TableView view(Table table, String keys) {
        return new Block.TableView(table, List.of(keys.split(" ", -1)));
    }

    private Block text(String key) {
        return new Block.Paragraph(words.say(key));
    }

    private Block heading(String key) {
        return new Block.Heading(words.say(key));
    }
}
