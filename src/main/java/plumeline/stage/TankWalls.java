package plumeline.stage;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pinhole;
import plumeline.geom.Plane;
import plumeline.geom.Pose;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.optics.FlatWall;
import plumeline.optics.TankView;
import plumeline.plan.Kit;
import plumeline.plan.TankPlace;
import plumeline.quantity.Quantity;

/// A placed tank's walls: its outside, its inside, and its water line.
///
/// @param outside the glass's outer bounds
/// @param inside the room inside
/// @param paneMetres the panes' thickness, metres
/// @param waterLineMetres height of the water over the table, metres; the floor's where the tank is dry
public record TankWalls(Bounds outside, Bounds inside, double paneMetres, double waterLineMetres) {
    static TankWalls of(TankPlace place) {
        Kit.Tank tank = place.tank();
        double pane = tank.pane().si();
        double halfWidth = tank.inside().width().si() / 2;
        double halfDepth = tank.inside().depth().si() / 2;
        double height = tank.inside().height().si();
        double x = place.at().get(0).si();
        double y = place.at().get(1).si();
        double z = place.at().size() > 2 ? place.at().get(2).si() : 0;
        double floor = z + pane;
        Bounds inside = new Bounds(
                new Vec(x - halfWidth, y - halfDepth, floor), new Vec(x + halfWidth, y + halfDepth, floor + height));
        Bounds outside = new Bounds(
                new Vec(x - halfWidth - pane, y - halfDepth - pane, z),
                new Vec(x + halfWidth + pane, y + halfDepth + pane, floor + height));
        return new TankWalls(
                outside, inside, pane, floor + place.water().map(Quantity::si).orElse(0.0));
    }

    /// Gives the tank's glass: its floor, its front and back, its left and right wall.
    ///
    /// @return five boxes
    public List<Body> panes() {
        Vec low = outside.low();
        Vec high = outside.high();
        return List.of(
                block(low, new Vec(high.x(), high.y(), low.z() + paneMetres)),
                block(low, new Vec(high.x(), low.y() + paneMetres, high.z())),
                block(new Vec(low.x(), high.y() - paneMetres, low.z()), high),
                block(low, new Vec(low.x() + paneMetres, high.y(), high.z())),
                block(new Vec(high.x() - paneMetres, low.y(), low.z()), high));
    }

    /// Gives the tank as one block, to its rim.
    ///
    /// @return a box
    public Body block() {
        return block(outside.low(), outside.high());
    }

    /// Tells whether a body is in the water.
    ///
    /// @param body a body
    /// @return true where its middle is within the walls and some of it is under the water line
    public boolean isWet(Body body) {
        return isWithin(body) && body.bounds().low().z() < waterLineMetres;
    }

    /// Tells whether a body is in the tank, wet or dry.
    ///
    /// @param body a body
    /// @return true where its middle is within the walls and some of it is under the rim
    public boolean isWithin(Body body) {
        Vec middle = body.middle();
        return middle.x() > inside.low().x()
                && middle.x() < inside.high().x()
                && middle.y() > inside.low().y()
                && middle.y() < inside.high().y()
                && body.bounds().low().z() < inside.high().z();
    }

    /// Gives how far a body is from leaving the water: its walls, its floor, its surface.
    ///
    /// @param body a body
    /// @return metres; negative where it isn't wholly in the water
    public double underMetres(Body body) {
        Vec low = body.bounds().low().minus(inside.low());
        Vec high = inside.high().minus(body.bounds().high());
        return least(
                low.x(),
                low.y(),
                low.z(),
                high.x(),
                high.y(),
                waterLineMetres - body.bounds().high().z());
    }

    /// Gives how far a body is from touching tank or water: beside it, before it, over the water.
    ///
    /// @param body a body
    /// @return metres; negative where it reaches into them
    public double outMetres(Body body) {
        Vec before = outside.low().minus(body.bounds().high());
        Vec behind = body.bounds().low().minus(outside.high());
        double over = body.bounds().low().z() - waterLineMetres;
        return -least(-before.x(), -before.y(), -behind.x(), -behind.y(), -over);
    }

    /// Gives how far a body's middle is within the walls, its top under the surface, its base over the tank's
    /// underside.
    ///
    /// @param body a body
    /// @return metres; negative where it is beside the water, stands out of it or reaches under the tank
    public double coveredMetres(Body body) {
        Vec low = body.middle().minus(inside.low());
        Vec high = inside.high().minus(body.middle());
        return least(
                low.x(),
                low.y(),
                high.x(),
                high.y(),
                waterLineMetres - body.bounds().high().z(),
                body.bounds().low().z() - outside.low().z());
    }

    private static double least(double... values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    /// Tells whether a place is over or under the tank's floor, whatever its height.
    ///
    /// @param place a place, m
    /// @return true where it is between the walls, or the walls' planes
    public boolean isOver(Vec place) {
        return place.x() > inside.low().x()
                && place.x() < inside.high().x()
                && place.y() > inside.low().y()
                && place.y() < inside.high().y();
    }

    private static Body block(Vec low, Vec high) {
        Vec size = high.minus(low);
        Vec base = new Vec(low.x() + size.x() / 2, low.y() + size.y() / 2, low.z());
        return new Body(new Solid.Box(size.x(), size.y(), size.z()), new Pose(base, 0, 0));
    }

    /// How bodies are seen from an aim, past the tank or through it.
    static Sightlines lines(Optional<TankWalls> tank, Aim aim) {
        return tank.isPresent()
                ? new Sightlines.WithTank(aim, tank.get(), view(tank, aim))
                : new Sightlines.Free(new Pinhole(aim));
    }

    /// How a camera sees: through the tank's wall that faces it, or plainly where there is none before it.
    static Projection view(Optional<TankWalls> tank, Aim aim) {
        if (tank.isEmpty()) {
            return new Pinhole(aim);
        }
        Optional<Plane> facing = tank.get().findFacing(aim.eye());
        return facing.isPresent()
                ? new TankView(
                        aim,
                        facing.get(),
                        FlatWall.ofWater(tank.get().paneMetres()),
                        tank.get().waterLineMetres())
                : new Pinhole(aim);
    }

    /// The outer face towards a lens point; none where the lens point stands over or inside the tank.
    private Optional<Plane> findFacing(Vec eye) {
        double before = outside.low().y() - eye.y();
        double behind = eye.y() - outside.high().y();
        double left = outside.low().x() - eye.x();
        double right = eye.x() - outside.high().x();
        double most = Math.max(Math.max(before, behind), Math.max(left, right));
        if (!(most > 0)) {
            return Optional.empty();
        }
        if (most == before) {
            return Optional.of(new Plane(outside.low(), new Vec(0, -1, 0)));
        }
        if (most == behind) {
            return Optional.of(new Plane(outside.high(), new Vec(0, 1, 0)));
        }
        return most == left
                ? Optional.of(new Plane(outside.low(), new Vec(-1, 0, 0)))
                : Optional.of(new Plane(outside.high(), new Vec(1, 0, 0)));
    }
}
