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

    /** A whole page holds up to eighty drinks. */
    @Property(tries = 12)
    void everyDrinkOfALargeMenuIsNamedOnAPage(@ForAll @IntRange(min = 5, max = 80) int drinks, @ForAll long seed) {
        everyNameStandsFree(menu(drinks, new Random(seed)), 742, 439);
    }

    /** So does what the heading of a section leaves of a page. */
    @Property(tries = 12)
    void everyDrinkOfALargeMenuIsNamedUnderAHeading(
            @ForAll @IntRange(min = 5, max = 80) int drinks, @ForAll long seed) {
        everyNameStandsFree(menu(drinks, new Random(seed)), 742, 350);
    }

    /** Half a page holds up to twenty-five. */
    @Property(tries = 8)
    void everyDrinkOfASmallMenuIsNamedOnHalfAPage(@ForAll @IntRange(min = 1, max = 25) int drinks, @ForAll long seed) {
        everyNameStandsFree(menu(drinks, new Random(seed)), 357, 357);
    }

    private static void everyNameStandsFree(ScatterChart chart, float width, float height) {
        ScatterDrawing drawing = new ScatterDrawing(FACES, PRINTING, chart, width, height);
        ScatterFrame frame = drawing.frame();
        assertThat(drawing.unnamed()).isEmpty();
        List<Rectangle2D> names = drawing.places().stream()
                .flatMap(Optional::stream)
                .map(Place::box)
                .toList();
        assertThat(names).hasSize(chart.points().size());
        List<Rectangle2D> others = new ArrayList<>(frame.cuts());
        frame.quarters().forEach(quarter -> others.add(quarter.box()));
        chart.points().forEach(point -> others.add(mark(frame, point)));
        for (int i = 0; i < names.size(); i++) {
            Rectangle2D name = names.get(i);
            assertThat(frame.data().contains(name))
                    .as("%s leaves the plot", name)
                    .isTrue();
            assertThat(names.subList(0, i)).noneMatch(name::intersects);
            assertThat(others).noneMatch(name::intersects);
        }
    }

    /** Inside the mark's outline whatever its shape. */
    private static Rectangle2D mark(ScatterFrame frame, Point point) {
        double radius = frame.radius(point) * 0.7; // the square inside the circle
        return new Rectangle2D.Double(frame.x(point) - radius, frame.y(point) - radius, 2 * radius, 2 * radius);
    }

    /** The words of the quarters lie on no mark, no line and not on each other. */
    @Property(tries = 12)
    void theQuartersWordsLieOnNothing(@ForAll @IntRange(min = 1, max = 80) int drinks, @ForAll long seed) {
        ScatterChart chart = menu(drinks, new Random(seed));
        for (float width : new float[] {357, 742}) {
            ScatterFrame frame = new ScatterFrame(FACES, PRINTING, chart, width, 340);
            List<Rectangle2D> words =
                    frame.quarters().stream().map(ScatterFrame.Quarter::box).toList();
            assertThat(words).hasSize(4);
            for (int i = 0; i < 4; i++) {
                assertThat(frame.data().contains(words.get(i))).isTrue();
                assertThat(frame.cuts()).noneMatch(words.get(i)::intersects);
                assertThat(words.subList(0, i)).noneMatch(words.get(i)::intersects);
                for (Point point : chart.points()) {
                    assertThat(words.get(i).intersects(mark(frame, point))).isFalse();
                }
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
                List.of(
                        "costly, little asked for",
                        "costly, much asked for",
                        "thrifty, little asked for",
                        "thrifty, much asked for"),
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
