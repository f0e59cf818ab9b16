package org.taperwright.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Starts the workbench for a {@link WindowTest}, and keeps a picture of the screen when a test fails. */
final class WindowTests implements ExecutionCondition, ParameterResolver, AfterTestExecutionCallback {
    private static final Path SKIPPED = Path.of(System.getProperty("skipped", "target/window-tests-skipped"));

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (Screen.present()) {
            return ConditionEvaluationResult.enabled("there is a display");
        }
        try {
            Files.createDirectories(SKIPPED.toAbsolutePath().getParent());
            Files.writeString(SKIPPED, LastLines.SKIPPED);
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
        return ConditionEvaluationResult.disabled(LastLines.SKIPPED);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Hands.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(ExtensionContext.Namespace.GLOBAL)
                .getOrComputeIfAbsent(Hands.class, started -> started(), Hands.class);
    }

    @Override
    public void afterTestExecution(ExtensionContext context) {
        Optional<Throwable> failure = context.getExecutionException();
        if (failure.isPresent()) {
            Screen.keep("failed-" + context.getRequiredTestMethod().getName());
        }
    }

    private static Hands started() {
        try {
            return RunningWorkbench.start();
        } catch (IOException | ReflectiveOperationException failed) {
            throw new IllegalStateException("the workbench did not start", failed);
        }
    }
}
