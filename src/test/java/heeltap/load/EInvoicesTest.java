package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Packs;
import heeltap.record.Book;
import heeltap.record.Invoice;
import heeltap.record.KnownNames;
import heeltap.record.Month;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Electronic invoices in both syntaxes of EN 16931-1. The terms are those of the Peppol BIS Billing 3 listing; the
 * documents are invented.
 */
class EInvoicesTest {
    private static final String UBL = """
            <Invoice xmlns="urn:oasis:names:specification:ubl:schema:xsd:Invoice-2"
                xmlns:cac="urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2"
                xmlns:cbc="urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2">
              <cbc:ID>A1</cbc:ID><cbc:IssueDate>2026-10-05</cbc:IssueDate>
              <cbc:InvoiceTypeCode>380</cbc:InvoiceTypeCode>
              <cbc:DocumentCurrencyCode>EUR</cbc:DocumentCurrencyCode>
              <cac:AccountingSupplierParty><cac:Party><cac:PartyLegalEntity>
                <cbc:RegistrationName>North Wines</cbc:RegistrationName></cac:PartyLegalEntity></cac:Party>
              </cac:AccountingSupplierParty>
              <cac:AllowanceCharge><cbc:ChargeIndicator>false</cbc:ChargeIndicator>
                <cbc:Amount currencyID="EUR">10.00</cbc:Amount></cac:AllowanceCharge>
              <cac:AllowanceCharge><cbc:ChargeIndicator>true</cbc:ChargeIndicator>
                <cbc:AllowanceChargeReasonCode>DL</cbc:AllowanceChargeReasonCode>
                <cbc:Amount currencyID="EUR">8.00</cbc:Amount></cac:AllowanceCharge>
              <cac:TaxTotal><cbc:TaxAmount currencyID="EUR">25.46</cbc:TaxAmount></cac:TaxTotal>
              <cac:LegalMonetaryTotal>
                <cbc:TaxInclusiveAmount currencyID="EUR">152.78</cbc:TaxInclusiveAmount></cac:LegalMonetaryTotal>
              <cac:InvoiceLine><cbc:InvoicedQuantity unitCode="XBO">6</cbc:InvoicedQuantity>
                <cbc:LineExtensionAmount currencyID="EUR">106.92</cbc:LineExtensionAmount>
                <cac:AllowanceCharge><cbc:ChargeIndicator>false</cbc:ChargeIndicator>
                  <cbc:Amount currencyID="EUR">11.88</cbc:Amount></cac:AllowanceCharge>
                <cac:Item><cbc:Name>Gin 70cl</cbc:Name></cac:Item>
                <cac:Price><cbc:PriceAmount currencyID="EUR">19.80</cbc:PriceAmount></cac:Price></cac:InvoiceLine>
              <cac:InvoiceLine><cbc:InvoicedQuantity unitCode="XBO">24</cbc:InvoicedQuantity>
                <cbc:LineExtensionAmount currencyID="EUR">22.80</cbc:LineExtensionAmount>
                <cac:AllowanceCharge><cbc:ChargeIndicator>true</cbc:ChargeIndicator>
                  <cbc:AllowanceChargeReasonCode>RAD</cbc:AllowanceChargeReasonCode>
                  <cbc:Amount currencyID="EUR">2.40</cbc:Amount></cac:AllowanceCharge>
                <cac:Item><cbc:Name>Cola 330 ml</cbc:Name></cac:Item></cac:InvoiceLine>
            </Invoice>
            """;

    private static final String CII = """
            <rsm:CrossIndustryInvoice xmlns:rsm="urn:un:unece:uncefact:data:standard:CrossIndustryInvoice:100"
                xmlns:ram="urn:un:unece:uncefact:data:standard:ReusableAggregateBusinessInformationEntity:100"
                xmlns:udt="urn:un:unece:uncefact:data:standard:UnqualifiedDataType:100">
              <rsm:ExchangedDocument><ram:ID>C7</ram:ID><ram:TypeCode>381</ram:TypeCode>
                <ram:IssueDateTime><udt:DateTimeString format="102">20261009</udt:DateTimeString></ram:IssueDateTime>
              </rsm:ExchangedDocument>
              <rsm:SupplyChainTradeTransaction>
                <ram:IncludedSupplyChainTradeLineItem>
                  <ram:SpecifiedTradeProduct><ram:Name>Lime</ram:Name></ram:SpecifiedTradeProduct>
                  <ram:SpecifiedLineTradeDelivery><ram:BilledQuantity unitCode="KGM">2</ram:BilledQuantity>
                  </ram:SpecifiedLineTradeDelivery>
                  <ram:SpecifiedLineTradeSettlement><ram:SpecifiedTradeSettlementLineMonetarySummation>
                    <ram:LineTotalAmount>9.00</ram:LineTotalAmount>
                  </ram:SpecifiedTradeSettlementLineMonetarySummation></ram:SpecifiedLineTradeSettlement>
                </ram:IncludedSupplyChainTradeLineItem>
                <ram:ApplicableHeaderTradeAgreement><ram:SellerTradeParty><ram:Name>South Fruit</ram:Name>
                </ram:SellerTradeParty></ram:ApplicableHeaderTradeAgreement>
                <ram:ApplicableHeaderTradeSettlement><ram:InvoiceCurrencyCode>EUR</ram:InvoiceCurrencyCode>
                  <ram:SpecifiedTradeSettlementHeaderMonetarySummation>
                    <ram:TaxTotalAmount currencyID="EUR">0.90</ram:TaxTotalAmount>
                    <ram:GrandTotalAmount>9.90</ram:GrandTotalAmount>
                  </ram:SpecifiedTradeSettlementHeaderMonetarySummation></ram:ApplicableHeaderTradeSettlement>
              </rsm:SupplyChainTradeTransaction>
            </rsm:CrossIndustryInvoice>
            """;

