/** Commands, streams, progress and exit codes. */
@NullMarked
package heeltap.cli;

import org.jspecify.annotations.NullMarked;
