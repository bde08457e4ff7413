package heeltap.review;

import heeltap.cost.Glass;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Exact;
import heeltap.review.CheaperWay.Way;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import java.util.List;
import java.util.Locale;

/** The table of lines that drive the cost where a price does not mend it, with cheaper ways to taste. */
final class CheaperTable {
    private CheaperTable() {}

    static Table of(List<CheaperWay> ways, Words words) {
        Filling table = Shapes.CHEAPER_WAYS.fill(words.texts()).formula("saving_a_month", "{saving_a_serve}*{served}");
        for (CheaperWay way : ways) {
            Cells cells = new Cells()
                    .set("drink", CellValue.of(way.drink()))
                    .set("cost_percent_new", CellValue.of(way.costPercent()))
                    .set("target_cost_percent", CellValue.of(way.targetPercent()))
                    .set("ingredient", CellValue.of(way.line().ingredient()))
                    .set("written", CellValue.of(way.line().written()))
                    .set("cost", CellValue.of(way.line().cost()))
                    .set("share_percent", CellValue.of(way.sharePercent()));
            way.way().ifPresent(one -> fill(way, one, cells, words));
            table.add(way.way().isPresent() ? Emphasis.PLAIN : Emphasis.FAINT, cells);
        }
        return table.done();
    }

    private static void fill(CheaperWay way, Way one, Cells cells, Words words) {
        Glass now = way.now().glass();
        Glass then = one.then().glass();
        cells.set("way", CellValue.of(sentence(way, one, words)))
                .set("cost_after", DrinkTable.money(one.then().cost()))
                .set("saving_a_serve", DrinkTable.money(way.savingAServe()))
                .set("served", CellValue.of(way.units()))
                .set("saving_a_month", DrinkTable.money(way.savingAMonth()))
                .set("alcohol_g_change", change(now.alcoholG(), then.alcoholG()))
                .set("sugar_g_change", change(now.sugarG(), then.sugarG()))
                .set("acid_g_change", change(now.acidityAsCitricG(), then.acidityAsCitricG()))
                .set(
                        "labour_change",
                        CellValue.of(one.then().labour().minus(way.now().labour())))
                .set("new_allergens", CellValue.of(String.join("; ", way.newAllergens())));
    }

    private static CellValue change(double now, double then) {
        return CellValue.of(Exact.ofPhysical(then - now));
    }

    /** Worded for a person to taste. */
    static String sentence(CheaperWay way, Way one, Words words) {
        return words.say(
                "way." + one.kind().name().toLowerCase(Locale.ROOT),
                way.line().ingredient(),
                one.instead().ingredient(),
                way.line().written(),
                (one.instead().amountText() + " " + one.instead().unit()).trim());
    }
}
