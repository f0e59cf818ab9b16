package org.taperwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.passage.stroke.CanalInWork;
import org.taperwright.shaping.passage.stroke.Movement;
import org.taperwright.shaping.passage.stroke.RootWall;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StepOutcome;
import org.taperwright.shaping.passage.stroke.StepWork;
import org.taperwright.shaping.passage.stroke.Stroke;
import org.taperwright.shaping.passage.stroke.WorkingInstrument;
import org.taperwright.shaping.placement.PlacementSolver;
import org.taperwright.shaping.placement.Setting;
import org.taperwright.shaping.placement.rod.Rod;

/** A sequence of reference/canal.json, run by the engine. */
final class ReferenceSequence {
    private static final double SPACING = 0.1;
    private static final int ANGLES = 72;
    private static final double RPM = 300;

    private final JsonNode input;
    private final ShapingConstants constants;

    ReferenceSequence(JsonNode row) {
        input = row.get("input");
        JsonNode par = input.get("par");
        constants = new ShapingConstants(
                1e4,
                input.get("C").asDouble(),
                par.get("uc").asDouble(),
                par.get("mu").asDouble(),
                par.get("ke").asDouble());
    }

    CanalInWork canal() {
        return CanalInWork.of(ReferenceCanals.canal(input.get("canal")), SPACING, ANGLES);
    }

    List<JsonNode> steps() {
        return StreamSupport.stream(input.get("steps").spliterator(), false).toList();
    }

    StepOutcome run(CanalInWork canal, JsonNode step) {
        return StepWork.run(canal, instrument(step), depths(step), movement(step), constants, SPACING, Progress.NONE);
    }

    /** The torque of each stroke of a step as the reference sums it. */
    List<CarriedTorque> carried(CanalInWork canal, JsonNode step) {
        WorkingInstrument instrument = instrument(step);
        PlacementSolver solver = PlacementSolver.of(instrument.rod(), SPACING, ANGLES);
        double length = canal.geometry().lengthMm();
        List<CarriedTorque> torques = new ArrayList<>();
        for (double depth : depths(step)) {
            Stroke stroke = canal.stroke(solver, instrument, Setting.straight(depth), movement(step), constants, false);
            torques.add(CarriedTorque.of(stroke, instrument, constants, length));
        }
        return torques;
    }

    RootWall root() {
        JsonNode root = input.get("root");
        List<RootOutline> outlines = new ArrayList<>();
        for (int i = 0; i < root.get("s").size(); i++) {
            double d = 2 * root.get("R").get(i).asDouble();
            outlines.add(new RootOutline(root.get("s").get(i).asDouble(), d, d, 0));
        }
        return RootWall.about(outlines, root.get("centre_u1").asDouble(), 0);
    }

    private static List<Double> depths(JsonNode step) {
        return StreamSupport.stream(step.get("strokes").spliterator(), false)
                .map(JsonNode::asDouble)
                .toList();
    }

    private static Movement movement(JsonNode step) {
        return Movement.turned(RPM, step.get("dwell").asDouble());
    }

    /** Three edges; a round bar's plastic torque with a share cT; a power law of strain with an endurance. */
    private WorkingInstrument instrument(JsonNode step) {
        JsonNode par = input.get("par");
        Rod rod = ReferenceCanals.rod(step.get("instrument"));
        double strength = par.get("tau").asDouble() * par.get("cT").asDouble() * Math.PI / 16;
        double endurance = par.get("fat_end").asDouble();
        double a = par.get("fat_a").asDouble();
        double b = par.get("fat_b").asDouble();
        return new WorkingInstrument(
                rod,
                level -> strength * Math.pow(rod.diameterMm(level), 3),
                strain -> strain <= endurance ? Double.POSITIVE_INFINITY : Math.pow(strain / a, 1 / b),
                level -> 3,
                level -> 1,
                1,
                1);
    }
}
