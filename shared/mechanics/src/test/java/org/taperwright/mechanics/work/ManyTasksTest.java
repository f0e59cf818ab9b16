package org.taperwright.mechanics.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ManyTasksTest {
    @Test
    void answersComeInTheOrderOfTheTasksAndEachIsReported() {
        List<String> reports = new ArrayList<>();
        List<Integer> squares = ManyTasks.all(50, "square", progress(reports, false), (place, inner) -> place * place);
        assertThat(squares)
                .containsExactlyElementsOf(
                        IntStream.range(0, 50).map(i -> i * i).boxed().toList());
        assertThat(reports).hasSize(50).startsWith("square 1 of 50").endsWith("square 50 of 50");
    }

    @Test
    void aFailureIsThatOfTheTask() {
        assertThatThrownBy(() -> ManyTasks.all(3, "task", Progress.NONE, ManyTasksTest::fail))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("task 0");
    }

    @Test
    void whenTheAnswersAreNoLongerWantedTheTasksLearnOfIt() {
        assertThatThrownBy(
                        () -> ManyTasks.all(4, "task", progress(new ArrayList<>(), true), ManyTasksTest::untilStopped))
                .isInstanceOf(WorkCancelled.class);
    }

    private static Integer fail(int place, Progress progress) {
        throw new IllegalStateException("task " + place);
    }

    private static Integer untilStopped(int place, Progress progress) {
        while (true) {
            progress.check();
        }
    }

    private static Progress progress(List<String> reports, boolean cancelled) {
        return new Progress() {
            @Override
            public void at(double fraction, String what) {
                reports.add(what);
            }

            @Override
            public boolean cancelled() {
                return cancelled;
            }
        };
    }
}
