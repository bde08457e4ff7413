package heeltap.load;

import heeltap.source.Place;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/**
 * Electronic invoices of EN 16931-1 in its two syntaxes, UBL 2.1 and UN/CEFACT CII. Terms (BT-1 …) by the Peppol BIS
 * Billing 3 listing of the standard. Prices in them are without tax.
 */
final class EInvoices {
    /** UNCL1001 codes of credit notes, as listed for EN 16931. */
    private static final Set<String> CREDIT_CODES = Set.of("381", "81", "83", "396", "532");
    /** UNCL7161: returnable container. */
    private static final String RETURNABLE = "RAD";

    private EInvoices() {}

    /**
     * An electronic invoice.
     *
     * @param date null where none can be read
     * @param tax null where none is printed; so too the total with tax
     */
    record EInvoice(
            String supplier,
            String number,
            @Nullable LocalDate date,
            String currency,
            boolean creditNote,
            List<Line> lines,
            List<Charge> charges,
            @Nullable BigDecimal tax,
            @Nullable BigDecimal total,
            EInvoiceSums sums) {}

    /**
     * A line; {@code net} (BT-131) is after allowances and holds charges.
     *
     * @param unit the code of the quantity's unit (BT-130)
     * @param charge all charges of the line, its deposit included
     */
    record Line(
            String product,
            String code,
            BigDecimal quantity,
            String unit,
            BigDecimal net,
            BigDecimal allowance,
            BigDecimal charge,
            BigDecimal deposit,
            EInvoiceSums.Price price) {}

    /** An allowance or charge on the whole invoice. */
    record Charge(boolean isCharge, boolean deposit, BigDecimal amount) {}

    /**
     * Reads one.
     *
     * @throws Unreadable with the reason, if it is none
     */
    static EInvoice read(InputStream stream, Place place) throws Unreadable {
        Element root = parse(stream, place).getDocumentElement();
        String name = root.getLocalName();
        if (name.equals("Invoice") || name.equals("CreditNote")) {
            return withLines(ubl(root));
        }
        if (name.equals("CrossIndustryInvoice")) {
            return withLines(cii(root));
        }
        throw new Unreadable("The file is no electronic invoice of EN 16931: its root is " + name + ".");
    }

    private static EInvoice withLines(EInvoice invoice) throws Unreadable {
        if (invoice.lines().isEmpty()) {
            throw new Unreadable("The electronic invoice has no lines.");
        }
        return invoice;
    }

    /** Why a file is no electronic invoice. */
    static final class Unreadable extends Exception {
        Unreadable(String reason) {
            super(reason);
        }

        String reason() {
            return String.valueOf(getMessage());
        }
    }

