"""Checks on the equipment: does the hood fit its wall, the outlet its hood, the cooktop its kitchen."""

from __future__ import annotations

import itertools
import math

from routeviz.scenefile.check_house import follows_rafters
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.check_turns import check_turns
from routeviz.scenefile.document import Document, FittingTable
from routeviz.scenefile.equipment import FanTable, HoodTable
from routeviz.scenefile.fields import is_blank
from routeviz.scenefile.paths import Path

__all__ = ["check_equipment"]

_FAR = 1.25  # of the curve's flow: makers' curves and labels are read off more closely than this
_WIDEST_IN = 120.0  # of a hood or a cooktop
_LABEL_INWG = 0.1  # at which a label without its pressure is taken to be rated, or lower


def check_equipment(document: Document, notes: Notes) -> None:
    """Check everything that is bought."""
    _check_cooktop(document, notes)
    _check_hood_place(document, notes)
    _check_outlet(document.hood, notes)
    _check_cover(document.hood, notes)
    _check_fan(document.hood, notes)
    _check_fixings(document.hood, notes)
    _check_duct(document, notes)
    _check_rules(document, notes)
    if document.as_built is not None:
        for n, fitting in enumerate(document.as_built.fittings):
            _check_fitting(fitting, ("as_built", "fittings", n), notes)
        _check_route(document.as_built.fittings, notes)
        check_turns(document, notes)


def _check_inside(
    path: Path, what: str, centre: float, width: float, room: float, notes: Notes, least: float = 0.0
) -> None:
    if width > _WIDEST_IN and room >= _WIDEST_IN:
        notes.add((*path[:-1], "width"), f"must be at most {notes.length(_WIDEST_IN)}", "Check the number and its unit")
    elif width > room + 1e-9:
        notes.add((*path[:-1], "width"), f"wider than the wall, which is {notes.length(room)}", "Check both widths")
    elif centre - width / 2 < least - 1e-9:
        short = notes.length(least - (centre - width / 2))
        notes.add(path, f"the {what} would reach {short} into the left wall", f"Write {_at_least(width / 2, notes)}")
    elif centre + width / 2 > room + 1e-9:
        over = notes.length(centre + width / 2 - room)
        remedy = f"Write {notes.length(room - width / 2)} or less"
        notes.add(path, f"the {what} would reach {over} into the right wall", remedy)


def _at_least(length: float, notes: Notes) -> str:
    return f"{notes.length(length)} or more"


def _check_cooktop(document: Document, notes: Notes) -> None:
    cooktop, kitchen = document.cooktop, document.kitchen
    _check_inside(("cooktop", "centre"), "cooktop", cooktop.centre, cooktop.width, kitchen.width, notes)
    if cooktop.back + cooktop.depth > kitchen.depth:
        notes.add(
            ("cooktop", "depth"), f"the kitchen is only {notes.length(kitchen.depth)} deep", "Check back and depth"
        )
    if cooktop.height >= kitchen.ceiling:
        notes.add(("cooktop", "height"), "not below the ceiling", "Check the height of the cooking surface")
    for n, burner in enumerate(cooktop.burners):
        path: Path = ("cooktop", "burners", n)
        if not _within(burner.across, burner.diameter, cooktop.width):
            notes.add((*path, "across"), "the burner reaches over the cooktop's side", "Measure from its left edge")
        if not _within(burner.from_back, burner.diameter, cooktop.depth):
            notes.add((*path, "from_back"), "the burner reaches over the cooktop's edge", "Measure from its back edge")


def _within(centre: float, size: float, room: float) -> bool:
    """Whether something of `size` lies inside; also true while a number is not known."""
    return not (centre - size / 2 < -1e-9 or centre + size / 2 > room + 1e-9)


def _check_hood_place(document: Document, notes: Notes) -> None:
    hood, kitchen, cooktop = document.hood, document.kitchen, document.cooktop
    centre = cooktop.centre if hood.centre is None else hood.centre
    cooktop_fits = _within(cooktop.centre, cooktop.width, kitchen.width)
    if hood.centre is not None or hood.width > min(kitchen.width, _WIDEST_IN) or cooktop_fits:
        _check_inside(("hood", "centre"), "hood", centre, hood.width, kitchen.width, notes)
    if hood.depth > kitchen.depth:
        notes.add(("hood", "depth"), f"the kitchen is only {notes.length(kitchen.depth)} deep", "Check the depth")
    if hood.canopy > hood.body:
        notes.add(
            ("hood", "canopy"), f"higher than the whole body ({notes.length(hood.body)})", "Check canopy and body"
        )
    if hood.mount is None or follows_rafters(document):
        return  # under a slope the rule for the hood's room measures the true height over it
    top = cooktop.height + hood.mount + hood.body
    if top > kitchen.ceiling + 1e-9:
        over = notes.length(top - kitchen.ceiling)
        notes.add(("hood", "mount"), f"the hood's body would reach {over} into the ceiling", "Check mount and body")


