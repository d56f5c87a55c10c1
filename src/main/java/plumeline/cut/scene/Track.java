package plumeline.cut.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.stage.Scene;

/// Where one thing of a scene is at each screen frame, in glTF's axes.
///
/// @param places one a frame, metres
/// @param turns one a frame, each by the shorter way from the one before
record Track(List<Vec> places, List<Turn> turns) {
    Track {
        places = List.copyOf(places);
        turns = List.copyOf(turns);
    }

    static Track ofCamera(List<Scene> scenes) {
        return of(scenes.stream().map(Scene::aim).toList(), Aim::eye, Turn::of);
    }

    static Track ofBody(List<Scene> scenes, Function<Scene, Body> body) {
        return of(scenes.stream().map(body).toList(), one -> one.place(Vec.ZERO), one -> Turn.of(one.pose()));
    }

    private static <T> Track of(List<T> frames, Function<T, Vec> place, Function<T, Turn> turn) {
        List<Vec> places = new ArrayList<>(frames.size());
        List<Turn> turns = new ArrayList<>(frames.size());
        Turn before = new Turn(0, 0, 0, 1);
        for (T frame : frames) {
            places.add(Turn.place(place.apply(frame)));
            before = turn.apply(frame).after(before);
            turns.add(before);
        }
        return new Track(places, turns);
    }

    /// Its places as a file holds them, three figures a frame.
    float[] listPlaces() {
        float[] figures = new float[3 * places.size()];
        for (int i = 0; i < places.size(); i++) {
            figures[3 * i] = (float) places.get(i).x();
            figures[3 * i + 1] = (float) places.get(i).y();
            figures[3 * i + 2] = (float) places.get(i).z();
        }
        return figures;
    }

    /// Its turns as a file holds them, four figures a frame.
    float[] listTurns() {
        float[] figures = new float[4 * turns.size()];
        for (int i = 0; i < turns.size(); i++) {
            figures[4 * i] = (float) turns.get(i).x();
            figures[4 * i + 1] = (float) turns.get(i).y();
            figures[4 * i + 2] = (float) turns.get(i).z();
            figures[4 * i + 3] = (float) turns.get(i).w();
        }
        return figures;
    }

    /// Tells whether figures, so many a frame, are the same at every frame.
    static boolean isConstant(float[] figures, int aFrame) {
        for (int i = aFrame; i < figures.length; i++) {
            if (figures[i] != figures[i - aFrame]) {
                return false;
            }
        }
        return true;
    }
}
