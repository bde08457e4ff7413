package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.Format;
import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.quantity.Exact;
import heeltap.report.LabelPlacement.Place;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LabelPlacementTest {
    private static final Faces FACES = new Faces();
    private static final Printing PRINTING = new Printing(Locale.ENGLISH, Currency.getInstance("EUR"));

    @Property(tries = 16)
    void everyDrinkIsNamedWithoutOverlap(@ForAll @IntRange(min = 5, max = 80) int drinks, @ForAll long seed) {
        ScatterChart chart = menu(drinks, new Random(seed));
        ScatterDrawing drawing = new ScatterDrawing(FACES, PRINTING, chart, 495, 425);
        assertThat(drawing.unnamed()).isEmpty();
        List<Place> places = drawing.places().stream().flatMap(Optional::stream).toList();
        assertThat(places).hasSize(drinks);
        for (int i = 0; i < drinks; i++) {
            Rectangle2D box = places.get(i).box();
            assertThat(drawing.data().contains(box))
                    .as("%s leaves the plot", box)
                    .isTrue();
            for (int j = 0; j < i; j++) {
                assertThat(box.intersects(places.get(j).box()))
                        .as("%s over %s", box, places.get(j).box())
                        .isFalse();
            }
        }
    }

    @Property(tries = 2)
    void moreNamesThanFitAreListedInstead(@ForAll long seed) {
        ScatterChart chart = menu(120, new Random(seed));
        ScatterDrawing drawing = new ScatterDrawing(FACES, PRINTING, chart, 220, 190);
        long named = drawing.places().stream().filter(Optional::isPresent).count();
        assertThat(drawing.unnamed()).isNotEmpty().hasSize((int) (120 - named));
    }

    /** Popular drinks few, most crowded together, as menus are. */
    private static ScatterChart menu(int drinks, Random random) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < drinks; i++) {
            double sold = Math.exp(random.nextGaussian()) * 40;
            double percent = 22 + random.nextGaussian() * 5;
            points.add(new Point(
                    name(i, random),
                    Exact.ofPhysical(sold),
                    Exact.ofPhysical(percent),
                    new Kind(i % 4, "kind " + i % 4),
                    Exact.ofPhysical(sold * 8),
                    i % 5 != 0));
        }
        return new ScatterChart(
                "menu",
                "Menu",
                "",
                "paid units",
                "cost percent",
                Format.COUNT,
                Format.PERCENT,
                points,
                List.of(new Cut(Exact.of(35), "70 % of an equal share")),
                List.of(new Cut(Exact.of(22), "target 22 %")),
                List.of("a", "b", "c", "d"),
                "",
                "",
                "");
    }

    private static String name(int number, Random random) {
        String[] parts = {"Harbour", "Sour", "Old", "Brine", "Crème", "Северное", "Ζέφυρος", "Lighthouse", "Keeper's"};
        StringBuilder name = new StringBuilder("D" + number);
        for (int i = random.nextInt(4); i > 0; i--) {
            name.append(' ').append(parts[random.nextInt(parts.length)]);
        }
        return name.toString();
    }
}
