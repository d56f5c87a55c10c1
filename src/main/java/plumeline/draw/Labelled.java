package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Placed;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A thing whose label is drawn, with those that are the same and turned alike.
///
/// @param index the thing's place in the scene
/// @param mantle what carries its label
/// @param alike the others
record Labelled(int index, Mantle mantle, List<Integer> alike) {
    /// Labelled things, those of one kind and turn together.
    static List<Labelled> list(ShotAnswer answer) {
        Stage stage = answer.posed().stages().getFirst().stage();
        Scene scene = stage.scene(answer.posed().values(), 0);
        List<Labelled> all = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            Placed placed = stage.shot().placed().get(i);
            double turn = scene.things().get(i).pose().turnRadians();
            Optional<Labelled> same = all.stream()
                    .filter(other -> stage.shot()
                                    .placed()
                                    .get(other.index())
                                    .thing()
                                    .reference()
                                    .equals(placed.thing().reference())
                            && Math.abs(scene.things().get(other.index()).pose().turnRadians() - turn) < 1e-9)
                    .findFirst();
            if (same.isPresent()) {
                same.get().alike().add(i);
                continue;
            }
            int index = i;
            Mantle.find(placed.thing(), scene.things().get(i).solid())
                    .ifPresent(mantle -> all.add(new Labelled(index, mantle, new ArrayList<>())));
        }
        return all;
    }
}
