package org.taperwright.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestPlan;

/** Writes target/VALIDATION.md when the run ends; the committed page is a copy of it. */
public final class ValidationPage implements TestExecutionListener {
    @Override
    public void testPlanExecutionFinished(TestPlan plan) {
        if (Findings.noted().isEmpty() && Findings.remarks().isEmpty()) {
            return;
        }
        try {
            Path page = Path.of("target", "VALIDATION.md");
            Files.createDirectories(page.getParent());
            Files.writeString(page, text());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String text() {
        List<Finding> findings = Findings.noted();
        StringBuilder page = new StringBuilder();
        page.append("# What the engine's numbers are held against\n\n");
        page.append("Written by the validation suite (`mvn -pl shared/validation -am test`, then copied from\n");
        page.append(
                "`shared/validation/target/VALIDATION.md`). Error is relative; absolute where the expected value is 0.\n");
        page.append("Agreement here does not replace makers' instructions, local rules or licensed\n");
        page.append("judgement.\n");
        Set<String> sources = new TreeSet<>();
        findings.forEach(finding -> sources.add(finding.source()));
        Findings.remarks().forEach(remark -> sources.add(remark.source()));
        for (String source : sources) {
            page.append(section(source, findings));
        }
        return page.toString();
    }

    private static String section(String source, List<Finding> findings) {
        StringBuilder part = new StringBuilder("\n## " + source + "\n\n");
        List<Finding> own = findings.stream()
                .filter(finding -> finding.source().equals(source))
                .toList();
        if (!own.isEmpty()) {
            part.append("| quantity | expected | ours | error | allowed |\n| --- | ---: | ---: | ---: | ---: |\n");
            own.forEach(finding -> part.append(row(finding)));
            Set<String> reasons =
                    own.stream().map(Finding::reason).collect(Collectors.toCollection(LinkedHashSet::new));
            part.append("\nWhy these tolerances: ")
                    .append(String.join("; ", reasons))
                    .append(".\n");
        }
        Findings.remarks().stream()
                .filter(remark -> remark.source().equals(source))
                .forEach(remark -> part.append("\n").append(remark.text()).append("\n"));
        return part.toString();
    }

    private static String row(Finding finding) {
        return String.format(
                Locale.ROOT,
                "| %s | %.7g | %.7g | %.1e | %.0e |%n",
                finding.quantity().replace("|", "\\|"),
                finding.expected(),
                finding.ours(),
                finding.error(),
                finding.tolerance());
    }
}
