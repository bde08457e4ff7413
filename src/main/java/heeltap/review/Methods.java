package heeltap.review;

import heeltap.document.Block;
import java.util.ArrayList;
import java.util.List;

/** How each figure is computed, with its source. */
final class Methods {
    private static final List<String> TOPICS = List.of(
            "net",
            "cost",
            "fruit",
            "prices",
            "kasavana-smith",
            "miller",
            "pavesic",
            "hayes-huffman",
            "days",
            "certainty",
            "target",
            "demand",
            "cheaper",
            "break-even",
            "omnes",
            "stock",
            "valuation",
            "turnover",
            "orders",
            "variances",
            "mixtures",
            "acids",
            "water",
            "alcohol",
            "practice");

    private Methods() {}

    static List<Block> blocks(Words words) {
        List<Block> blocks = new ArrayList<>();
        for (String topic : TOPICS) {
            blocks.add(new Block.Heading(words.say("method." + topic + ".title")));
            blocks.add(new Block.Paragraph(words.say("method." + topic)));
        }
        return blocks;
    }
}
