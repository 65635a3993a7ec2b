"""What bars a way that the plan could not have, as findings with limit and source; and what a hood moved alone leaves behind."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from routeviz import catalog
from routeviz.model.finding import Finding, State
from routeviz.model.path import Blocker, Centreline, WhyNot
from routeviz.model.route import Part, PartKind, Route, Termination
from routeviz.model.scene import Scene
from routeviz.model.solids import ExitFace, FaceKind, Frame, Vec3
from routeviz.rules.context import Context
from routeviz.rules.profiles import Profile
from routeviz.rules.registry import Rule, all_rules

__all__ = ["barring", "leaves_cooktop", "left_behind"]

_WITH_THE_COOKTOP = frozenset(
    {"FIT-COVERAGE", "FIT-OVERHANG", "HGT-CABINET"}
)  # rules that set the hood against the cooktop
_NEAR_IN = 1.0  # a cap's place lies on its face


def barring(scene: Scene, frame: Frame, profile: Profile, whys: Sequence[WhyNot]) -> tuple[Finding, ...]:
    """Give the limits that bar ways out for a cap, each by its own rule at the place where the way would end.

    Only what the search kept the cap away from counts: the findings that the way would have beside are not told.

    Returns
    -------
    tuple of Finding
        Broken ones, each thing outdoors once by each rule; `detail` says which way it bars.
    """
    found: dict[tuple[str, str], Finding] = {}
    for why in whys:
        for met in why.blockers:
            for finding in _against(scene, frame, profile, met):
                way = f"bars the way {why.wanted}"
                told = replace(finding, detail=f"{finding.detail}; {way}" if finding.detail else way)
                found.setdefault((finding.code, met.id), told)
    return tuple(found.values())


def _against(scene: Scene, frame: Frame, profile: Profile, met: Blocker) -> Iterator[Finding]:
    face = _face(frame, met) if met.kind == "keep-out" and met.id else None
    if face is None:
        return
    context = Context(scene, frame, profile, _ending(scene, face, met.at))
    for rule in _distances():
        yield from (f for f in rule.judged(context) if f.state is State.BROKEN and met.id in f.where)


def _distances() -> Iterator[Rule]:
    limits = {row["limit"] for row in catalog.table("rules")["outdoors"].values()}
    return (r for r in all_rules() if r.code.startswith("TRM-") and limits & set(r.limits))


def _face(frame: Frame, met: Blocker) -> ExitFace | None:
    """Give the face on which a cap at a place would meet a thing outdoors."""
    for face in frame.faces:
        surface = face.at_in
        if face.kind is FaceKind.ROOF:
            surface = face.plane[0] + face.plane[1] * met.at[0] + face.plane[2] * met.at[1]
        on = face.kind is FaceKind.ROOF or abs(met.at[face.axis] - surface) < _NEAR_IN
        across = [met.at[t] for t in range(3) if t != face.axis]
        inside = all(lo - _NEAR_IN <= v <= hi + _NEAR_IN for v, lo, hi in zip(across, face.lo, face.hi, strict=True))
        if on and inside and any(k.id == met.id for k in face.keep_outs):
            return face
    return None


def _ending(scene: Scene, face: ExitFace, at: Vec3) -> Route:
    """Give a route that is nothing but its cap at a place on a face: all that distances to things outdoors ask for."""
    out = (float(face.axis == 0) * face.sign, float(face.axis == 1) * face.sign, float(face.axis == 2) * face.sign)
    section, before = scene.duct.sections[0], (at[0] - out[0], at[1] - out[1], at[2] - out[2])
    wide = None if section.is_round else (1.0, 0.0, 0.0) if face.axis != 0 else (0.0, 1.0, 0.0)
    line = Centreline(
        (before, at), (), section, (None if wide is None else wide.index(1.0),), face.id, 0.0, 1.0, 0.0, ()
    )
    cap = Part("cap", PartKind.CAP, at, at, out, out, section, section, 0.0, wide=wide)
    end = Termination(face.id, face.kind, face.space, at, out, face.label)
    return Route("barred", line, (cap,), section, 1.0, 0.0, (), 0.0, (), end, ())


def left_behind(scene: Scene, frame: Frame, profile: Profile, shift_in: float) -> tuple[Finding, ...]:
    """Give what breaks when the hood moves along the wall by `shift_in` [in] and the cooktop does not go with it.

    What would be broken as well with the cooktop under it is not counted.
    """
    hood = replace(scene.hood, centre_in=scene.hood.centre_in + shift_in)
    alone = replace(scene, hood=hood)
    both = replace(alone, cooktop=replace(scene.cooktop, centre_in=scene.cooktop.centre_in + shift_in))
    anyway = {(f.code, f.title) for f in _broken(Context(both, frame, profile))}
    return tuple(f for f in _broken(Context(alone, frame, profile)) if (f.code, f.title) not in anyway)


def leaves_cooktop(left: Sequence[Finding]) -> bool:
    """Whether a hood that leaves this behind does not do its work: a must breaks, or too little of the cooktop is covered."""
    return any(f.must or f.code == "FIT-COVERAGE" for f in left)


def _broken(context: Context) -> Iterator[Finding]:
    waivers = context.scene.rules.waivers
    for rule in all_rules():
        if rule.code in _WITH_THE_COOKTOP:
            for f in rule.judged(context):
                if f.state is State.BROKEN and not any(w.answers_for(f.code, f.where) for w in waivers):
                    yield f
