"""The answer in one sentence, the word over it, and the line that says why not simpler."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.model.airflow import AirStatus
from routeviz.model.finding import Finding, MemberRuling, State, Verdict, inside_sentence, musts_named
from routeviz.model.members import together
from routeviz.model.path import Blocker, Outcome, Paths, WhyNot
from routeviz.model.plan import Option
from routeviz.model.scene import OutdoorKind, Scene, SpaceKind, WallSide
from routeviz.units import flow_text, length_text

__all__ = ["ROOM_CODE_PREFIX", "WEBS", "answer", "second_line", "to_clear", "verdict"]

ROOM_CODE_PREFIX = "FIT-ROOM"
WEBS = "ways through the webs of I-joists, which the maker's chart allows"
_HARDLY_IN = 1 / 64
_FALLBACK = "What is left without a route is a hood that cleans and returns the air; one that blows outdoors is better."


def _open(findings: Sequence[Finding], state: State) -> list[Finding]:
    return [f for f in findings if f.state is state and not f.waived]


def verdict(options: Sequence[Option], findings: Sequence[Finding]) -> Verdict:
    """Judge: a hood that cannot hang is No place; no route or a broken must is Blocked; a broken should or anything close is tight."""
    if any(f.code.startswith(ROOM_CODE_PREFIX) for f in _open(findings, State.BROKEN)):
        return Verdict.NO_PLACE
    every = [*findings, *(options[0].findings if options else ())]
    if not options or any(f.must for f in _open(every, State.BROKEN)):
        return Verdict.BLOCKED
    if options[0].route.boxed_in > 0 or _open(every, State.BROKEN) or _open(every, State.CLOSE):
        return Verdict.TIGHT
    return Verdict.WORKS


def _length(value: float, scene: Scene, *, long: bool = False) -> str:
    return length_text(value, metric=scene.metric, long=long)


def answer(scene: Scene, paths: Paths, options: Sequence[Option], findings: Sequence[Finding], word: Verdict) -> str:
    """Say the answer in one sentence."""
    if word is Verdict.NO_PLACE:
        first = next(f for f in _open(findings, State.BROKEN) if f.code.startswith(ROOM_CODE_PREFIX))
        return f"The hood cannot hang here: {first.detail or first.title}"
    if not options:
        return _blocked(scene, paths, findings)
    sentence = _works(scene, options[0])
    cleared = to_clear(_open([*findings, *options[0].findings], State.BROKEN))
    return f"{cleared} {sentence}" if cleared else sentence


def to_clear(broken: Sequence[Finding]) -> str:
    """Name the broken musts and count what is advice; "" where no must is broken."""
    named = musts_named(broken)
    return f"To clear first: {named[0].upper()}{named[1:]}." if named else ""


def _works(scene: Scene, option: Option) -> str:
    route, air = option.route, option.air
    flow = "flow unknown"
    if air.full.status is not AirStatus.NO_FAN:
        moved = flow_text(air.full.flow_cfm, metric=scene.metric).split()[0]
        flow = f"{moved} of {flow_text(air.label_cfm, metric=scene.metric)}"
    boxed = f", {_length(route.boxed_in, scene, long=True)} boxed in the room" if route.boxed_in > 0 else ""
    return f"{route.words}: {route.turns}, {_length(route.length_in, scene, long=True)}{boxed}, {flow}."


def _blocked(scene: Scene, paths: Paths, findings: Sequence[Finding]) -> str:
    if paths.outcome is Outcome.LIMIT_REACHED:
        return f"Gave up at the stated limit of {paths.facts.elbow_limit} elbows: no way out was found, and none is excluded."
    if paths.outcome is Outcome.BAD_START:
        told = paths.told_first
        return f"The hood's outlet itself is blocked{f' by {told.told[0].label}' if told else ''}: no duct can start there."
    told = paths.told_first
    if told is None:
        return f"No way out exists with {paths.facts.elbow_limit} elbows or fewer."
    fix = f" {_shifted(told, scene)}{_cost(told)}." if told.shift_in is not None and told.verified else ""
    advised = _advised(told.told[0], findings)
    return (
        f"No way out exists with {paths.facts.elbow_limit} elbows or fewer: {_met(told.told[0], scene)}.{fix}{advised}"
    )


def _advised(met: Blocker, findings: Sequence[Finding]) -> str:
    """Say how a cap may be let where only advice keeps it away: the search keeps that distance, a waiver does not."""
    barred = [f for f in findings if met.kind == "keep-out" and f.state is State.BROKEN and met.id in f.where]
    if not barred or any(f.must for f in barred):
        return ""
    return f" That distance is advice: a waiver of {barred[0].code}, with its reason, lets a cap stand there."


def _met(met: Blocker, scene: Scene) -> str:
    """Say what stands in the way and how, by its kind."""
    if met.kind == "zone":
        if not met.id:  # it says all itself: there is no roof
            return met.label
        return f"{'' if met.label.startswith('the ') else 'the '}{met.label} is in the way"
    if met.kind == "straight":
        return f"{met.label} would be {_length(met.overlap_in, scene)} too short"
    if met.kind == "keep-out" and met.label == OutdoorKind.LOT_LINE.value:
        return "the lot line is too near for a cap"  # it runs along the wall: what is met of it is no distance to mend
    if met.kind == "keep-out" and met.overlap_in < _HARDLY_IN:  # a roof overlooks it, at another height at every place
        return f"{met.label} is too near for a cap"
    if met.kind == "keep-out":
        return f"{met.label} is {_length(met.overlap_in, scene)} too near for a cap"
    if met.overlap_in <= 0:
        return f"{met.label} is too close to the duct"
    return f"{met.label} is {_length(met.overlap_in, scene)} into the duct"


def _side(shift_in: float, scene: Scene) -> str:
    return f"{_length(abs(shift_in), scene)} {'left' if shift_in < 0 else 'right'}"


def _shifted(why: WhyNot, scene: Scene) -> str:
    """Say the least shift and what it frees; with the cooktop, where the canopy would no longer cover it."""
    what = "hood and cooktop " if why.takes_cooktop else ""
    return f"Shift {what}{_side(why.shift_in or 0.0, scene)} and it goes {why.goes}"


def _cost(why: WhyNot) -> str:
    """Say what advice a hood that moves alone breaks, as the fix of that shift counts it."""
    if why.takes_cooktop or not why.alone_breaks:
        return ""
    broken = " and ".join(map(inside_sentence, why.alone_breaks))
    return f" (against advice: {broken})"


def _along(shift_in: float, why: WhyNot) -> str:
    """Say of another shift that the cooktop has to go with it, where that was not said of the least one."""
    return ", with the cooktop" if shift_in in why.with_cooktop and not why.takes_cooktop else ""


def second_line(
    scene: Scene,
    paths: Paths,
    options: Sequence[Option],
    members: Sequence[MemberRuling] = (),
    word: Verdict = Verdict.BLOCKED,
) -> str:
    """Say why not simpler, or why no other way. "Proven" only for a proof."""
    if scene.as_built:
        return "Judged as built; nothing was searched."
    if word is Verdict.NO_PLACE:
        return _elsewhere(scene, paths)
    if options and options[0].route.elbows == 0:
        return "Simpler? There is none: no elbow is the fewest a duct can have." + _proof(paths)
    told = None if options or paths.outcome is not Outcome.NONE_EXISTS else paths.told_first
    reasons = [r for r in (_reason(scene, w, members) for w in paths.why_not if w is not told) if r]
    if told is not None:
        reasons = [*_more_of(told, scene, members), *reasons]
    reasons = [*_not_back(scene, paths), *reasons]
    if not options:
        freed = any(w.verified and (w.shift_in is not None or w.lift_in is not None) for w in paths.why_not)
        return " ".join([*reasons[:4], *_left_out(paths), *([] if freed else [_FALLBACK])])
    webs = [f"Not looked for: {WEBS}; judge one with routeviz check."] if WEBS in paths.facts.not_tried else []
    return (" ".join([*reasons[:5], *webs]) or _nothing_told(paths)) + _proof(paths)


def _not_back(scene: Scene, paths: Paths) -> list[str]:
    """Say why the search knows no way straight back from a rear outlet: no face that way takes a cap at all."""
    if scene.hood.outlet.place != "rear" or any("straight back" in w.wanted for w in paths.why_not):
        return []
    if not scene.cap.wall:
        return ["Not straight back: the scene allows no cap on a wall."]
    beyond = [s for s in scene.spaces if s.beyond is WallSide.HOOD and s.duct_allowed]
    far = [w for s in beyond for w in s.walls if w.side is WallSide.FRONT]
    if any(w.beyond == SpaceKind.OUTDOORS for w in (scene.wall(WallSide.HOOD), *far)):
        return ["Not straight back: no outer wall behind the hood has room for a cap."]
    return ["Not straight back: no wall behind the hood that a duct may leave by has the open air beyond it."]


def _nothing_told(paths: Paths) -> str:
    return "Nothing simpler exists." if paths.outcome is Outcome.PROVEN else "Nothing simpler was found."


def _elsewhere(scene: Scene, paths: Paths) -> str:
    """Say for a hood that cannot hang here which way a duct would go from the nearest place where it can."""
    freed = [w for w in paths.why_not if w.verified and w.shift_in is not None]
    if not freed:
        return "A duct from here was not judged further."
    best = min(freed, key=lambda w: abs(w.shift_in or 0.0))
    return f"{_shifted(best, scene)}: there the hood has room too."


def _more_of(told: WhyNot, scene: Scene, members: Sequence[MemberRuling]) -> list[str]:
    """Say what the answer leaves unsaid of the way that it tells of: the other side, the middle of the bay, the cut."""
    said = []
    if told.verified and told.shift_in is not None:
        if told.shift_other_in is not None:
            said.append(f"{_side(told.shift_other_in, scene)} frees it too{_along(told.shift_other_in, told)}.")
        if told.middle_in is not None and abs(told.middle_in - told.shift_in) > 0.1:
            spare = f", {_length(told.spare_in, scene)} to spare" if told.spare_in else ""
            said.append(
                f"{_side(told.middle_in, scene)} is the middle of the bay{spare}{_along(told.middle_in, told)}."
            )
    return [*said, *filter(None, [_to_cut(told, members).strip()])]


def _left_out(paths: Paths) -> list[str]:
    """Say which kinds of way "none exists" does not speak of."""
    left_out = paths.facts.not_tried if paths.outcome is Outcome.NONE_EXISTS else ""
    return [f"Not looked for: {left_out}."] if left_out else []


def _proof(paths: Paths) -> str:
    return (
        " Proven." if paths.outcome is Outcome.PROVEN else " Best found." if paths.outcome is Outcome.BEST_FOUND else ""
    )


def _reason(scene: Scene, why: WhyNot, members: Sequence[MemberRuling]) -> str:
    if not why.blockers and why.lift_in is not None:
        return f"{_hung(scene, why.lift_in)} and it goes {why.goes}."
    if not why.blockers:
        return f"Not {why.wanted}: no place along the wall near by allows it." if why.elbows else ""
    first = why.told[0]
    if first.kind == "zone":
        return f"Not {why.wanted}: {_met(first, scene)}."
    text = f"Not {why.wanted}: {_met(first, scene)}."
    if why.shift_in is not None and why.verified:
        text += f" {_shifted(why, scene)}{_cost(why)}"
        if why.middle_in is not None and abs(why.middle_in - why.shift_in) > 0.1:
            text += f", tight; {_side(why.middle_in, scene)} is the middle of the bay"
            text += f", {_length(why.spare_in, scene)} to spare" if why.spare_in else ""
            text += _along(why.middle_in, why)
        text += "."
    if why.lift_in is not None and why.verified:
        hang = _hung(scene, why.lift_in)
        text += f" {hang if why.shift_in is None else f'Or {hang[0].lower()}{hang[1:]}'} and it goes {why.goes}."
    return text + _to_cut(why, members)


def _hung(scene: Scene, lift_in: float) -> str:
    return f"Hang it {_length(abs(lift_in), scene)} {'higher' if lift_in > 0 else 'lower'}"


def _to_cut(why: WhyNot, members: Sequence[MemberRuling]) -> str:
    """Name the members that the simpler way would need cut, and whether they may be."""
    if not why.crossing:
        return ""
    ids = {b.id for b in why.crossing}
    verdicts = dict.fromkeys(str(m.verdict) for m in members if m.solid in ids)
    said = f": {' or '.join(verdicts)}" if verdicts else ""
    way = why.wanted.capitalize() if why.wanted.startswith("straight") else f"A way {why.wanted}"
    return f" {way} from here would cut {together(b.label for b in why.crossing)}{said}."
