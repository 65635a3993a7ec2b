"""What the stud finder said, and what follows: the real bays, what is in the way, and each way out of that."""

from __future__ import annotations

import itertools
import re
import statistics
from dataclasses import replace
from typing import Any

from routeviz import freespace, pipeline, rules, search
from routeviz.errors import LengthError
from routeviz.geometry import bounds
from routeviz.model.path import WhyNot
from routeviz.model.scene import MemberLayout, RunDirection, Scene
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.study import Bay, FixKind, JoistAt, JoistPreview
from routeviz.studies.fixes import fixes, needs_fix
from routeviz.units import length_text, parse_length

__all__ = ["joist_preview", "joists_as_json", "read_marks"]

_USUAL_IN = (12.0, 16.0, 19.2, 24.0)  # common practice: centre to centre
_METRIC_IN = (400 / 25.4, 600 / 25.4)
_OFF_IN = 1.0  # a gap that differs more from the usual one is told
_EXAMPLE = "13 1/4, 29, 45 1/8"


def read_marks(text: str, *, unit: str = "in") -> tuple[float, ...]:
    """Read joist centres as they were called out: ``13 1/4, 29, 45 1/8``.

    Parameters
    ----------
    text : str
        Distances from the left wall (or from the hood wall), parted by commas, semicolons, "and" or new lines.
    unit : str
        Unit of bare numbers.

    Returns
    -------
    tuple of float
        Centres [in], rising.

    Raises
    ------
    LengthError
        If one of them is no length, or stands twice, or there is none.
    """
    words = [w.strip() for w in re.split(r"[,;\n]|\band\b", text) if w.strip()]
    if not words:
        raise LengthError(text, "no distance in it", f"Write the joists' centres like {_EXAMPLE}")
    found = sorted(parse_length(word, unit=unit) for word in words)
    if found[0] < 0 or found[-1] > 1200:
        raise LengthError(text, "not within a kitchen", "Count from the wall, in inches")
    for a, b in itertools.pairwise(found):
        if b - a < 0.5:
            raise LengthError(text, f"{length_text(a)} stands in it twice", "Name every joist once, by its centre")
    return tuple(found)


def joist_preview(scene: Scene, marks_in: tuple[float, ...], *, offset: bool = False) -> JoistPreview:
    """Say what joists at these centres mean for a duct straight up from the hood.

    Between and beyond the marks the pattern is carried on at the usual spacing that fits the marks; what is carried on is
    marked as not measured.

    Parameters
    ----------
    scene : Scene
        The kitchen; its ceiling must have joists, its hood a top outlet for a duct straight up to make sense.
    marks_in : tuple of float
        Measured joist centres from the left wall, or from the hood wall where joists run along it [in].
    offset : bool
        Also plan with these joists, and look for two equal bends that step round the joist. Takes seconds.

    Raises
    ------
    LengthError
        If the scene has no joists to measure.
    """
    layout = scene.ceiling.joists
    if layout is None:
        raise LengthError("", "this ceiling has no joists", "Describe its joists first")
    along = layout.direction is RunDirection.ALONG
    reach = scene.kitchen.depth_in if along else scene.kitchen.width_in
    spacing = _spacing(marks_in, layout, metric=scene.metric)
    centres = _carried_on(marks_in, spacing, layout.width_in, reach)
    moved = replace(layout, at_in=centres, first_in=centres[0], spacing_in=spacing, missing=(), doubled=())
    changed = replace(scene, ceiling=replace(scene.ceiling, joists=moved))
    profile = rules.profile(scene.rules.profile, file=scene.file)
    settled = pipeline.settle(changed, profile)
    frame = pipeline.framed(settled, profile)
    section = settled.duct.sections[0]
    up = [w for w in _why(settled, frame) if w.wanted == "straight up"]
    joists = _joists(frame, marks_in, along=along)
    x, half = _outlet(settled, along=along), section.width_in / 2
    found = JoistPreview(
        along=along,
        spacing_in=spacing,
        joists=joists,
        bays=_bays(joists, reach, x, 2 * half + 2 * scene.duct.clearance_in),
        duct_in=(x - half, x + half),
        blockers=tuple((b.label, b.overlap_in) for w in up for b in w.blockers),
        shift_left_in=None if along else _side(up, -1),
        shift_right_in=None if along else _side(up, 1),
        middle_in=None if along or not up else up[0].middle_in,
        opening=_openings(settled, frame, profile, up),
        notes=tuple(_notes(marks_in, spacing, centres, scene)),
        changes=_changes(marks_in, centres, scene),
    )
    return _with_offset(found, changed) if offset and up else found


