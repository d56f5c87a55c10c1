package plumeline.flow;

/// The six sides of the box.
///
/// @param left at x = 0
/// @param right at x = width
/// @param front at y = 0
/// @param back at y = depth
/// @param floor at z = 0
/// @param top at z = height
public record Walls(Wall left, Wall right, Wall front, Wall back, Wall floor, Wall top) {
    /// A tank: glass all round and below, an open surface above.
    ///
    /// @return the walls
    public static Walls tank() {
        Wall glass = Wall.glass();
        return new Walls(glass, glass, glass, glass, glass, Wall.surface());
    }

    /// The same wall on all sides.
    ///
    /// @param wall the wall
    /// @return the walls
    public static Walls all(Wall wall) {
        return new Walls(wall, wall, wall, wall, wall, wall);
    }

    /// A two-dimensional box: four walls, and front and back along which the water slides.
    ///
    /// @param left at x = 0
    /// @param right at x = width
    /// @param floor at z = 0
    /// @param top at z = height
    /// @return the walls
    public static Walls flat(Wall left, Wall right, Wall floor, Wall top) {
        return new Walls(left, right, Wall.surface(), Wall.surface(), floor, top);
    }

    /// The wall where an axis begins.
    Wall low(int axis) {
        return axis == 0 ? left : axis == 1 ? front : floor;
    }

    /// The wall where an axis ends.
    Wall high(int axis) {
        return axis == 0 ? right : axis == 1 ? back : top;
    }
}
