// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import isohume.device.recorded.RecordedError;
import isohume.device.recorded.RecordingRefused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What has come up so far in one file: findings, open questions and errors. */
final class Doubts {
    private final String source;
    private final Answers answers;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<RecordedError> errors = new ArrayList<>();

    Doubts(String source, Answers answers) {
        this.source = source;
        this.answers = answers;
    }

    void find(Finding.Kind kind, long line, String text) {
        findings.add(new Finding(kind, line, text));
    }

    void wrong(long line, int column, String what, String remedy) {
        if (errors.size() < RecordingRefused.MOST_ERRORS) {
            errors.add(new RecordedError(source, line, column, what, remedy));
        }
    }

    boolean full() {
        return errors.size() == RecordingRefused.MOST_ERRORS;
    }

    boolean broken() {
        return !errors.isEmpty();
    }

    boolean open() {
        return !questions.isEmpty();
    }

    Optional<String> answer(String key) {
        return answers.to(key);
    }

    /** The answer if there is one among the choices; otherwise the question is asked. */
    Optional<String> ask(String key, String text, List<Choice> choices, List<String> evidence) {
        Optional<String> answer = answer(key);
        if (answer.isPresent() && choices.stream().anyMatch(c -> c.value().equals(answer.get()))) {
            return answer;
        }
        questions.add(new Question(key, text, choices, noted(answer, evidence), false));
        return Optional.empty();
    }

    /** As {@link #ask}, for an answer out of an enumeration. */
    <E extends Enum<E>> Optional<E> ask(
            Class<E> type, String key, String text, List<Choice> choices, List<String> evidence) {
        return ask(key, text, choices, evidence).map(word -> ofWord(type, word).orElseThrow());
    }

    /** A question whose answer the caller has looked at already and could not use. */
    void askFreely(String key, String text, List<Choice> choices, List<String> evidence) {
        questions.add(new Question(key, text, choices, noted(answer(key), evidence), true));
    }

    private static List<String> noted(Optional<String> unfit, List<String> evidence) {
        List<String> all = new ArrayList<>(evidence);
        unfit.ifPresent(answer -> all.add("the answer \"" + answer + "\" is none of these"));
        return all;
    }

    /** Whatever stands in the way of a reading; errors go before questions. */
    Optional<Understanding> obstacle() {
        if (broken()) {
            return Optional.of(new Understanding.Refused(errors, findings));
        }
        return open() ? Optional.of(new Understanding.InDoubt(questions, findings)) : Optional.empty();
    }

    List<Finding> findings() {
        return findings;
    }

    /** A constant as it is written in answers and profiles: {@code day_first}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static <E extends Enum<E>> Optional<E> ofWord(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> word(constant).equals(word))
                .findFirst();
    }
}