def _spacing(marks: tuple[float, ...], layout: MemberLayout, *, metric: bool) -> float:
    """Give the usual spacing that the gaps between the marks fit best; multiples count as members that were missed."""
    gaps = [b - a for a, b in itertools.pairwise(marks)]
    if not gaps:
        return layout.spacing_in
    usual = _METRIC_IN if metric else _USUAL_IN
    near = min(usual, key=lambda s: (abs(statistics.median(gaps) - s), s))
    return near if abs(statistics.median(gaps) - near) <= 2 * _OFF_IN else statistics.median(gaps)


def _steps(gap: float, spacing: float) -> int:
    """Give how many spacings a gap holds; 1 when it is no whole number of them."""
    count = max(1, round(gap / spacing))
    return count if abs(gap - count * spacing) <= 2 * _OFF_IN else 1


def _carried_on(marks: tuple[float, ...], spacing: float, width: float, reach: float) -> tuple[float, ...]:
    """Give the marks, with the pattern carried on to both walls and over gaps that are twice or more too wide."""
    centres = list(marks)
    for a, b in itertools.pairwise(marks):
        count = _steps(b - a, spacing)
        centres += [a + (b - a) * n / count for n in range(1, count)]
    at = marks[0] - spacing
    while at - width / 2 >= 0:
        centres.append(at)
        at -= spacing
    at = marks[-1] + spacing
    while at + width / 2 <= reach:
        centres.append(at)
        at += spacing
    return tuple(sorted(centres))


def _why(scene: Scene, frame: Frame) -> tuple[WhyNot, ...]:
    space = freespace.carve(frame, scene, scene.duct.sections[0], places_in=rules.hood_places(scene))
    return search.why_not_straight(space, below=1) if space.start.axis == 2 else ()


def _joists(frame: Frame, marks: tuple[float, ...], *, along: bool) -> tuple[JoistAt, ...]:
    """Give the joists as framed, measured from their edge."""
    found: dict[int, JoistAt] = {}
    for solid in frame.solids:
        if solid.member is None or not solid.origin.startswith("ceiling.joists") or solid.kind is SolidKind.BLOCKING:
            continue
        box = bounds(solid.shape)
        low, high = (-box.hi[1], -box.lo[1]) if along else (box.lo[0], box.hi[0])
        centre, number = (low + high) / 2, solid.member.number
        if number and number not in found:
            found[number] = JoistAt(number, centre, low, high, _is_mark(centre, marks))
    return tuple(sorted(found.values(), key=lambda j: j.centre_in))


def _outlet(scene: Scene, *, along: bool) -> float:
    hood = scene.hood
    return hood.outlet.out_in if along else hood.centre_in + hood.outlet.across_in


def _bays(joists: tuple[JoistAt, ...], reach: float, x: float, needed: float) -> tuple[Bay, ...]:
    edges = [0.0, *(e for j in joists for e in (j.low_in, j.high_in)), reach]
    pairs = zip(edges[::2], edges[1::2], strict=True)
    return tuple(Bay(a, b, b - a >= needed - 1e-9, a <= x <= b) for a, b in pairs if b - a > 1 / 16)


def _side(ways: list[WhyNot], sign: int) -> float | None:
    shifts = [s for w in ways if w.verified for s in (w.shift_in, w.shift_other_in) if s and s * sign > 0]
    return min(shifts, key=abs, default=None)


