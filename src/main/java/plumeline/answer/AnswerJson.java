package plumeline.answer;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import plumeline.answer.Answer.Assumed;

/// Writes an answer as JSON. Our own few lines, as a question's wall time is mostly classes being loaded.
final class AnswerJson {
    private static final MathContext DIGITS = new MathContext(7);

    private final StringBuilder out = new StringBuilder(2048);

    private AnswerJson() {}

    static String write(Answer answer) {
        return new AnswerJson().all(answer);
    }

    private String all(Answer answer) {
        out.append("{\"question\": ");
        text(answer.question());
        out.append(",\n \"verdict\": ");
        text(answer.verdict().word());
        out.append(",\n \"answers\": {");
        String between = "\n   ";
        for (Item item : answer.answers()) {
            out.append(between);
            text(item.name());
            out.append(": ");
            value(item.value());
            between = ",\n   ";
        }
        out.append("},\n \"assumed\": [");
        between = "\n   ";
        for (Assumed assumed : answer.assumed()) {
            out.append(between);
            assumed(assumed);
            between = ",\n   ";
        }
        out.append(']');
        texts("because", answer.notes().because());
        texts("try", answer.notes().attempts());
        texts("cautions", answer.notes().cautions());
        texts("sources", answer.notes().sources());
        return out.append("}\n").toString();
    }

    private void value(Value value) {
        switch (value) {
            case Value.Number(double number, String unit) -> {
                out.append("{\"value\": ");
                number(number);
                unit(unit);
            }
            case Value.Spread(double number, String unit, double low, double high) -> {
                out.append("{\"value\": ");
                number(number);
                out.append(", \"unit\": ");
                text(unit);
                out.append(", \"low\": ");
                number(low);
                out.append(", \"high\": ");
                number(high);
                out.append('}');
            }
            case Value.Numbers(List<Double> numbers, String unit) -> {
                out.append("{\"value\": [");
                for (int i = 0; i < numbers.size(); i++) {
                    out.append(i == 0 ? "" : ", ");
                    number(numbers.get(i));
                }
                out.append(']');
                unit(unit);
            }
            case Value.Word(String word) -> text(word);
        }
    }

    private void unit(String unit) {
        out.append(", \"unit\": ");
        text(unit);
        out.append('}');
    }

    private void assumed(Assumed assumed) {
        out.append("{\"name\": ");
        text(assumed.name());
        out.append(", \"value\": ");
        switch (assumed.value()) {
            case Value.Number(double number, String unit) -> {
                number(number);
                out.append(", \"unit\": ");
                text(unit);
            }
            case Value.Word(String word) -> text(word);
            case Value.Spread spread -> throw new IllegalArgumentException("a default with a spread: " + spread);
            case Value.Numbers numbers -> throw new IllegalArgumentException("a list as a default: " + numbers);
        }
        out.append(", \"why\": ");
        text(assumed.why());
        out.append('}');
    }

    private void texts(String name, List<String> texts) {
        out.append(",\n \"").append(name).append("\": [");
        String between = "\n   ";
        for (String each : texts) {
            out.append(between);
            text(each);
            between = ",\n   ";
        }
        out.append(']');
    }

    private void number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        boolean plain = rounded.precision() - rounded.scale() <= 12 && rounded.scale() <= 12;
        out.append(rounded.signum() == 0 ? "0" : plain ? rounded.toPlainString() : rounded.toString());
    }

    private void text(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < 0x20) {
                out.append("\\u00").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
