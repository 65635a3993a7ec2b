"""The words beside a conflict: what is in the way and where it stands, the least change that frees it, what clears it."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import ends_of
from routeviz.drawings.flow import tick_box
from routeviz.drawings.lettering import wrapped
from routeviz.drawings.primitives import Face
from routeviz.drawings.sheet import Sheet, section_title
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.wished import Wish, wishes
from routeviz.drawings.words import figure, length
from routeviz.model.path import Blocker, WhyNot
from routeviz.model.plan import Plan
from routeviz.model.scene import OutdoorKind, Scene
from routeviz.model.solids import ExitFace, KeepOut, Solid
from routeviz.model.study import Fix

__all__ = ["COLUMN", "STOP", "banner", "draw_column", "free_places", "shifts"]

STOP = "Nothing is cut, drilled or hung before this conflict is solved and the scene is planned again."
COLUMN = 82.0  # width [mm]


def free_places(plan: Plan) -> list[tuple[float, str]]:
    """Give the places of the hood's centre from the left wall [in] that free a straight way, each with its words."""
    found: dict[float, str] = {}
    for wish in wishes(plan):
        for shift, words in shifts(wish, plan.scene):
            found.setdefault(plan.scene.hood.centre_in + shift, words)
    return sorted(found.items())


def shifts(wish: Wish, scene: Scene) -> list[tuple[float, str]]:
    """Give the shifts of the hood that free a way [in], right positive, the least first."""
    why = wish.why
    found: list[tuple[float, str]] = []
    for shift in (why.shift_in, why.shift_other_in):
        if shift is not None:
            found.append((shift, f"{_moved(shift, scene)}{_along(shift, why)}, the least that way"))
    if why.middle_in is not None and all(abs(why.middle_in - s) > 1 / 64 for s, _ in found):
        spare = f", {length(why.spare_in, scene)} to spare" if why.spare_in else ""
        found.append(
            (why.middle_in, f"{_moved(why.middle_in, scene)}{_along(why.middle_in, why)}, the middle of the bay{spare}")
        )
    return found


def _along(shift_in: float, why: WhyNot) -> str:
    return " with the cooktop" if shift_in in why.with_cooktop else ""


def _moved(shift_in: float, scene: Scene) -> str:
    return f"{length(abs(shift_in), scene)} {'right' if shift_in > 0 else 'left'}"


def draw_column(sheet: Sheet, plan: Plan, wish: Wish, fixes: Sequence[Fix]) -> None:
    """Say what is in the way with its place, what frees it, and what was planned again."""
    left, right = sheet.room[2] - COLUMN, sheet.room[2]
    y = banner(sheet, (left, sheet.room[3] - 3.0), right, STOP)
    y = section_title(sheet, (left, y - 7.0), "Look first: is it really there?", right)
    y = _ticked(sheet.sketch, [_place(b, plan, wish) for b in wish.bars], left, right, y)
    y = section_title(sheet, (left, y - 3.0), "Least change that frees this way", right)
    scene = plan.scene
    moves = [
        f"Hood centre {length(scene.hood.centre_in + s, scene)} from the left wall: {words}."
        for s, words in sorted(shifts(wish, scene), key=lambda s: abs(s[0]))
    ]
    y = _ticked(sheet.sketch, moves or ["No shift of the hood within reach frees it."], left, right, y, box=bool(moves))
    y = section_title(sheet, (left, y - 3.0), "What clears the plan, each planned again", right)
    told = [f"{fix.words}: {fix.answer[:1].lower()}{fix.answer[1:]}" for fix in fixes]
    _ticked(
        sheet.sketch,
        told or ["No change that was tried clears it: ask the building department before anything is bought."],
        left,
        right,
        y,
        box=bool(told),
    )


def banner(sheet: Sheet, at: tuple[float, float], right: float, words: str) -> float:
    """Write a caution in a heavy frame with its upper left at `at`; give the height below it [mm]."""
    lines = wrapped(words, ink.BODY, Face.BOLD, right - at[0] - 6.0)
    low = at[1] - 4.0 * len(lines) - 2.6
    sheet.sketch.rect((at[0], low), (right, at[1]), ink.HEAVY, colour=ink.BAR)
    for n, line in enumerate(lines):
        sheet.sketch.text((at[0] + 3.0, at[1] - 4.2 - 4.0 * n), line, ink.BODY, Face.BOLD)
    return low


def _ticked(sketch: Sketch, texts: Sequence[str], left: float, right: float, y: float, *, box: bool = True) -> float:
    for words in texts:
        if box:
            tick_box(sketch, left, y)
        for line in wrapped(words, ink.SMALL, Face.SANS, right - left - 5.5):
            sketch.text((left + 4.8, y), line, ink.SMALL)
            y -= 3.5
        y -= 1.2
    return y


def _place(bar: Blocker, plan: Plan, wish: Wish) -> str:
    """Say where a thing in the way stands, from edges that a tape can hook on."""
    scene = plan.scene
    if bar.kind == "zone":
        return f"The {bar.label.removeprefix('the ')} is closed to the duct."
    if bar.kind == "keep-out":
        things = wish.face.seen_from(wish.route.termination.point) if wish.face else ()
        thing = next((t for t in things if t.id == bar.id), None)
        return _thing_words(thing, wish, scene) if thing else bar.label
    solid = plan.frame.solid(bar.id)
    name = f"{solid.label[:1].upper()}{solid.label[1:]}"
    low, high = ends_of(solid.shape, 0)
    where = f"edges {figure(low, scene)} and {length(high, scene)} from the left wall"
    if _runs_along(solid):
        near, far = (-v for v in reversed(ends_of(solid.shape, 1)))
        where = f"edges {figure(near, scene)} and {length(far, scene)} out from the hood wall"
    found = "" if bar.overlap_in <= 0 else f", {length(bar.overlap_in, scene)} into the duct"
    return f"{name}: {where}{found}. Found: ________"


def _runs_along(solid: Solid) -> bool:
    return solid.member is not None and solid.member.axis == 0


def _thing_words(thing: KeepOut, wish: Wish, scene: Scene) -> str:
    gap = _gap_in(thing, wish, wish.face)
    short = thing.distance_in - gap
    name = f"{thing.label[:1].upper()}{thing.label[1:]}"
    behind = (
        thing.kind == OutdoorKind.LOT_LINE and thing.away_in > 0
    )  # it runs along the wall: a tape goes out from there
    start = "the wall's face" if behind else "the cap's opening"
    return (
        f"{name}: {length(gap, scene)} from {start}, at least {length(thing.distance_in, scene)} is wanted: "
        f"{length(short, scene)} short. Found: ________"
    )


def _gap_in(thing: KeepOut, wish: Wish, face: ExitFace | None) -> float:
    """Give the distance from the opening's edge to a thing on the face or away from it [in]."""
    assert face is not None
    end = wish.route.termination.point
    at = [end[k] for k in range(3) if k != face.axis]
    beside = [max(lo - p, 0.0, p - hi) for lo, hi, p in zip(thing.lo, thing.hi, at, strict=True)]
    flat_gap = max(0.0, (beside[0] ** 2 + beside[1] ** 2) ** 0.5 - wish.route.section.width_in / 2)
    return float((flat_gap**2 + thing.away_in**2) ** 0.5)