def _openings(scene: Scene, frame: Frame, profile: rules.Profile, ways: list[WhyNot]) -> tuple[tuple[str, Any], ...]:
    rulings = rules.blocker_rulings(scene, frame, profile, tuple(ways))
    return tuple((r.label, r) for r in rulings)


def _notes(marks: tuple[float, ...], spacing: float, centres: tuple[float, ...], scene: Scene) -> list[str]:
    def text(value: float) -> str:
        return length_text(value, metric=scene.metric)

    notes = []
    for a, b in itertools.pairwise(marks):
        count = _steps(b - a, spacing)
        if count > 1:
            missed = f"{count - 1} joist{'s' if count > 2 else ''}"
            notes.append(
                f"From {text(a)} to {text(b)} is {text(b - a)}: {missed} may have been missed there; look again."
            )
        elif abs(b - a - spacing) > _OFF_IN:
            notes.append(f"From {text(a)} to {text(b)} is {text(b - a)}, not the {text(spacing)} of the others.")
    carried = len(centres) - len(marks)
    if carried:
        notes.append(
            f"{carried} more joist{'s were' if carried > 1 else ' was'} carried on at {text(spacing)}; "
            f"{'they are' if carried > 1 else 'it is'} not measured."
        )
    return notes


def _changes(marks: tuple[float, ...], centres: tuple[float, ...], scene: Scene) -> tuple[tuple[str, object], ...]:
    """Give the fields that put the joists into the scene file; first and spacing give way to the list.

    What was only carried on is marked as guessed, one centre at a time.
    """
    listed = [length_text(c, metric=scene.metric) for c in centres]
    gone = [f"ceiling.joists.{key}" for key in ("first", "spacing", "missing", "doubled")]
    said = [a.field for a in scene.assumptions if a.marked]
    kept = [place for place in said if not f"{place}.".startswith(tuple(f"{g}." for g in (*gone, "ceiling.joists.at")))]
    carried = [f"ceiling.joists.at.{n}" for n, c in enumerate(centres, 1) if not _is_mark(c, marks)]
    guessed = [*kept, *carried] or None
    told: list[tuple[str, object]] = [] if guessed is None and not said else [("assumed", guessed)]
    return (("ceiling.joists.at", listed), *((place, None) for place in gone), *told)


def _is_mark(centre: float, marks: tuple[float, ...]) -> bool:
    return any(abs(centre - mark) < 0.02 for mark in marks)


def _with_offset(found: JoistPreview, changed: Scene) -> JoistPreview:
    """Plan with these joists; where two equal bends step round the joist, say with what."""
    plan = pipeline.plan(changed, alternatives=1, counted=False)
    line = plan.best.route.centreline if plan.best else None
    if not needs_fix(plan) and line is not None and any(b.offset_id for b in line.bends):
        return replace(found, offset=plan.answer, offset_words="An offset steps the duct aside; the hood stays")
    tried = fixes(plan, most=1, kinds=(FixKind.OFFSET,))
    if not tried:
        return found
    return replace(found, offset=tried[0].answer, offset_words=tried[0].words, offset_changes=tried[0].changes)


def joists_as_json(found: JoistPreview) -> dict[str, Any]:
    """Give a preview as plain data; lengths in inches."""
    return {
        "along": found.along, "spacing": found.spacing_in, "duct": list(found.duct_in),
        "joists": [[j.number, j.centre_in, j.low_in, j.high_in, j.measured] for j in found.joists],
        "bays": [[b.low_in, b.high_in, b.fits, b.here] for b in found.bays],
        "blockers": [list(b) for b in found.blockers],
        "left": found.shift_left_in, "right": found.shift_right_in, "middle": found.middle_in,
        "opening": [
            [label, r.verdict.value, r.rule, r.source_text, [[p.name, p.size, p.length_in, p.count] for p in r.framing]]
            for label, r in found.opening
        ],
        "notes": list(found.notes), "changes": dict(found.changes), "offset": found.offset,
        "offset_words": found.offset_words, "offset_changes": dict(found.offset_changes),
    }  # fmt: skip
