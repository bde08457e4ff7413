package heeltap.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import heeltap.document.Finding;
import heeltap.quantity.Money;
import heeltap.report.ReportFiles;
import heeltap.review.Reviews.Review;
import heeltap.review.Reviews.Summary;
import heeltap.source.Problem;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Optional;

/** The summary for scripts: one JSON object (RFC 8259). README names its keys; they stay, new ones may come. */
final class SummaryJson {
    private static final int PERCENT_DECIMALS = 6;

    private SummaryJson() {}

    /** @param reports empty where nothing was written */
    static void print(String command, Review review, Optional<ReportFiles.Written> reports, Screen screen) {
        StringWriter text = new StringWriter();
        // the same line ends everywhere, whatever the system's own
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(indenter)
                .withArrayIndenter(indenter);
        try (JsonGenerator json = new JsonFactory().createGenerator(text).setPrettyPrinter(printer)) {
            write(command, review, reports, json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        screen.stream().print(text + "\n");
    }

    private static void write(String command, Review review, Optional<ReportFiles.Written> reports, JsonGenerator json)
            throws IOException {
        Summary summary = review.summary();
        Currency currency = review.document().currency();
        json.writeStartObject();
        json.writeStringField("command", command);
        json.writeStringField("bar", review.document().bar());
        json.writeStringField("month", review.document().month().toString());
        json.writeStringField("language", review.document().language().toLanguageTag());
        json.writeStringField("currency", currency.getCurrencyCode());
        json.writeNumberField("files_read", summary.filesRead());
        json.writeNumberField("rows_set_aside", summary.rowsSetAside());
        money("till_money", summary.tillMoney(), currency, json);
        money("joined_money", summary.joinedMoney(), currency, json);
        money("set_aside_money", summary.tillMoney().minus(summary.joinedMoney()), currency, json);
        if (summary.joinedPercent().isPresent()) {
            json.writeNumberField(
                    "joined_percent", summary.joinedPercent().get().round(PERCENT_DECIMALS, RoundingMode.HALF_UP));
        } else {
            json.writeNullField("joined_percent");
        }
        json.writeNumberField("checks", summary.controls());
        json.writeNumberField("checks_held", summary.controlsHeld());
        json.writeNumberField("faults", count(review, Problem.Severity.FAULT));
        json.writeNumberField("notes", count(review, Problem.Severity.NOTICE));
        findings(summary, currency, json);
        reports(reports, json);
        json.writeEndObject();
    }

    private static void findings(Summary summary, Currency currency, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding :
                summary.findings().stream().limit(SummaryLines.FINDINGS).toList()) {
            json.writeStartObject();
            json.writeStringField("sentence", finding.sentence());
            Money amount = finding.amount();
            if (amount == null) {
                json.writeNullField("amount");
            } else {
                money("amount", amount, currency, json);
            }
            json.writeStringField("section", finding.section());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void reports(Optional<ReportFiles.Written> reports, JsonGenerator json) throws IOException {
        if (reports.isEmpty()) {
            json.writeNullField("reports");
            return;
        }
        json.writeObjectFieldStart("reports");
        json.writeStringField("pdf", reports.get().pdf().toString());
        json.writeStringField("workbook", reports.get().workbook().toString());
        json.writeStringField("tables", reports.get().tables().toString());
        json.writeEndObject();
    }

    private static void money(String key, Money money, Currency currency, JsonGenerator json) throws IOException {
        json.writeNumberField(key, money.rounded(currency));
    }

    private static long count(Review review, Problem.Severity severity) {
        return review.problems().stream()
                .filter(problem -> problem.severity() == severity)
                .count();
    }
}