def _check_outlet(hood: HoodTable, notes: Notes) -> None:
    outlet, path = hood.outlet, ("hood", "outlet")
    wide, high = outlet.section.width_in, outlet.section.height_in
    if wide > hood.width:
        notes.add((*path, "section"), f"bigger than the hood, which is {notes.length(hood.width)} wide", "Check both")
    elif abs(outlet.across) + wide / 2 > hood.width / 2 + 1e-9:
        notes.add((*path, "across"), "the outlet would reach over the hood's side", "Count from its centre line")
    if outlet.place == "top":
        if outlet.out is None:
            notes.missing((*path, "out"), 'Add out = "8 1/2 in" (its centre, out from the finished wall)')
        elif outlet.out - high / 2 < -1e-9:
            notes.add((*path, "out"), "the outlet would reach into the wall", _out_remedy(high, notes))
        elif outlet.out + high / 2 > hood.depth + 1e-9:
            notes.add(
                (*path, "out"), "the outlet would reach over the hood's front edge", "Check out and the hood's depth"
            )
        if outlet.up is not None:
            notes.add((*path, "up"), "a top outlet has no height of its own", 'Take it out, or write place = "rear"')
    if outlet.place == "rear":
        if outlet.up is None:
            notes.missing((*path, "up"), 'Add up = "8 in" (its centre, above the hood\'s underside)')
        elif outlet.up - high / 2 < -1e-9 or outlet.up + high / 2 > hood.body + 1e-9:
            room = notes.length(hood.body)
            notes.add((*path, "up"), f"the outlet would reach over the hood's back, which is {room} high", "Check up")
        if outlet.out is not None:
            notes.add((*path, "out"), "a rear outlet lies in the hood's back", 'Take it out, or write place = "top"')


def _out_remedy(high: float, notes: Notes) -> str:
    return f"Write {_at_least(high / 2, notes)}"


def _check_cover(hood: HoodTable, notes: Notes) -> None:
    cover = hood.cover
    if cover is None:
        return
    if cover.min > cover.max:
        problem = f"more than the longest height ({notes.length(cover.max)})"
        notes.add(("hood", "cover", "min"), problem, "Check min and max of the cover")
    if cover.width > hood.width:
        notes.add(("hood", "cover", "width"), f"wider than the hood ({notes.length(hood.width)})", "Check both widths")
    if cover.depth > hood.depth:
        notes.add(("hood", "cover", "depth"), f"deeper than the hood ({notes.length(hood.depth)})", "Check both depths")


def _check_fan(hood: HoodTable, notes: Notes) -> None:
    fan, path = hood.fan, ("hood", "fan")
    if fan.rated == 0:
        notes.add((*path, "rated"), "must be more than nothing", "Write the flow on the label")
    if len(fan.curve) == 1:
        notes.add((*path, "curve"), "one point is no curve", "Give at least two pairs of flow and pressure")
    before = len(notes.found)
    _check_curve(fan.curve, (*path, "curve"), notes)
    said = [fan.rated, *(() if fan.rated_at is None else (fan.rated_at,)), *itertools.chain(*fan.curve)]
    if len(fan.curve) > 1 and fan.rated > 0 and len(notes.found) == before and all(map(math.isfinite, said)):
        _check_rating(fan, (*path, "rated"), notes)
    if not fan.speeds:
        notes.add((*path, "speeds"), "no speed is listed", "Write speeds = [1.0], or leave it out")
    elif fan.speeds[0] < 1:
        notes.add((*path, "speeds", 0), "the first speed is full speed", "Begin the list with 1.0")


def _check_curve(curve: tuple[tuple[float, float], ...], path: Path, notes: Notes) -> None:
    """Check that flow grows from pair to pair, and that pressure falls with it once it has begun to fall."""
    falling = False
    for n, (a, b) in enumerate(itertools.pairwise(curve), start=1):
        if b[0] <= a[0]:
            notes.add((*path, n), "flow does not rise", "List the pairs from the smallest flow to the largest")
        elif b[1] > a[1] and falling:
            problem = "the pressure rises again, and past its peak a fan's pressure falls as the flow grows"
            notes.add((*path, n), problem, "Read this point and the one before it off the maker's curve again")
        falling = falling or b[1] < a[1]


