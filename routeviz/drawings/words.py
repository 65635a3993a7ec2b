"""How figures are written on sheets."""

from __future__ import annotations

from routeviz.model.overhead import ceiling_over_hood_in
from routeviz.model.plan import Plan
from routeviz.model.scene import MemberKind, Scene
from routeviz.model.takeoff import Hole
from routeviz.units import inch_text, length_text, mm_text, quantity_text

__all__ = [
    "figure",
    "hole_size",
    "length",
    "plan_name",
    "pressure",
    "pressure_figure",
    "quantity",
    "speed",
    "to_ceiling",
    "unit_note",
]

_PA_PER_INWG = 249.08891  # water at 4 degC, NIST SP 811 appendix B
_MPS_PER_FPM = 0.00508  # exact: 0.3048 / 60


def figure(length_in: float, scene: Scene) -> str:
    """Write a dimension without its unit: ``13 1/2`` or ``343``; the sheet says the unit once."""
    if scene.metric:
        return mm_text(length_in).removesuffix(" mm")
    return inch_text(length_in).removesuffix(" in")


def length(length_in: float, scene: Scene) -> str:
    """Write a length with its unit."""
    return length_text(length_in, metric=scene.metric)


def hole_size(hole: Hole, scene: Scene) -> str:
    """Write a hole's sides and shape: ``6 1/2 in round``, ``10 1/2 x 3 3/4 in rectangular (wide x high)``."""
    first, second = hole.size_in
    if abs(first - second) < 1 / 64 and hole.shape != "rectangular":
        return f"{length(first, scene)} {hole.shape}"
    if abs(first - second) < 1 / 64:
        return f"{figure(first, scene)} x {length(second, scene)} square"
    lies = f" ({hole.lies})" if hole.lies else ""
    return f"{figure(first, scene)} x {length(second, scene)} {hole.shape}{lies}"


def unit_note(scene: Scene) -> str:
    """Say which unit the dimensions have."""
    return "All sizes in millimetres." if scene.metric else "All sizes in inches."


def plan_name(plan: Plan) -> str:
    """Name the view from above after what carries the ceiling: ``Joist plan``, ``Truss plan``; ``Plan`` under a slab."""
    members = plan.scene.ceiling.joists
    if members is None:
        return "Plan"
    return "Truss plan" if members.kind is MemberKind.TRUSS else "Joist plan"


def to_ceiling(scene: Scene) -> str:
    """Name the height between cooktop and ceiling; under a slope it holds over the hood's middle."""
    sloped = ceiling_over_hood_in(scene) != scene.kitchen.ceiling_in
    return "cooktop to ceiling over the hood" if sloped else "cooktop to ceiling"


def speed(fpm: float, scene: Scene) -> str:
    """Write an air speed."""
    return f"{fpm * _MPS_PER_FPM:.1f} m/s" if scene.metric else f"{fpm:.0f} ft/min"


def pressure(inwg: float, scene: Scene) -> str:
    """Write a pressure."""
    return f"{inwg * _PA_PER_INWG:.0f} Pa" if scene.metric else f"{inwg:.2f} in wg"


def pressure_figure(inwg: float, scene: Scene) -> str:
    """Write a pressure without its unit, as fine as losses are told."""
    return f"{inwg * _PA_PER_INWG:.1f}" if scene.metric else f"{inwg:.3f}"


def quantity(value: float, unit: str, scene: Scene) -> str:
    """Write a measured value with its unit as the scene counts."""
    return quantity_text(value, unit, metric=scene.metric)
