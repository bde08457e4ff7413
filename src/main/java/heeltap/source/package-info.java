/** Where a value came from, a neutral sheet of cells, problems, and a value together with its problems. */
@NullMarked
package heeltap.source;

import org.jspecify.annotations.NullMarked;
