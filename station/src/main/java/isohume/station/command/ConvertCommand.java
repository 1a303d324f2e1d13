// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.station.convert.Answer;
import isohume.station.convert.Conversion;
import isohume.station.convert.Measure;
import isohume.station.convert.NotUnderstood;
import isohume.station.convert.Question;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Rounded;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** From one measure of humidity to the others. */
@Command(
        name = "convert",
        description = "Converts one measure of humidity into the others. Give the temperature and exactly one measure.",
        footer = {
            "",
            "A number may have its uncertainty behind it, U at k = 2: 12.03±0.1 or 12.03+-0.1. Then each measure gets"
                    + " its own, with what the formulas may be wrong by.",
            "Example: isohume convert --temperature 23 --dew-point 12.03"
        },
        mixinStandardHelpOptions = true)
final class ConvertCommand implements Callable<Integer> {
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Mixin
    private final AirOptions air = new AirOptions();

    @Option(names = "--uncertainty", description = "give U of each measure even if no number came with one")
    private boolean uncertainty;

    @Option(names = "--json", description = "print the answer as JSON, with all digits and the budgets")
    private boolean json;

    @Override
    public Integer call() throws JsonProcessingException {
        Question question = question();
        Conversion conversion = uncertainty ? Conversion.withUncertainties(question) : Conversion.of(question);
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.println(JSON.writeValueAsString(Answer.of(conversion)));
        } else {
            print(conversion, answer);
        }
        return Isohume.DONE;
    }

    private Question question() {
        try {
            return Question.read(air.typed());
        } catch (NotUnderstood said) {
            throw new ParameterException(spec.commandLine(), said.why(), said);
        }
    }

    private static void print(Conversion conversion, PrintWriter answer) {
        boolean uncertain = !conversion.budgets().isEmpty();
        TextTable table = new TextTable(
                uncertain ? List.of("measure", ">value", ">U (k = 2)", "unit") : List.of("measure", ">value", "unit"));
        conversion.measures().forEach((measure, value) -> {
            Budget budget = conversion.budgets().get(measure);
            table.row(
                    uncertain
                            ? List.of(measure.words(), value(measure, value, budget), u(budget), measure.unit())
                            : List.of(measure.words(), value(measure, value, null), measure.unit()));
        });
        table.write(answer);
        conversion.leftOut().forEach((measure, why) -> answer.println(measure.words() + ": left out: " + why));
        conversion.notes().forEach(note -> answer.println("note: " + note));
        answer.println("by " + conversion.question().formulation().title()
                + (uncertain ? "; U of a temperature is in K" : ""));
    }

    private static String value(Measure measure, double value, @Nullable Budget budget) {
        return budget == null || !(budget.expanded() > 0)
                ? new BigDecimal(value)
                        .setScale(measure.decimals(), RoundingMode.HALF_EVEN)
                        .toPlainString()
                : Rounded.of(value, budget.expanded()).value().toPlainString();
    }

    private static String u(@Nullable Budget budget) {
        return budget == null || !(budget.expanded() > 0)
                ? "–"
                : Rounded.of(0, budget.expanded()).uncertainty().toPlainString();
    }
}
