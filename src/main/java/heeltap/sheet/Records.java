package heeltap.sheet;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The records of a text table one by one. */
interface Records {
    /** The fields of the next record, blank ones too; null after the last. */
    @Nullable List<String> next() throws IOException;

    /** The physical line where the record given last begins, from 1. */
    int line();
}
