"""The ceiling's height over any point of the kitchen; whoever needs it, framing too, asks here."""

from __future__ import annotations

from routeviz.model.roofline import eave_on_rafters_in, follows_rafters, roof_lines, room_edges
from routeviz.model.scene import RunDirection, Scene

__all__ = ["ceiling_at_in", "ceiling_over_hood_in"]


def ceiling_over_hood_in(scene: Scene) -> float:
    """Give the height of the ceiling over the hood's middle at its wall [in above the floor]."""
    return ceiling_at_in(scene, scene.hood.centre_in)


def ceiling_at_in(scene: Scene, x_in: float, out_in: float = 0.0) -> float:
    """Give the height of the finished ceiling [in above the floor].

    A ceiling that follows the rafters has the scene's height at the hood wall where that wall holds the roof, else
    where the roof comes down to a wall of the room.

    Parameters
    ----------
    scene : Scene
        The house.
    x_in, out_in : float
        The place: from the left wall, and out from the hood wall [in].
    """
    flat, roof = scene.kitchen.ceiling_in, scene.roof
    if roof is None or not follows_rafters(scene):
        return flat
    u = -out_in if roof.ridge is RunDirection.ALONG else x_in
    line = roof_lines(scene, roof, room_edges(scene, roof), eave_on_rafters_in(scene, roof)).over(u)
    board = sum(layer.thickness_in for layer in scene.ceiling.layers)
    return line.a + line.b * u - board * line.stretch
