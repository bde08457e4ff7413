package heeltap.sheet;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.jspecify.annotations.Nullable;

/** The parts of a workbook of the XML kind while it is open. */
final class XlsxPackage implements AutoCloseable {
    /** The usual variant and the strict one. */
    private static final String[] ROOTS = {
        "http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument",
        "http://purl.oclc.org/ooxml/officeDocument/relationships/officeDocument"
    };

    private final OPCPackage opc;
    private final PackagePart workbook;

    XlsxPackage(Path path) throws IOException, InvalidFormatException {
        try {
            opc = OPCPackage.open(path.toFile(), PackageAccess.READ);
        } catch (RuntimeException damage) {
            throw unreadable(damage);
        }
        try {
            workbook = root(opc);
        } catch (InvalidFormatException damage) {
            opc.revert();
            throw damage;
        } catch (RuntimeException damage) {
            opc.revert();
            throw unreadable(damage);
        }
    }

    private static PackagePart root(OPCPackage opc) throws InvalidFormatException {
        for (String type : ROOTS) {
            PackageRelationship relation = opc.getRelationshipsByType(type).getRelationship(0);
            PackagePart part = relation == null ? null : opc.getPart(relation);
            if (part != null) {
                return part;
            }
        }
        throw new InvalidFormatException("no workbook inside");
    }

    /** The library reports damage by unchecked exceptions of many kinds. */
    private static InvalidFormatException unreadable(RuntimeException damage) {
        return new InvalidFormatException(String.valueOf(damage.getMessage()), damage);
    }

    PackagePart workbook() {
        return workbook;
    }

    /** The part that the workbook names by a relation of this type; null where it names none. */
    @Nullable PackagePart related(String typeEnd) throws InvalidFormatException {
        for (PackageRelationship relation : workbook.getRelationships()) {
            if (relation.getRelationshipType().endsWith(typeEnd)) {
                return part(relation.getId());
            }
        }
        return null;
    }

    boolean isWorksheet(String id) {
        PackageRelationship relation = workbook.getRelationship(id);
        return relation == null || relation.getRelationshipType().endsWith("/worksheet");
    }

    PackagePart part(String id) throws InvalidFormatException {
        try {
            PackageRelationship relation = workbook.getRelationship(id);
            PackagePart part = relation == null ? null : workbook.getRelatedPart(relation);
            if (part == null) {
                throw new InvalidFormatException("no part " + id);
            }
            return part;
        } catch (IllegalArgumentException damage) {
            throw unreadable(damage);
        }
    }

    @Override
    public void close() {
        opc.revert();
    }
}
