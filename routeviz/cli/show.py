"""``routeviz show``: a window on the desktop, with sliders for the hood's place, its height and the first joist, or rafter."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from routeviz.cli.scenes import load_scene

if TYPE_CHECKING:
    from routeviz.model.plan import Plan
    from routeviz.model.scene import MemberLayout, Scene
    from routeviz.views.window import Dial, Setting

__all__ = ["dials_for", "moved", "setting_of", "show"]

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
    from routeviz.views.window import Window

    plan = pipeline.plan(loaded, alternatives=1)
    here = setting_of(plan.scene)

    def replan(setting: Setting) -> Plan | str:
        return pipeline.plan(moved(plan.scene, setting), alternatives=1)

    Window(plan, here, dials_for(plan.scene, here), replan).open()
    return 0


def setting_of(scene: Scene) -> Setting:
    """Give where the sliders of a scene stand; members that are listed one by one have no first to move."""
    from routeviz.views.window import Setting

    members = _members(scene)
    first = members.first_in if members is not None and not members.at_in else None
    return Setting(scene.hood.centre_in, scene.hood.mount_in or 0.0, first)


def _members(scene: Scene) -> MemberLayout | None:
    """Give what lies over the board: the ceiling's joists, or the rafters of a ceiling that has none."""
    if scene.ceiling.joists is not None:
        return scene.ceiling.joists
    return scene.roof.framing if scene.roof is not None else None


def moved(scene: Scene, setting: Setting) -> Scene:
    """Give the scene with hood and cooktop, height and first joist or rafter as the sliders stand."""
    shift = setting.place - scene.hood.centre_in
    hood = replace(scene.hood, centre_in=setting.place, mount_in=setting.height)
    cooktop = replace(scene.cooktop, centre_in=scene.cooktop.centre_in + shift)
    found = replace(scene, hood=hood, cooktop=cooktop)
    members = _members(scene)
    if setting.joist is None or members is None:
        return found
    members = replace(members, first_in=setting.joist)
    if scene.ceiling.joists is not None:
        return replace(found, ceiling=replace(scene.ceiling, joists=members))
    assert scene.roof is not None
    return replace(found, roof=replace(scene.roof, framing=members))


def dials_for(scene: Scene, here: Setting) -> tuple[Dial, ...]:
    """Give the sliders of a scene: along the wall, within the legal heights, over one spacing of joists or rafters."""
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
    members = _members(scene)
    if here.joist is not None and members is not None:
        first, words = min(0.0, here.joist), "First joist" if scene.ceiling.joists is not None else "First rafter"
        found.append(Dial("joist", words, first, max(members.spacing_in, here.joist), _FINE_IN))
    return tuple(found)
