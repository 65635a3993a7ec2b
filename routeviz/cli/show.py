"""``routeviz show``: a window on the desktop, with sliders for the hood's place, its height and the first joist."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from routeviz.cli.scenes import load_scene

if TYPE_CHECKING:
    from routeviz.model.plan import Plan
    from routeviz.model.scene import Scene
    from routeviz.views.window import Dial, Setting

__all__ = ["dials_for", "moved", "show"]

_FINE_IN = 0.25
_REACH_IN = 4.0  # of the height slider where the scene leaves next to no room


def show(scene: Path, /) -> int:
    """Open a window with the kitchen in it; move the hood or the joists with sliders and see what follows.

    Parameters
    ----------
    scene
        Scene file.
    """
    from routeviz import pipeline
    from routeviz.views.screen import require_screen

    loaded = load_scene(scene)
    require_screen()
    from routeviz.views.window import Setting, Window

    plan = pipeline.plan(loaded, alternatives=1)
    joists = loaded.ceiling.joists
    here = Setting(
        plan.scene.hood.centre_in,
        plan.scene.hood.mount_in or 0.0,
        joists.first_in if joists is not None and not joists.at_in else None,
    )

    def replan(setting: Setting) -> Plan | str:
        return pipeline.plan(moved(plan.scene, setting), alternatives=1)

    Window(plan, here, dials_for(plan.scene, here), replan).open()
    return 0


def moved(scene: Scene, setting: Setting) -> Scene:
    """Give the scene with hood and cooktop, height and first joist as the sliders stand."""
    shift = setting.place - scene.hood.centre_in
    hood = replace(scene.hood, centre_in=setting.place, mount_in=setting.height)
    cooktop = replace(scene.cooktop, centre_in=scene.cooktop.centre_in + shift)
    ceiling = scene.ceiling
    if setting.joist is not None and ceiling.joists is not None:
        ceiling = replace(ceiling, joists=replace(ceiling.joists, first_in=setting.joist))
    return replace(scene, hood=hood, cooktop=cooktop, ceiling=ceiling)


def dials_for(scene: Scene, here: Setting) -> tuple[Dial, ...]:
    """Give the sliders of a scene: along the wall, within the legal heights, over one spacing of joists."""
    from routeviz import studies
    from routeviz.views.window import Dial

    heights = studies.heights(scene, step_in=_FINE_IN)
    low, high = min(heights), max(heights)
    if high - low < 1:
        low, high = here.height - _REACH_IN, here.height + _REACH_IN
    half = scene.hood.width_in / 2
    found = [
        Dial("place", "Hood, from the left wall", half, scene.kitchen.width_in - half, _FINE_IN),
        Dial("height", "Hood, above the cooktop", low, high, _FINE_IN),
    ]
    joists = scene.ceiling.joists
    if here.joist is not None and joists is not None:
        first = min(0.0, here.joist)
        found.append(Dial("joist", "First joist", first, max(joists.spacing_in, here.joist), _FINE_IN))
    return tuple(found)