    private static Month load(String... documents) {
        List<MonthFile> files = new java.util.ArrayList<>();
        for (String document : documents) {
            byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
            files.add(
                    MonthFile.xml("2026-10/invoices-" + files.size() + ".xml", () -> new ByteArrayInputStream(bytes)));
        }
        Settings settings = Settings.standard()
                .with(Setting.CURRENCY, Currency.getInstance("EUR"))
                .with(Setting.INVOICE_PRICES_INCLUDE_TAX, true);
        Book book = new Book(
                "Bar", settings, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of());
        KnownNames known = (where, name, code) -> new KnownNames.Verdict(KnownNames.Answer.KNOWN, List.of());
        return MonthLoader.load(MonthFixture.OCTOBER, files, book, known, Packs::parse, rows -> {})
                .value();
    }

    private static String text(Invoice invoice) {
        return invoice.supplier() + " " + invoice.number() + " " + invoice.date() + " " + invoice.discount() + " "
                + invoice.delivery() + " " + invoice.deposit() + " " + invoice.tax() + " " + invoice.printedTotal();
    }

    private static List<String> lines(Invoice invoice) {
        return invoice.lines().stream()
                .map(line -> line.product() + " " + line.quantity() + " x "
                        + (line.pack() == null ? "?" : line.pack().total()) + " = " + line.goods() + " discount "
                        + line.discount() + " deposit " + line.deposit())
                .toList();
    }

    @Test
    void readsUbl() {
        Invoice invoice = load(UBL).invoices().get(0);

        assertThat(text(invoice)).isEqualTo("North Wines A1 2026-10-05 10 8 2.4 25.46 152.78");
        // 10 % off 118.80, and a deposit of 24 x 0.10: lines by rule PEPPOL-EN16931-R120
        assertThat(lines(invoice))
                .containsExactly(
                        "Gin 70cl 6 x 700 ml = 106.92 discount 11.88 deposit 0",
                        "Cola 330 ml 24 x 330 ml = 20.4 discount 0 deposit 2.4");
        assertThat(invoice.pricesIncludeTax()).isFalse();
    }

    @Test
    void readsACreditNoteInCii() {
        Month month = load(CII);

        assertThat(month.invoices().get(0).creditNote()).isTrue();
        assertThat(text(month.invoices().get(0))).isEqualTo("South Fruit C7 2026-10-09 0 0 0 -0.9 -9.9");
        assertThat(lines(month.invoices().get(0))).containsExactly("Lime -2 x 1000 g = -9 discount 0 deposit 0");
        assertThat(month.files().get(0).kind()).isEqualTo("invoices");
        assertThat(month.files().get(0).rows()).isEqualTo(3);
    }

    @Test
    void theSameInvoiceTwiceAndOtherDocumentsAreSetAside() {
        Month month = load(
                UBL,
                UBL,
                "<note/>",
                "<!DOCTYPE Invoice [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><Invoice>&e;</Invoice>");

        assertThat(month.invoices()).hasSize(1);
        assertThat(month.files())
                .extracting(f -> f.kind())
                .containsExactly("invoices", "invoices", "refused", "refused");
        assertThat(month.setAside())
                .extracting(s -> s.reason())
                .contains(
                        "The row repeats invoice A1 of North Wines of 2026-10/invoices-0.xml, row 1.",
                        "The file was refused: The file is no electronic invoice of EN 16931: its root is note.",
                        "The file was refused: The file is no well-formed XML, or has a document type, which is not read.");
    }
}
