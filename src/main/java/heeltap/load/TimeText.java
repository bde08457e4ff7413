package heeltap.load;

import java.time.LocalTime;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A time of day as tills write it: {@code 21:14}, {@code 21:14:05.123}, {@code 9:14 PM}, {@code 21h14}, {@code 21.14
 * Uhr}. A zone behind it is ignored: the clock on the wall is meant.
 */
final class TimeText {
    private final String text;
    private int at;

    private TimeText(String text) {
        this.text = text;
    }

    /** The time, or null where the text is none. */
    static @Nullable LocalTime parse(String text) {
        return new TimeText(text).read();
    }

    private @Nullable LocalTime read() {
        skipSpaces();
        int hour = number(2);
        int minute = 0;
        int second = 0;
        boolean minutes = separator(":.hH");
        if (hour < 0 || (minutes && (minute = number(2)) < 0 && !isHourMark())) {
            return null;
        }
        minute = Math.max(minute, 0);
        if (minutes && separator(":.m") && at < text.length() && isDigit(text.charAt(at))) {
            second = number(2);
            if (second >= 0 && separator(".,")) {
                skipDigits();
            }
        }
        int half = half();
        boolean valid = minute < 60
                && second >= 0
                && second < 60
                && (half < 0 ? minutes && hour < 24 : hour >= 1 && hour <= 12);
        if (!valid || !endsHere()) {
            return null;
        }
        return LocalTime.of(half < 0 ? hour : hour % 12 + 12 * half, minute, second);
    }

    /** {@code 9h} has no minutes. */
    private boolean isHourMark() {
        return at > 0 && Character.toLowerCase(text.charAt(at - 1)) == 'h';
    }

    /** 0 for am, 1 for pm, -1 where neither is written. */
    private int half() {
        skipSpaces();
        StringBuilder word = new StringBuilder();
        int start = at;
        while (at < text.length()
                && (Character.isLetter(text.charAt(at))
                        || text.charAt(at) == '.'
                        || TextFold.isSpace(text.charAt(at)))) {
            if (Character.isLetter(text.charAt(at))) {
                word.append(text.charAt(at));
            }
            at++;
        }
        switch (word.toString().toLowerCase(Locale.ROOT)) {
            case "a", "am" -> {
                return 0;
            }
            case "p", "pm" -> {
                return 1;
            }
            case "", "h", "uhr", "uur", "u", "hs", "hrs", "min", "s" -> {
                return -1;
            }
            default -> {
                at = start;
                return -1;
            }
        }
    }

    /** Only a zone may follow. */
    private boolean endsHere() {
        skipSpaces();
        if (at < text.length() && (text.charAt(at) == 'Z' || text.charAt(at) == 'z')) {
            at++;
        } else if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            at++;
            int from = at;
            while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == ':')) {
                at++;
            }
            return at == text.length() && at - from >= 2;
        }
        return at == text.length();
    }

    private boolean separator(String any) {
        if (at < text.length() && any.indexOf(text.charAt(at)) >= 0) {
            at++;
            return true;
        }
        return false;
    }

    /** -1 where no digit stands here or more than {@code most}. */
    private int number(int most) {
        int value = 0;
        int from = at;
        while (at < text.length() && isDigit(text.charAt(at))) {
            value = value * 10 + text.charAt(at++) - '0';
            if (at - from > most) {
                return -1;
            }
        }
        return at == from ? -1 : value;
    }

    private void skipDigits() {
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
    }

    private void skipSpaces() {
        while (at < text.length() && TextFold.isSpace(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
