"""The least intrusive changes that clear every must-finding, each planned again before it is offered.

What no change of place can clear, such as makeup air, does not hold back the fix of a duct: it is named beside it.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass, replace

from routeviz import pipeline, rules
from routeviz.model.finding import FramingPiece, MemberVerdict, State, Verdict
from routeviz.model.path import Outcome
from routeviz.model.plan import Plan
from routeviz.model.scene import Obstacle, Scene, SectionShape, SectionSize
from routeviz.model.solids import Solid, SolidKind
from routeviz.model.spoken import spoken
from routeviz.model.study import Fix, FixKind
from routeviz.units import MM_PER_IN, length_text, parse_length

__all__ = ["fixes"]

_STEP_IN = 0.25
_REACH_IN = 60.0  # as far as a simpler way's least shift is told
_SEARCHES = 8  # plans made at the most
_ELSEWHERE = ("AIR-", "PWR-")  # families of rules that no change of place clears


@dataclass(frozen=True, slots=True)
class _Try:
    """One change to plan again."""

    kind: FixKind
    words: str
    scene: Scene
    changes: tuple[tuple[str, str], ...]
    moved_in: float
    members: tuple[str, ...] = ()


def needs_fix(plan: Plan) -> bool:
    """Whether a plan has anything that must be cleared."""
    return plan.verdict in (Verdict.BLOCKED, Verdict.NO_PLACE)


def fixes(
    plan: Plan,
    *,
    most: int = 3,
    kinds: Collection[FixKind] = tuple(FixKind),
    progress: Callable[[str], None] | None = None,
) -> tuple[Fix, ...]:
    """Find up to `most` changes that clear all must-findings of a plan, least intrusive first.

    Every fix offered was planned again with all rules; one that leaves a must-finding is offered only where nothing
    else is found and no change of place could clear what is left. At most one fix of each kind and side is given, so
    that the choices differ.

    Parameters
    ----------
    plan : Plan
        A plan that is Blocked or has No place; any other needs none and gets none.
    most : int
        How many to give.
    kinds : collection of FixKind
        What may be changed; everything when left out.
    progress : callable
        Told each change as it is tried.
    """
    if not needs_fix(plan) or plan.scene.as_built is not None:
        return ()
    found = _found(plan, most, kinds, progress, frozenset())
    stuck = frozenset(f.code for f in plan.must_broken if f.code.startswith(_ELSEWHERE))
    if not found and stuck and (plan.best is None or {f.code for f in plan.must_broken} != stuck):
        return _found(plan, most, kinds, progress, stuck)
    return found


def _found(
    plan: Plan, most: int, kinds: Collection[FixKind], progress: Callable[[str], None] | None, stuck: frozenset[str]
) -> tuple[Fix, ...]:
    """Look for changes that leave no must-finding but of these codes."""
    found: list[Fix] = []
    later: list[_Try] = []
    had: set[FixKind] = set()
    searches = 0

    def take(attempt: _Try) -> bool:
        nonlocal searches
        changed = _as_filed(plan, attempt)
        if len(found) >= most or searches >= _SEARCHES or not _worth_a_search(changed, stuck):
            return False
        if progress:
            progress(attempt.words)
        searches += 1
        hidden = attempt.kind is not FixKind.BOX or plan.paths.outcome is not Outcome.NONE_EXISTS
        again = pipeline.plan(changed, alternatives=1, counted=False, hidden=hidden)
        left = again.must_broken
        if again.best is None or {f.code for f in left} - stuck or not _does(attempt, again):
            return False
        found.append(replace(_fix(attempt, again), left=tuple(dict.fromkeys(f.title for f in left))))
        return True

    for attempt in (a for a in _tries(plan) if a.kind in kinds):
        if attempt.kind in had:
            later.append(attempt)
        elif take(attempt):
            had.add(attempt.kind)
    sides = {(f.kind, f.words) for f in found}
    for attempt in later:
        mirrored = any(kind is attempt.kind and _mirrors(words, attempt.words) for kind, words in sides)
        if mirrored and take(attempt):
            sides.add((attempt.kind, attempt.words))
    order = {kind: n for n, kind in enumerate(FixKind)}
    return tuple(sorted(found, key=lambda f: (order[f.kind], f.moved_in)))


def _mirrors(words: str, other: str) -> bool:
    """Whether two fixes differ in their side, so that the second is another choice and not the first again."""
    return ("left" in words) != ("left" in other) and ("right" in words) != ("right" in other)


def _does(attempt: _Try, again: Plan) -> bool:
    """Whether the plan does what the fix says: an offset that is promised is there."""
    line = again.best.route.centreline if again.best else None
    return attempt.kind is not FixKind.OFFSET or (line is not None and any(b.offset_id for b in line.bends))


def _as_filed(plan: Plan, attempt: _Try) -> Scene:
    """Give the changed scene as its file would be read: a mounting height that was chosen is chosen again."""
    chosen = any(a.field == "hood.mount" for a in plan.assumptions)
    if not chosen or attempt.kind is FixKind.HEIGHT:
        return attempt.scene
    return replace(attempt.scene, hood=replace(attempt.scene.hood, mount_in=None))


def _worth_a_search(scene: Scene, stuck: frozenset[str]) -> bool:
    """Whether the changed scene clears every other must-finding that does not hang on the route; quick, no search."""
    found = (f for f in pipeline.scene_findings(scene) if f.code not in stuck)
    return not any(f.state is State.BROKEN and f.must and not f.waived for f in found)


def _fix(attempt: _Try, again: Plan) -> Fix:
    best = again.best
    assert best is not None
    states = [f.state for f in again.all_findings if not f.waived]
    return Fix(
        kind=attempt.kind,
        words=attempt.words,
        changes=attempt.changes,
        moved_in=abs(attempt.moved_in),
        elbows=best.route.elbows,
        turns=best.route.turns,
        length_in=best.route.length_in,
        boxed_in=best.route.boxed_in,
        flow_cfm=best.air.full.flow_cfm,
        close=states.count(State.CLOSE),
        broken=states.count(State.BROKEN),
        verdict=again.verdict,
        answer=again.answer,
        members=attempt.members,
        _again=again,
    )


def _tries(plan: Plan) -> Iterator[_Try]:
    """Give changes, least intrusive first."""
    yield from _things_raised(plan)
    yield from _moves(plan)
    yield from _sections(plan.scene)
    yield from _other_ends(plan.scene)
    yield from _framed(plan)


def _moves(plan: Plan) -> Iterator[_Try]:
    """Moves of the hood, the height, then hood and cooktop together; only moves that could matter."""
    shifts, profile = _shifts(plan), rules.profile(plan.scene.rules.profile, file=plan.scene.file)
    for shift in shifts:
        if not rules.leaves_cooktop(rules.left_behind(plan.scene, plan.frame, profile, shift)):
            yield _shifted(plan.scene, shift, both=False)
    yield from _offsets(plan)
    for height in _heights(plan):
        yield _raised(plan.scene, height)
    for shift in shifts:
        yield _shifted(plan.scene, shift, both=True)


def _shifts(plan: Plan) -> tuple[float, ...]:
    """Give shifts to try, least first: what frees a straight run (and what also allows for the scene's tolerances),
    and what gives the hood room."""
    scene = plan.scene
    spare = max(scene.tolerances.joists_in, scene.tolerances.studs_in, scene.tolerances.rafters_in)
    found: set[float] = set()
    for why in plan.paths.why_not:
        if why.verified:
            for shift in (why.shift_in, why.shift_other_in):
                if shift:
                    away = 1.0 if shift > 0 else -1.0
                    found |= {shift, shift + away * spare, shift + away * 2.0}
            if why.middle_in:
                found.add(why.middle_in)
    for finding in plan.findings:
        if finding.code.startswith("FIT-ROOM") and finding.state is State.BROKEN and finding.margin is not None:
            found |= {finding.margin, -finding.margin}
    stepped = {_outward(s) for s in found if abs(s) <= _REACH_IN}
    return tuple(sorted(stepped, key=lambda s: (abs(s), s)))


def _offsets(plan: Plan) -> Iterator[_Try]:
    """Shift the hood less than a straight duct needs, and let an offset inside the cover make up the rest."""
    scene = plan.scene
    cover, section = scene.hood.cover, scene.duct.sections[0]
    if cover is None or scene.hood.outlet.place != "top":
        return
    room = (cover.width_in - section.width_in) / 2
    rising = [w for w in plan.paths.why_not if w.verified and w.wanted == "straight up"]
    needed = {shift for w in rising for shift in (w.shift_in, w.shift_other_in)}
    for shift in sorted((s for s in needed if s), key=abs):
        for less in (room, room - 0.5, room - 1.0):
            move = math.copysign(max(abs(shift) - less, 0.0), shift)
            if 0 < less < abs(shift) or (less > 0 and move == 0):
                yield _offset_try(scene, _outward(move), shift)


def _offset_try(scene: Scene, move: float, shift: float) -> _Try:
    plain = _shifted(scene, move, both=False)
    aside = f"step the duct aside {_side(shift)} inside the cover with an offset"
    words = f"{plain.words}, and {aside}" if move else aside[0].upper() + aside[1:]
    return replace(plain, kind=FixKind.OFFSET, words=words, moved_in=move)


def _outward(shift: float) -> float:
    """Round a shift up to a quarter inch, away from where the hood stands."""
    steps = math.ceil(abs(shift) / _STEP_IN - 1e-9)
    return math.copysign(steps * _STEP_IN, shift)


def _things_raised(plan: Plan) -> Iterator[_Try]:
    """Raise cabinets and shelves that hang too low over or beside the cooktop by what they lack, all together."""
    scene = plan.scene
    lack: dict[str, float] = {}
    heights = [
        f for f in plan.must_broken if f.unit == "in" and f.margin is not None and f.code.startswith(("HGT-", "CLR-"))
    ]
    window = max((-f.margin for f in heights if f.code == "HGT-WINDOW" and f.margin is not None), default=0.0)
    for finding in heights:
        for thing in finding.where:
            lack[thing] = max(lack.get(thing, window), -(finding.margin or 0.0))
    things = [o for o in scene.obstacles if o.id in lack]
    if not things:
        return
    raised = {o.id: _raise(o, lack[o.id], scene) for o in things}
    words = " and ".join(
        f"{'shorten' if raised[o.id].height_in < o.height_in else 'raise'} the {spoken(o.id)} "
        f"by {_text(raised[o.id].bottom_in - o.bottom_in, scene)}"
        for o in things
    )
    fields = [
        pair
        for o in raised.values()
        for pair in (
            (f"obstacles.{o.id}.bottom", _text(o.bottom_in, scene)),
            (f"obstacles.{o.id}.height", _text(o.height_in, scene)),
        )
    ]
    changed = replace(scene, obstacles=tuple(raised.get(o.id, o) for o in scene.obstacles))
    yield _Try(
        FixKind.CABINET, f"{words[0].upper()}{words[1:]}", changed, tuple(fields), max(lack[o.id] for o in things)
    )
    names = " and ".join(f"the {spoken(o.id)}" for o in things)
    left = replace(scene, obstacles=tuple(o for o in scene.obstacles if o.id not in lack))
    yield _Try(FixKind.CABINET, f"Take away {names}", left, tuple((f"obstacles.{o.id}", "") for o in things), 0.0)


def _raise(thing: Obstacle, lack_in: float, scene: Scene) -> Obstacle:
    """Lift a thing's underside: a tall one is shortened, one that is not tall enough for that moves up whole."""
    height = thing.height_in - lack_in if thing.height_in > 2 * lack_in else thing.height_in
    return replace(thing, bottom_in=_up(thing.bottom_in + lack_in, scene), height_in=_down(height, scene))


def _heights(plan: Plan) -> Iterator[float]:
    """Give heights to try, nearest first: those that free a way, or the window's when something else hangs on height."""
    scene = plan.scene
    mount = scene.hood.mount_in or 0.0
    freeing = {mount + w.lift_in for w in plan.paths.why_not if w.verified and w.lift_in}
    if not plan.options and all(
        f.code.startswith("TRM-") for f in plan.must_broken
    ):  # the search has looked at every height for a way out
        yield from sorted((_written(h, scene) for h in freeing), key=lambda h: abs(h - mount))
        return
    lows = [f.limit for f in plan.findings if f.code.startswith("HGT") and f.relation == "at least" and f.limit]
    highs = [f.limit for f in plan.findings if f.code.startswith("HGT") and f.relation == "at most" and f.limit]
    low, high = max(lows, default=mount), min(highs, default=mount + 6)
    heights = {_up(low, scene), _down(high, scene), *(_written(h, scene) for h in (*freeing, (low + high) / 2))}
    for height in sorted(heights, key=lambda h: abs(h - mount)):
        if abs(height - mount) > 1e-6 and height > 0:
            yield height


def _side(move: float) -> str:
    return "left" if move < 0 else "right"


def _text(value: float, scene: Scene) -> str:
    return length_text(value, metric=scene.metric).replace("−", "-")


def _written(value: float, scene: Scene) -> float:
    """Round a length to what a scene file says of it, so that what is planned again is what is written."""
    return parse_length(_text(value, scene))


def _step(scene: Scene) -> float:
    """Give the smallest step [in] that a written length shows."""
    return 1 / MM_PER_IN if scene.metric else 1 / 16


def _up(value: float, scene: Scene) -> float:
    """Round a length up to what a scene file can say."""
    step = _step(scene)
    return _written(math.ceil(value / step - 1e-6) * step, scene)


def _down(value: float, scene: Scene) -> float:
    """Round a length down to what a scene file can say."""
    step = _step(scene)
    return _written(math.floor(value / step + 1e-6) * step, scene)


def _shifted(scene: Scene, shift: float, *, both: bool) -> _Try:
    hood = replace(scene.hood, centre_in=_written(scene.hood.centre_in + shift, scene))
    changed = replace(scene, hood=hood)
    fields = [("hood.centre", _text(hood.centre_in, scene))]
    kind, what = FixKind.SHIFT, f"Shift {_text(abs(shift), scene)} {_side(shift)}"
    if both:
        cooktop = replace(scene.cooktop, centre_in=_written(scene.cooktop.centre_in + shift, scene))
        changed = replace(changed, cooktop=cooktop)
        fields.append(("cooktop.centre", _text(cooktop.centre_in, scene)))
        kind, what = FixKind.SHIFT_BOTH, f"Shift hood and cooktop {_text(abs(shift), scene)} {_side(shift)}"
    return _Try(kind, what, changed, tuple(fields), shift)


def _raised(scene: Scene, height: float) -> _Try:
    mount = scene.hood.mount_in or 0.0
    move = height - mount
    words = f"{'Raise' if move > 0 else 'Lower'} the hood {_text(abs(move), scene)}, to {_text(height, scene)} above the cooktop"
    changed = replace(scene, hood=replace(scene.hood, mount_in=height))
    return _Try(FixKind.HEIGHT, words, changed, (("hood.mount", _text(height, scene)),), move)


def section_text(section: SectionSize, *, metric: bool) -> str:
    """Write a section as a scene file takes it: "8 in round", "3 1/4 in x 10 in"."""

    def size(value: float) -> str:
        return length_text(value, metric=metric)

    if section.shape is SectionShape.ROUND:
        return f"{size(section.width_in)} round"
    plain = f"{size(section.height_in).removesuffix(' in').removesuffix(' mm')} x {size(section.width_in)}"
    return plain if section.shape is SectionShape.RECT else f"{plain} oval"


def _sections(scene: Scene) -> Iterator[_Try]:
    rest = scene.duct.sections[1:]
    for section in rest:
        order = (section, *(s for s in scene.duct.sections if s is not section))
        words = f"Use {section_text(section, metric=scene.metric)} duct"
        texts = [section_text(s, metric=scene.metric) for s in order]
        changed = replace(scene, duct=replace(scene.duct, sections=order))
        yield _Try(FixKind.SECTION, words, changed, (("duct.sections", repr(texts)),), 0.0)


def _other_ends(scene: Scene) -> Iterator[_Try]:
    cap, duct = scene.cap, scene.duct
    if not cap.roof:
        yield _Try(
            FixKind.WAY,
            "Let it end on the roof",
            replace(scene, cap=replace(cap, roof=True)),
            (("cap.roof", "true"),),
            0.0,
        )
    if not cap.wall:
        yield _Try(
            FixKind.WAY,
            "Let it end on a wall",
            replace(scene, cap=replace(cap, wall=True)),
            (("cap.wall", "true"),),
            0.0,
        )
    if not duct.boxing_allowed:
        boxed = replace(scene, duct=replace(duct, boxing_allowed=True))
        yield _Try(FixKind.BOX, "Box a run in below the ceiling", boxed, (("duct.boxing_allowed", "true"),), 0.0)


def _framed(plan: Plan) -> Iterator[_Try]:
    """Cut one member and frame round it, where its rule says how; engineered members have no such way."""
    for ruling in plan.members:
        if not ruling.framing or ruling.verdict is MemberVerdict.DECIDED_ELSEWHERE:
            continue
        solid = plan.frame.solid(ruling.solid)
        if solid.member is None or solid.member.number == 0 or solid.space != "kitchen":
            continue
        changed = _without(plan.scene, solid, solid.member.number)
        if changed is None:
            continue
        pieces = tuple(_piece_text(piece, plan.scene) for piece in ruling.framing)
        words = f"Cut {solid.label} and frame an opening round the duct: {', '.join(pieces[:2])}"
        yield _Try(FixKind.FRAME, words, changed[0], (changed[1],), 0.0, (solid.label, *pieces))


def _piece_text(piece: FramingPiece, scene: Scene) -> str:
    size = f" {_text(piece.length_in, scene)}" if piece.length_in is not None else ""
    return f"{piece.counted} {piece.size}{size}"


def _without(scene: Scene, solid: Solid, number: int) -> tuple[Scene, tuple[str, str]] | None:
    """Give the scene without one stud or joist, and the field that says so."""
    if solid.kind is SolidKind.JOIST and scene.ceiling.joists is not None:
        joists = replace(scene.ceiling.joists, missing=(*scene.ceiling.joists.missing, number))
        return replace(scene, ceiling=replace(scene.ceiling, joists=joists)), (
            "ceiling.joists.missing",
            str(list(joists.missing)),
        )
    if solid.kind is SolidKind.STUD and solid.side is not None:
        walls = []
        field = ("", "")
        for wall in scene.walls:
            if wall.side is solid.side and wall.studs is not None:
                studs = replace(wall.studs, missing=(*wall.studs.missing, number))
                field = (f"walls.{wall.side}.studs.missing", str(list(studs.missing)))
                walls.append(replace(wall, studs=studs))
            else:
                walls.append(wall)
        return (replace(scene, walls=tuple(walls)), field) if field[0] else None
    return None
