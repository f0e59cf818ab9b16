package org.taperwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.command.input.Shelf;
import org.taperwright.command.print.AssessmentJson;
import org.taperwright.command.print.AssessmentText;
import org.taperwright.mechanics.assessment.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code assess}: everything computed of one design or several, one after another. */
@Command(
        name = "assess",
        description = {
            "Computes the sections, the blade along its length, the bench tests and the edges of each design, and checks "
                    + "what is impossible or unusual.",
            ""
        })
final class Assess implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Given given = new Given();

    @Parameters(
            arity = "1..*",
            paramLabel = "DESIGN",
            description = "A file in JSON form that holds designs or instruments, or with --demo or --from a name or "
                    + "identifier.")
    private List<String> designs = new ArrayList<>();

    @Override
    public Integer call() {
        Shelf shelf = given.shelf();
        List<FoundDesign> found = Designs.found(designs, shelf);
        List<Assessment> assessments = Designs.assessed(found, shelf);
        String text = given.json() ? AssessmentJson.of(found, assessments) : AssessmentText.of(assessments);
        spec.commandLine().getOut().print(text);
        return Main.DONE;
    }
}
