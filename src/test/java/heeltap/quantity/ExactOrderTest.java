package heeltap.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;

class ExactOrderTest {
    /** Two negative ones are where version 1.2 of the fraction library errs. */
    @Property
    void orderIsThatOfDecimals(
            @ForAll @BigRange(min = "-50", max = "50") BigDecimal a,
            @ForAll @BigRange(min = "-50", max = "50") BigDecimal b) {
        assertThat(Integer.signum(Exact.of(a).compareTo(Exact.of(b)))).isEqualTo(Integer.signum(a.compareTo(b)));
        assertThat(Exact.of(a).negated().isLessThan(Exact.of(b).negated())).isEqualTo(a.compareTo(b) > 0);
    }
}
