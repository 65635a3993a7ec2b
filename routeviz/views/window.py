"""A window on the desktop: the picture, three sliders, the answer, and flags where something is broken or close.

It knows nothing of planning: it is given a function from three numbers to a plan.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

import pyvista as pv
from vtkmodules.vtkRenderingCore import vtkBillboardTextActor3D, vtkRenderer

from routeviz.folding import fold
from routeviz.model.finding import State, Verdict
from routeviz.model.members import together
from routeviz.model.plan import Plan
from routeviz.units import length_text
from routeviz.views.palette import BAR_INK, CLOSE, INK, PAPER, TEAL, rgb
from routeviz.views.parts import Flag, Layer
from routeviz.views.rendering import furnish, light_up
from routeviz.views.stage import Stage, build
from routeviz.views.viewpoints import Viewport, camera

__all__ = ["Dial", "Setting", "Window"]

_SIZE = (1280, 860)
_STANDS = {"r": "room", "c": "ceiling", "a": "along", "o": "outside"}
_COLUMN = 32  # signs to a line of the column beside the picture
_LINE = 0.0205  # from line to line of it, of the window's height
_FOOT = 0.15  # where it ends, above the sliders
_PAPER_HELD = 0.82  # of what lies behind a text
_WORDS = "R room   C ceiling   A along   O outside   arrows move the hood   , . joists   Q closes"


@dataclass(frozen=True)
class Setting:
    """Where the three sliders stand [in]; None where the kitchen has no such number."""

    place: float
    height: float
    joist: float | None


@dataclass(frozen=True)
class Dial:
    """One slider: which number of the setting it moves, its words, its range and its step [in]."""

    name: str
    words: str
    low: float
    high: float
    step: float

    def near(self, value: float) -> float:
        """Give the nearest value that the slider can stand at."""
        return min(self.high, max(self.low, self.low + round((value - self.low) / self.step) * self.step))


class Window:
    """The window of one scene.

    Parameters
    ----------
    plan : Plan
        What is shown first.
    setting : Setting
        Where the sliders stand then.
    dials : sequence of Dial
        The sliders.
    replan : callable
        Gives the plan for a setting, or a sentence that says why there is none.
    """

    def __init__(
        self, plan: Plan, setting: Setting, dials: tuple[Dial, ...], replan: Callable[[Setting], Plan | str]
    ) -> None:
        self.plan, self.setting, self.dials, self._replan = plan, setting, dials, replan
        self._view = "room"
        self._said = ""
        self._sliders: dict[str, Any] = {}
        self.plotter = pv.Plotter(window_size=list(_SIZE), lighting="none", title=f"{plan.scene.name}: routeviz")
        pv.Plotter.set_background(self.plotter, "#ece4d6", top="#f8f4ec")
        self._marks = vtkRenderer()  # in front of everything, so that nothing hides a flag
        self._layer()
        self._furnish(stand=True)
        for n, dial in enumerate(dials):
            self._sliders[dial.name] = self._slider(n, dial)
        self._keys()

    def _layer(self) -> None:
        window = self.plotter.render_window
        assert window is not None
        window.SetNumberOfLayers(2)
        self.plotter.renderer.SetLayer(0)
        self._marks.SetLayer(1)
        self._marks.InteractiveOff()
        self._marks.SetActiveCamera(self.plotter.camera)
        window.AddRenderer(self._marks)

    # ---- what is drawn -------------------------------------------------------------------------------------------
    def _furnish(self, *, stand: bool) -> None:
        """Draw the plan anew; the camera stays where the person has put it unless `stand`."""
        sliders = [each.GetRepresentation() for each in self._sliders.values()]
        for name in [n for n, actor in self.plotter.actors.items() if actor not in sliders]:
            pv.Plotter.remove_actor(self.plotter, name, render=False, reset_camera=False)
        self._marks.RemoveAllViewProps()
        self.stage = build(self.plan)
        hidden = frozenset({Layer.OUTER} if self._view != "outside" else ())
        furnish(self.plotter, self.stage, without=hidden | ({Layer.COVER} if self._view == "along" else set()))
        for flag in self.stage.flags:
            if flag.place is not None and flag.state in (State.BROKEN, State.CLOSE):
                self._marks.AddActor(_flag(flag))
        self._write()
        if stand:
            port = Viewport(0.24, 0.14, 0.97, 0.84)
            view = camera(self.plan, self.stage.cut, self._view, aspect=_SIZE[0] / _SIZE[1], port=port)
            light_up(self.plotter, view)
            self.plotter.camera_position = [view.eye, view.target, view.up]
            self.plotter.camera.view_angle = view.angle_deg
        self.plotter.reset_camera_clipping_range()

    def _write(self) -> None:
        for words, at, size, colour, name in self._texts():
            actor = self.plotter.add_text(
                words, position=at, font_size=size, color=colour, font="arial", viewport=True, name=name, render=False
            )
            prop = actor.GetTextProperty()
            prop.SetVerticalJustificationToTop() if at[1] > 0.5 else prop.SetVerticalJustificationToBottom()
            _on_paper(prop)
            if name == "answer":
                prop.BoldOn()

    def _texts(self) -> list[tuple[str, tuple[float, float], int, str, str]]:
        plan = self.plan
        works = plan.verdict in (Verdict.WORKS, Verdict.TIGHT)
        head = fold(self._said or f"{plan.verdict.value}. {plan.answer}", 96)
        second = fold(plan.second, _COLUMN)
        under = 0.975 - 0.029 * len(head)
        left = listed(plan, self.stage, most=int((under - _FOOT) / _LINE) - len(second) - 2)
        return [
            ("\n".join(head), (0.02, 0.985), 12, TEAL if works and not self._said else BAR_INK, "answer"),
            ("\n".join(second), (0.02, under - 0.012), 9, INK, "second"),
            (left, (0.02, _FOOT), 9, INK, "findings"),
            (_WORDS, (0.02, 0.005), 8, INK, "keys"),
        ]

    # ---- sliders and keys ----------------------------------------------------------------------------------------
    def _slider(self, n: int, dial: Dial) -> Any:
        width = 0.96 / len(self.dials)
        left = 0.02 + n * width
        made = pv.Plotter.add_slider_widget(
            self.plotter, lambda value: self.turn(dial.name, float(value)),
            [dial.low, dial.high], value=getattr(self.setting, dial.name), title=self._title(dial),
            pointa=(left + 0.02, 0.085), pointb=(left + width - 0.03, 0.085), color=INK, style="modern",
            interaction_event="end", title_height=0.022, title_color=INK, fmt="", slider_width=0.03, tube_width=0.008,
        )  # fmt: skip
        made.GetRepresentation().ShowSliderLabelOff()
        _on_paper(made.GetRepresentation().GetTitleProperty())
        return made

    def _title(self, dial: Dial) -> str:
        value = length_text(getattr(self.setting, dial.name), metric=self.plan.scene.metric)
        return f"{dial.words} {value}"

    def turn(self, name: str, value: float) -> None:
        """Bring a slider to a value, plan anew and draw; a value that it stands at already changes nothing."""
        dial = next(d for d in self.dials if d.name == name)
        wanted = replace(self.setting, **{name: dial.near(value)})
        if wanted == self.setting and not self._said:
            return
        answer = self._replan(wanted)
        self.setting = wanted
        if isinstance(answer, Plan):
            self.plan, self._said = answer, ""
        else:
            self._said = answer
        for each in self.dials:
            shape = self._sliders[each.name].GetRepresentation()
            shape.SetValue(getattr(self.setting, each.name))
            shape.SetTitleText(self._title(each))
        self._furnish(stand=False)
        self.plotter.render()

    def stand(self, view: str) -> None:
        """Stand at a named place."""
        self._view = view
        self._furnish(stand=True)
        self.plotter.render()

    def _keys(self) -> None:
        def step(name: str, by: float) -> None:
            dial = next((d for d in self.dials if d.name == name), None)
            if dial is not None:
                self.turn(name, getattr(self.setting, name) + by * max(dial.step, 1.0))

        moves = {"Left": ("place", -1), "Right": ("place", 1), "Up": ("height", 1), "Down": ("height", -1),
                 "comma": ("joist", -1), "period": ("joist", 1)}  # fmt: skip
        for key, (name, by) in moves.items():
            pv.Plotter.add_key_event(self.plotter, key, lambda name=name, by=by: step(name, by))
        for key, view in _STANDS.items():
            pv.Plotter.add_key_event(self.plotter, key, lambda view=view: self.stand(view))

    def open(self, *, wait: bool = True) -> None:
        """Show the window; with `wait`, until the person closes it."""
        self.plotter.show(interactive=wait, auto_close=False, interactive_update=not wait)

    def close(self) -> None:
        """Give the window back."""
        self.plotter.close()


def listed(plan: Plan, stage: Stage, *, most: int = 24) -> str:
    """Give what is in the way where there is no route, then the broken and close findings with the numbers of their flags.

    Of the findings as many as fit into `most` lines of the column beside the picture, worst first; the rest is counted.
    """
    told = plan.paths.told_first if plan.best is None else None
    names = list(dict.fromkeys(b.label for b in told.told if b.id)) if told is not None else []
    barred = fold(f"In the way: {together(names)}", _COLUMN, rest="    ") if names else []
    entries = [
        fold(
            f"{flag.number}  {flag.state.value}: {flag.title}{f', {flag.short}' if flag.short else ''}",
            _COLUMN,
            rest="    ",
        )
        for flag in stage.flags
        if flag.state in (State.BROKEN, State.CLOSE)
    ]
    if not entries and plan.best is not None:
        return "Nothing is broken or close."
    lines = barred
    for n, entry in enumerate(entries):
        last = n + 1 == len(entries)
        if len(lines) + len(entry) + (not last) > most:
            lines.append(f"and {len(entries) - n} more")
            break
        lines += entry
    return "\n".join(lines)


def _on_paper(prop: Any) -> None:
    """Lay light paper under a text, so that it is read where the picture reaches behind it."""
    prop.SetBackgroundColor(*(c / 255 for c in rgb(PAPER)))
    prop.SetBackgroundOpacity(_PAPER_HELD)


def _flag(flag: Flag) -> vtkBillboardTextActor3D:
    """Give a number on a plate that turns to the eye: a red frame when broken, an ochre one when close."""
    assert flag.place is not None
    made = vtkBillboardTextActor3D()
    made.SetInput(f" {flag.number}! " if flag.state is State.BROKEN else f" {flag.number} ")
    made.SetPosition(*flag.place)
    made.ForceOpaqueOn()
    prop = made.GetTextProperty()
    colour = rgb(BAR_INK if flag.state is State.BROKEN else CLOSE)
    prop.SetFontFamilyToArial()
    prop.SetFontSize(17)
    prop.BoldOn()
    prop.SetColor(*(c / 255 for c in colour))
    prop.SetBackgroundColor(*(c / 255 for c in rgb(PAPER)))
    prop.SetBackgroundOpacity(1.0)
    prop.FrameOn()
    prop.SetFrameColor(*(c / 255 for c in colour))
    prop.SetFrameWidth(2)
    return made
