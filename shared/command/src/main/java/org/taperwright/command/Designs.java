package org.taperwright.command;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.command.input.BadInput;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.command.input.Shelf;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.mechanics.work.Progress;

/** From words to assessed designs. */
final class Designs {
    private Designs() {}

    /** The designs that the words name, in order. */
    static List<FoundDesign> found(List<String> words, Shelf shelf) {
        return words.stream().flatMap(each -> shelf.designs(each).stream()).toList();
    }

    /** All of them assessed, or {@link BadInput} with what is impossible in any of them. */
    static List<Assessment> assessed(List<FoundDesign> designs, Shelf shelf) {
        List<Assessment> assessments = new ArrayList<>();
        List<FileFault> faults = new ArrayList<>();
        KnownAlloys alloys = shelf.alloys();
        for (FoundDesign found : designs) {
            AssessmentResult result = Assessments.of(found.design(), alloys, Progress.NONE);
            if (result instanceof AssessmentResult.Assessed assessed) {
                assessments.add(assessed.assessment());
            } else if (result instanceof AssessmentResult.Refused refused) {
                refused.faults().stream()
                        .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                        .map(found.origin()::place)
                        .forEach(faults::add);
            }
        }
        if (!faults.isEmpty()) {
            throw BadInput.in(faults);
        }
        return assessments;
    }
}
