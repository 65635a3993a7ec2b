"""The ceiling's height over any point of the kitchen; whoever needs it, framing too, asks here."""

from __future__ import annotations

from routeviz.model.roofline import eave_on_rafters_in, follows_rafters, roof_lines, room_edges
from routeviz.model.scene import RunDirection, Scene

__all__ = ["ceiling_at_in", "ceiling_over_hood_in", "ceiling_span_in", "cover_room_in"]


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


def ceiling_span_in(scene: Scene, x_in: tuple[float, float], out_in: tuple[float, float]) -> tuple[float, float]:
    """Give how low and how high the ceiling is over a rectangle [in]: under a slope the two differ.

    `x_in` counts from the left wall, `out_in` from the hood wall; a ridge over the rectangle is its highest line.
    """
    roof = scene.roof
    if roof is None or not follows_rafters(scene):
        return scene.kitchen.ceiling_in, scene.kitchen.ceiling_in
    ridge = roof_lines(scene, roof, room_edges(scene, roof), eave_on_rafters_in(scene, roof)).ridge_u
    xs, outs = list(x_in), list(out_in)
    if ridge is not None:
        along = roof.ridge is RunDirection.ALONG
        across, at = (outs, -ridge) if along else (xs, ridge)
        if across[0] < at < across[-1]:
            across.append(at)
    heights = [ceiling_at_in(scene, x, out) for x in xs for out in outs]
    return min(heights), max(heights)


def cover_room_in(scene: Scene) -> tuple[float, float] | None:
    """Give the least and the most height [in] between the hood's body and the ceiling over its cover.

    None without a cover or a mounting height.
    """
    bottom, cover = scene.hood_bottom_in, scene.hood.cover
    if bottom is None or cover is None:
        return None
    x, half = scene.hood.centre_in, cover.width_in / 2
    low, high = ceiling_span_in(scene, (x - half, x + half), (0.0, cover.depth_in))
    top = bottom + scene.hood.body_in
    return low - top, high - top
