"""What is over the hood, worked out from the scene alone; several stages need the same number."""

from __future__ import annotations

from routeviz.model.scene import AboveKind, MemberKind, RoofForm, RunDirection, Scene, WallSide

__all__ = ["ceiling_at_in", "ceiling_over_hood_in"]


def ceiling_over_hood_in(scene: Scene) -> float:
    """Give the height of the ceiling over the hood's middle [in above the floor]."""
    return ceiling_at_in(scene, scene.hood.centre_in)


def ceiling_at_in(scene: Scene, x_in: float) -> float:
    """Give the height of the ceiling at the hood wall, `x_in` from the left wall [in above the floor].

    Under a ceiling that follows the rafters the scene's height holds at the hood wall, or at the low side wall where
    the ridge runs out from the hood wall; the slope is added from there.
    """
    flat, roof = scene.kitchen.ceiling_in, scene.roof
    sloped = (
        scene.above.kind is AboveKind.ROOF
        and scene.ceiling.joists is None
        and roof is not None
        and not (roof.framing is not None and roof.framing.kind is MemberKind.TRUSS)
    )
    if not sloped or roof is None or roof.ridge is RunDirection.ALONG or roof.form is RoofForm.FLAT:
        return flat
    x, width = x_in, scene.kitchen.width_in
    if roof.form is RoofForm.SHED:
        return flat + roof.pitch * (width - x if roof.high_side is WallSide.LEFT else x)
    ridge = min(max(roof.ridge_at_in, 0.0), width)
    if ridge <= 0.0 or ridge >= width:
        return flat + roof.pitch * (x if ridge >= width else width - x)
    top = roof.pitch * ridge
    return flat + (roof.pitch * x if x <= ridge else top * (width - x) / (width - ridge))