def _check_rating(fan: FanTable, path: Path, notes: Notes) -> None:
    """Check that the label's flow lies near the curve: far off it, one of the two is of another fan or unit.

    A label without its pressure may be of free delivery.
    """
    curve = fan.curve
    (most, least), top = curve[-1], max(pressure for _, pressure in curve)
    at, problem = fan.rated_at, ""
    if at is None:
        if least <= _LABEL_INWG and fan.rated > most * _FAR:
            problem = f"the curve ends at {notes.flow(most)}"
    elif at > top:
        problem = f"the curve never reaches {notes.pressure(at)}, at which this flow is rated"
    elif at < least:
        if fan.rated * _FAR < most:
            problem = f"the curve gives {notes.flow(most)} at a higher pressure"
    else:
        there = _flow_on(curve, at)
        if not there / _FAR <= fan.rated <= there * _FAR:
            problem = f"the curve gives {notes.flow(there)} at {notes.pressure(at)}"
    if problem:
        notes.add(
            path,
            problem,
            "Read both again, for one fan at full speed; or take the curve out, and the label alone is used",
        )


def _flow_on(curve: tuple[tuple[float, float], ...], at: float) -> float:
    """Give the largest flow at which straight lines through the points have a pressure."""
    for (q0, p0), (q1, p1) in reversed(tuple(itertools.pairwise(curve))):
        if min(p0, p1) <= at <= max(p0, p1):
            return q1 if p0 == p1 else q0 + (q1 - q0) * (p0 - at) / (p0 - p1)
    return curve[-1][0]


def _check_fixings(hood: HoodTable, notes: Notes) -> None:
    reach = hood.body + (hood.cover.max if hood.cover else 0.0)
    places = [(("hood", "fasteners", n), f.across, f.up) for n, f in enumerate(hood.fasteners)]
    if hood.electrical is not None:
        places.append((("hood", "electrical"), hood.electrical.across, hood.electrical.up))  # type: ignore[arg-type]
    for path, across, up in places:
        if abs(across) > hood.width / 2 + 1e-9:
            half = notes.length(hood.width / 2)
            problem = f"beyond the hood's side, {half} from its centre line"
            notes.add((*path, "across"), problem, "Count from the hood's centre line; left of it is negative")
        if up < -1e-9 or up > reach + 1e-9:
            notes.add((*path, "up"), "not on the hood or its cover", "Count from the hood's underside upwards")


def _check_duct(document: Document, notes: Notes) -> None:
    duct = document.duct
    if duct.sections is not None:
        if not duct.sections:
            notes.add(("duct", "sections"), "no duct is listed", 'Write sections = ["8 in round"], or leave it out')
        for n, section in enumerate(duct.sections):
            if section in duct.sections[:n]:
                notes.add(("duct", "sections", n), "listed twice", "List each section once")
    if duct.overlap >= duct.stock:
        notes.add(("duct", "overlap"), "not less than a whole section of duct", "Check overlap and stock")
    if (
        not document.cap.wall
        and not document.cap.roof
        and not is_blank(document.cap.wall)
        and not is_blank(document.cap.roof)
    ):
        notes.add(("cap",), "neither a wall cap nor a roof cap may be used", "Allow wall = true or roof = true")


def _check_rules(document: Document, notes: Notes) -> None:
    maker = document.rules.maker
    if maker.hood_min is not None and maker.hood_max is not None and maker.hood_min > maker.hood_max:
        problem = f"more than the greatest height ({notes.length(maker.hood_max)})"
        notes.add(("rules", "maker", "hood_min"), problem, "Check hood_min and hood_max")
    seen: set[str] = set()
    for n, waiver in enumerate(document.rules.waivers):
        if not is_blank(waiver.code) and waiver.code in seen:
            notes.add(("rules", "waivers", n, "code"), "this finding is waived twice", "Keep one of them")
        seen.add(waiver.code)


def _check_fitting(fitting: FittingTable, path: Path, notes: Notes) -> None:
    part = fitting.part
    if part in ("straight", "flex") and fitting.length == 0:
        notes.missing((*path, "length"), 'Add length = "30 in"')
    if part in ("elbow", "offset") and fitting.turn == "":
        notes.missing((*path, "turn"), 'Add turn = "back" (up, down, left, right, back or front)')
    if part == "reducer" and fitting.to_section is None:
        notes.missing((*path, "to_section"), 'Add to_section = "6 in round"')
    if part not in ("elbow", "offset") and not is_blank(part) and fitting.turn:
        notes.add((*path, "turn"), f"a {part} does not turn", 'Take it out, or write part = "elbow"')
    if part != "reducer" and not is_blank(part) and fitting.to_section is not None:
        notes.add((*path, "to_section"), f"a {part} keeps its section", 'Take it out, or write part = "reducer"')


def _check_route(fittings: tuple[FittingTable, ...], notes: Notes) -> None:
    if not fittings:
        notes.add(("as_built",), "lists no fittings", "Write [[as_built.fittings]], once for each, from the hood")
    for n, fitting in enumerate(fittings[:-1]):
        if fitting.part in ("cap", "open end"):
            path: Path = ("as_built", "fittings", n, "part")
            notes.add(path, f"a {fitting.part} ends the duct, but more fittings follow", "Put it last")
