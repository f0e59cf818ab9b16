package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import org.taperwright.mechanics.section.FamilyParameter;

/** Fields for the numbers that a plug-in declares: one row each, in the declared order. */
public final class ParameterForm extends JPanel {
    private final Map<String, QuantityField> fields = new LinkedHashMap<>();
    private transient List<FamilyParameter> shown = List.of();
    private transient Listener listener = (parameter, value, done) -> {};

    /** Receives values of parameters; done is false while a value is only tried. */
    @FunctionalInterface
    public interface Listener {
        /** A parameter's value, entered or only tried. */
        void changed(FamilyParameter parameter, double value, boolean done);
    }

    public ParameterForm(String name) {
        setName(name);
        setOpaque(false);
        setLayout(new BorderLayout());
    }

    /** Receives what a person enters. */
    public ParameterForm onChange(Listener receiver) {
        listener = receiver;
        return this;
    }

    /** Shows parameters with their values; a missing value takes the declared default. */
    public void setParameters(List<FamilyParameter> parameters, Map<String, Double> values) {
        if (!parameters.equals(shown)) {
            shown = List.copyOf(parameters);
            build();
        }
        for (FamilyParameter parameter : parameters) {
            Double given = values.get(parameter.name());
            fields.get(parameter.name()).setValue(given == null ? parameter.initial() : given);
        }
    }

    /** Makes all fields editable or not. */
    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        fields.values().forEach(field -> field.setEnabled(enabled));
    }

    private void build() {
        removeAll();
        fields.clear();
        FormPane form = new FormPane(getName() + ".rows");
        for (FamilyParameter parameter : shown) {
            QuantityField field = new QuantityField(
                    getName() + "." + parameter.name(), parameter.label(), QuantityKind.of(parameter));
            field.onPreview(value -> listener.changed(parameter, value, false));
            field.onCommit(value -> listener.changed(parameter, value, true));
            form.row(parameter.label(), field, parameter.explanation());
            fields.put(parameter.name(), field);
        }
        add(form);
        revalidate();
        repaint();
    }
}