    /** External entities and document types are off: an invoice needs none. */
    private static Document parse(InputStream stream, Place place) throws Unreadable {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            builder.setEntityResolver((publicId, systemId) -> {
                throw new SAXException("external entities are not read");
            });
            return builder.parse(stream, place.file());
        } catch (SAXException | IOException e) {
            throw new Unreadable("The file is no well-formed XML, or has a document type, which is not read.");
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static EInvoice ubl(Element root) throws Unreadable {
        boolean credit = root.getLocalName().equals("CreditNote")
                || CREDIT_CODES.contains(XmlPath.text(root, "InvoiceTypeCode"));
        String party = "AccountingSupplierParty/Party/";
        String supplier = XmlPath.text(root, party + "PartyName/Name");
        List<Line> lines = new ArrayList<>();
        for (String element : List.of("InvoiceLine", "CreditNoteLine")) {
            for (Element line : XmlPath.all(root, element)) {
                lines.add(ublLine(line));
            }
        }
        List<Charge> charges = new ArrayList<>();
        for (Element charge : XmlPath.all(root, "AllowanceCharge")) {
            charges.add(ublCharge(charge));
        }
        String currency = XmlPath.text(root, "DocumentCurrencyCode");
        return new EInvoice(
                supplier.isEmpty() ? XmlPath.text(root, party + "PartyLegalEntity/RegistrationName") : supplier,
                XmlPath.text(root, "ID"),
                date(XmlPath.text(root, "IssueDate"), DateTimeFormatter.ISO_LOCAL_DATE),
                currency,
                credit,
                lines,
                charges,
                XmlPath.amount(root, "TaxTotal/TaxAmount", currency),
                XmlPath.number(root, "LegalMonetaryTotal/TaxInclusiveAmount").orElse(null),
                EInvoiceSums.ubl(root, currency));
    }

    private static Line ublLine(Element line) throws Unreadable {
        BigDecimal allowance = BigDecimal.ZERO;
        BigDecimal charges = BigDecimal.ZERO;
        BigDecimal deposit = BigDecimal.ZERO;
        for (Element each : XmlPath.all(line, "AllowanceCharge")) {
            Charge charge = ublCharge(each);
            allowance = charge.isCharge() ? allowance : allowance.add(charge.amount());
            charges = charge.isCharge() ? charges.add(charge.amount()) : charges;
            deposit = charge.deposit() ? deposit.add(charge.amount()) : deposit;
        }
        boolean credited = !XmlPath.text(line, "CreditedQuantity").isEmpty();
        String quantity = credited ? "CreditedQuantity" : "InvoicedQuantity";
        BigDecimal net = required(line, "LineExtensionAmount");
        return new Line(
                XmlPath.text(line, "Item/Name"),
                XmlPath.text(line, "Item/SellersItemIdentification/ID"),
                required(line, quantity),
                XmlPath.attribute(line, quantity, "unitCode"),
                net.subtract(deposit),
                allowance,
                charges,
                deposit,
                EInvoiceSums.Price.of(line, "Price/PriceAmount", "Price/BaseQuantity"));
    }

    private static Charge ublCharge(Element charge) throws Unreadable {
        boolean isCharge = XmlPath.text(charge, "ChargeIndicator").equals("true");
        boolean deposit = isCharge
                && isDeposit(
                        XmlPath.text(charge, "AllowanceChargeReasonCode"),
                        XmlPath.text(charge, "AllowanceChargeReason"));
        return new Charge(isCharge, deposit, required(charge, "Amount"));
    }

    private static EInvoice cii(Element root) throws Unreadable {
        String trade = "SupplyChainTradeTransaction/";
        String settlement = trade + "ApplicableHeaderTradeSettlement/";
        String sums = settlement + "SpecifiedTradeSettlementHeaderMonetarySummation/";
        List<Line> lines = new ArrayList<>();
        for (Element line : XmlPath.all(root, trade + "IncludedSupplyChainTradeLineItem")) {
            lines.add(ciiLine(line));
        }
        List<Charge> charges = new ArrayList<>();
        for (Element charge : XmlPath.all(root, settlement + "SpecifiedTradeAllowanceCharge")) {
            charges.add(ciiCharge(charge));
        }
        String currency = XmlPath.text(root, settlement + "InvoiceCurrencyCode");
        return new EInvoice(
                XmlPath.text(root, trade + "ApplicableHeaderTradeAgreement/SellerTradeParty/Name"),
                XmlPath.text(root, "ExchangedDocument/ID"),
                date(
                        XmlPath.text(root, "ExchangedDocument/IssueDateTime/DateTimeString"),
                        DateTimeFormatter.BASIC_ISO_DATE),
                currency,
                CREDIT_CODES.contains(XmlPath.text(root, "ExchangedDocument/TypeCode")),
                lines,
                charges,
                XmlPath.amount(root, sums + "TaxTotalAmount", currency),
                XmlPath.number(root, sums + "GrandTotalAmount").orElse(null),
                EInvoiceSums.cii(root, currency));
    }

    private static Line ciiLine(Element line) throws Unreadable {
        String settlement = "SpecifiedLineTradeSettlement/";
        BigDecimal allowance = BigDecimal.ZERO;
        BigDecimal charges = BigDecimal.ZERO;
        BigDecimal deposit = BigDecimal.ZERO;
        for (Element each : XmlPath.all(line, settlement + "SpecifiedTradeAllowanceCharge")) {
            Charge charge = ciiCharge(each);
            allowance = charge.isCharge() ? allowance : allowance.add(charge.amount());
            charges = charge.isCharge() ? charges.add(charge.amount()) : charges;
            deposit = charge.deposit() ? deposit.add(charge.amount()) : deposit;
        }
        BigDecimal net = required(line, settlement + "SpecifiedTradeSettlementLineMonetarySummation/LineTotalAmount");
        String price = "SpecifiedLineTradeAgreement/NetPriceProductTradePrice/";
        String quantity = "SpecifiedLineTradeDelivery/BilledQuantity";
        return new Line(
                XmlPath.text(line, "SpecifiedTradeProduct/Name"),
                XmlPath.text(line, "SpecifiedTradeProduct/SellerAssignedID"),
                required(line, quantity),
                XmlPath.attribute(line, quantity, "unitCode"),
                net.subtract(deposit),
                allowance,
                charges,
                deposit,
                EInvoiceSums.Price.of(line, price + "ChargeAmount", price + "BasisQuantity"));
    }

    private static Charge ciiCharge(Element charge) throws Unreadable {
        boolean isCharge = XmlPath.text(charge, "ChargeIndicator/Indicator").equals("true");
        boolean deposit = isCharge && isDeposit(XmlPath.text(charge, "ReasonCode"), XmlPath.text(charge, "Reason"));
        return new Charge(isCharge, deposit, required(charge, "ActualAmount"));
    }

    private static boolean isDeposit(String code, String reason) {
        return code.equals(RETURNABLE) || InvoiceRow.Role.of(reason) == InvoiceRow.Role.DEPOSIT;
    }

    private static BigDecimal required(Element element, String path) throws Unreadable {
        Optional<BigDecimal> number = XmlPath.number(element, path);
        if (number.isEmpty()) {
            throw new Unreadable(
                    "The electronic invoice has no number at " + element.getLocalName() + "/" + path + ".");
        }
        return number.get();
    }

    private static @Nullable LocalDate date(String text, DateTimeFormatter format) {
        try {
            return text.isEmpty() ? null : LocalDate.parse(text, format);
        } catch (DateTimeException e) {
            return null;
        }
    }
}
