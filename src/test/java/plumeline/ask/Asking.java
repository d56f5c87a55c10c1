package plumeline.ask;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer;
import plumeline.answer.Beside;
import plumeline.answer.Outcome;
import plumeline.answer.Value;
import plumeline.text.Problem;

/// Asks in text, for tests.
public final class Asking {
    private Asking() {}

    public static Outcome ask(String name, String text) {
        return ask(name, text, Beside.NOTHING);
    }

    public static Outcome ask(String name, String text, Beside beside) {
        return Questions.find(name).orElseThrow().answer(text.getBytes(StandardCharsets.UTF_8), "ask.yaml", beside);
    }

    public static Answer answer(String name, String text) {
        return answer(ask(name, text));
    }

    public static Answer answer(Outcome outcome) {
        return switch (outcome) {
            case Outcome.Answered answered -> answered.answer();
            case Outcome.Listed listed -> throw new AssertionError(listed.text());
            case Outcome.Refused refused -> throw new AssertionError(refused.problems());
        };
    }

    public static List<String> problems(String name, String text) {
        return problems(ask(name, text));
    }

    public static List<String> problems(Outcome outcome) {
        return switch (outcome) {
            case Outcome.Answered answered -> throw new AssertionError(answered.answer());
            case Outcome.Listed listed -> throw new AssertionError(listed.text());
            case Outcome.Refused refused -> {
                List<String> texts = new ArrayList<>();
                for (Problem problem : refused.problems()) {
                    texts.add(problem.toText());
                }
                yield texts;
            }
        };
    }

    public static double number(Answer answer, String name) {
        return switch (answer.getValue(name)) {
            case Value.Number number -> number.value();
            case Value.Spread spread -> spread.value();
            case Value.Numbers numbers -> throw new AssertionError(name + " is a list: " + numbers);
            case Value.Word(String word) -> throw new AssertionError(name + " is " + word);
        };
    }

    public static Value.Spread spread(Answer answer, String name) {
        return switch (answer.getValue(name)) {
            case Value.Spread spread -> spread;
            case Value.Number number -> throw new AssertionError(name + " has no interval: " + number);
            case Value.Numbers numbers -> throw new AssertionError(name + " is a list: " + numbers);
            case Value.Word word -> throw new AssertionError(name + " is " + word);
        };
    }
}
