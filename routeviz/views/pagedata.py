"""A plan as the plain data that the page works on; every key is explained in `page_data`."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from routeviz.geometry import bounds
from routeviz.model.airflow import AirStatus
from routeviz.model.finding import Finding, MemberRuling, State
from routeviz.model.overhead import ceiling_span_in
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import MemberKind, ObstacleKind, WallSide
from routeviz.model.solids import ExitFace, SolidKind
from routeviz.model.spoken import spoken
from routeviz.model.study import Fix
from routeviz.units import parse_length
from routeviz.views.blocked import wanted_line
from routeviz.views.ducts import gore_count, wide_sides
from routeviz.views.furnishing import hood_bottom
from routeviz.views.marks import place_of
from routeviz.views.palette import MATERIALS
from routeviz.views.parts import Group
from routeviz.views.stage import Stage
from routeviz.views.wallmap import STATES, WallMap, as_json, finding_json, rule_json

__all__ = ["fix_json", "page_data"]

PAGE_SCHEMA = 1
_NEAR_IN = 12.0  # what stands further off a face is not drawn on it


def _r(value: float) -> float:
    return round(value, 4)


def _section(section: Any) -> list[Any]:
    return [section.shape.value, section.width_in, section.height_in]


def _scene(plan: Plan) -> dict[str, Any]:
    scene, hood, cook = plan.scene, plan.scene.hood, plan.scene.cooktop
    cover = hood.cover
    shape = plan.frame._index.get("cover")
    return {
        "name": scene.name, "about": scene.about, "metric": scene.metric, "invented": scene.invented,
        "width": scene.kitchen.width_in, "depth": scene.kitchen.depth_in, "ceiling": scene.kitchen.ceiling_in,
        "wall": scene.wall(WallSide.HOOD).thickness_in,
        "hood": {
            "x": hood.centre_in, "width": hood.width_in, "depth": hood.depth_in, "body": hood.body_in,
            "bottom": hood_bottom(plan), "outlet": hood.outlet.place, "across": hood.outlet.across_in,
            "out": hood.outlet.out_in, "up": hood.outlet.up_in, "section": _section(hood.outlet.section),
            "cover": None if cover is None else {"min": cover.min_in, "max": cover.max_in},
            "coverTop": None if shape is None else bounds(shape.shape).hi[2],
        },
        "cook": {"x": cook.centre_in, "width": cook.width_in, "height": cook.height_in, "kind": cook.kind.value},
        "duct": {
            "section": _section(scene.duct.sections[0]), "gores": scene.duct.elbow_construction,
            "stock": scene.duct.stock_in, "clearance": scene.duct.clearance_in, "stub": scene.cap.roof_stub_in, "flange": scene.cap.wall_flange_in,
        },
        "rated": hood.fan.rated_cfm,
    }  # fmt: skip


def _joists(plan: Plan) -> list[dict[str, Any]]:
    """Give the ceiling's members that run out from the hood wall, and so are met along the tape."""
    found: list[dict[str, Any]] = []
    for solid in plan.frame.solids:
        member = solid.member
        on_ceiling = solid.origin.startswith("ceiling.joists") or (
            solid.kind in (SolidKind.CHORD, SolidKind.RAFTER) and not plan.scene.ceiling.joists
        )
        if not on_ceiling or member is None or member.axis != 1 or not member.number:
            continue
        box = bounds(solid.shape)
        entry = {"n": member.number, "a": _r(box.lo[0]), "b": _r(box.hi[0]), "label": solid.label, "id": solid.id}
        if not any(abs(entry["a"] - e["a"]) < 0.01 for e in found):
            found.append(entry)
    return sorted(found, key=lambda e: float(e["a"]))


def _studs(plan: Plan) -> list[dict[str, Any]]:
    kinds = (SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE, SolidKind.FURRING)
    found: list[dict[str, Any]] = []
    for solid in plan.frame.solids:
        if (
            solid.side is not WallSide.HOOD
            or solid.kind not in kinds
            or solid.member is None
            or solid.space != "kitchen"
        ):
            continue
        box = bounds(solid.shape)
        entry = {"n": solid.member.number, "a": _r(box.lo[0]), "b": _r(box.hi[0]), "label": solid.label, "id": solid.id}
        if not any(abs(entry["a"] - e["a"]) < 0.01 for e in found):
            found.append(entry)
    return sorted(found, key=lambda e: float(e["a"]))


def _overhead(plan: Plan) -> str:
    """Name the members over the ceiling; "" where there are none."""
    joists = plan.scene.ceiling.joists
    if joists is None:
        return ""
    return "trusses" if joists.kind is MemberKind.TRUSS else "joists"


def _tape(plan: Plan) -> dict[str, Any]:
    scene = plan.scene
    wall = scene.wall(WallSide.HOOD)
    return {
        "joists": _joists(plan),
        "studs": _studs(plan),
        "along": "" if _joists(plan) else _overhead(plan), "kind": _overhead(plan),
        "openings": [
            {"a": o.left_in, "b": o.left_in + o.width_in, "kind": o.kind.value, "label": spoken(o.id)}
            for o in wall.openings
        ],
        "things": [
            {"a": t.left_in, "b": t.left_in + t.width_in, "label": spoken(t.id)}
            for t in scene.obstacles
            if t.kind in (ObstacleKind.CABINET, ObstacleKind.SOFFIT, ObstacleKind.UNIT, ObstacleKind.BEAM)
            and t.bottom_in < hood_bottom(plan) + scene.hood.body_in and t.bottom_in + t.height_in > hood_bottom(plan)
            and t.out_in < scene.hood.depth_in
        ],
    }  # fmt: skip


def _limits(plan: Plan) -> dict[str, Any]:
    """Give the band of heights above the cooktop that the plan's own checks leave, with what sets each end."""
    scene, hood = plan.scene, plan.scene.hood
    mount = hood_bottom(plan) - scene.cooktop.height_in
    low, low_why, high, high_why = None, "", None, ""
    for finding in plan.all_findings:
        measured, limit = finding.measured, finding.limit
        if finding.unit != "in" or measured is None or limit is None or abs(measured - mount) > 1e-6:
            continue
        if finding.relation == "at least" and (low is None or limit > low):
            low, low_why = limit, finding.title
        if finding.relation == "at most" and (high is None or limit < high):
            high, high_why = limit, finding.title
    if hood.cover is not None:
        x, half = hood.centre_in, hood.cover.width_in / 2
        ends = ceiling_span_in(scene, (x - half, x + half), (0.0, hood.cover.depth_in))
        least, most = (end - scene.cooktop.height_in - hood.body_in for end in ends)
        shortest, longest = least - hood.cover.min_in, most - hood.cover.max_in
        if high is None or shortest < high:
            high, high_why = shortest, "shortest cover"
        if low is None or longest > low:
            low, low_why = longest, "longest cover"
    if low is not None and high is not None and low > high:
        return {"lo": mount, "hi": mount, "loWhy": low_why, "hiWhy": high_why, "none": True}
    return {"lo": mount if low is None else low, "hi": mount if high is None else high, "loWhy": low_why, "hiWhy": high_why,
            "none": False}  # fmt: skip


def _part(part: Part, wide: Any) -> dict[str, Any]:
    return {
        "k": part.kind.value, "id": part.id, "a": [_r(v) for v in part.start], "b": [_r(v) for v in part.end],
        "d": [_r(v) for v in part.direction], "t": [_r(v) for v in part.turn_to], "s": _section(part.section),
        "o": _section(part.section_out), "l": _r(part.length_in), "r": part.radius_in, "g": part.angle_deg,
        "n": gore_count(part.note, part.angle_deg) if part.kind is PartKind.ELBOW else 0, "w": [_r(float(v)) for v in wide],
    }  # fmt: skip


def _route(route: Route) -> dict[str, Any]:
    end = route.termination
    return {
        "id": route.id, "words": route.words, "turns": route.turns, "elbows": route.elbows, "length": _r(route.length_in), "boxed": _r(route.boxed_in),
        "section": _section(route.section),
        "parts": [_part(p, w) for p, w in zip(route.parts, wide_sides(route.parts), strict=True)],
        "end": {"face": end.face, "kind": None if end.kind is None else end.kind.value, "at": [_r(v) for v in end.point],
                "d": [_r(v) for v in end.direction], "label": end.label},
        "near": [{"solid": n.solid, "label": n.label, "gap": _r(n.gap_in), "to": [_r(v) for v in n.toward],
                  "at": [_r(v) for v in n.at]} for n in route.near[:12]],
    }  # fmt: skip


class _Rules:
    """Rows of findings without their numbers, and the findings that refer to them."""

    def __init__(self, plan: Plan) -> None:
        self.plan = plan
        self.rows: list[dict[str, Any]] = []

    def entry(self, finding: Finding) -> list[Any]:
        row = rule_json(finding)
        if row not in self.rows:
            self.rows.append(row)
        place = place_of(self.plan, finding.where, finding.place)
        return finding_json(finding, self.rows.index(row), place)

    def entries(self, findings: tuple[Finding, ...]) -> list[list[Any]]:
        return [self.entry(f) for f in findings if f.state in STATES]


def _curve(points: tuple[tuple[float, float], ...]) -> list[list[float]]:
    return [[round(q, 1), round(p, 4)] for q, p in points]


def _exact(value: float) -> float | None:
    """Give a number as it is, None for one that has no end: it is rounded once, where its unit is known."""
    return round(value, 6) if math.isfinite(value) else None


def _air(option: Option, *, metric: bool) -> dict[str, Any] | None:
    """Give what the air figure shows: curves, where they meet, and where the pressure goes."""
    air, need, makeup = option.air, option.need, option.makeup
    if air.full.status is AirStatus.NO_FAN:
        return None
    return {
        "fan": _curve(air.fan_curve), "system": _curve(air.system_curve), "low": _curve(air.system_low), "high": _curve(air.system_high),
        "status": air.full.status.value, "at": [_exact(air.full.flow_cfm), round(air.full.static_inwg, 4)],
        "band": [_exact(air.full.low_cfm), _exact(air.full.high_cfm)], "speed": _exact(air.full.velocity_fpm),
        "steps": [[p.speed, _exact(p.flow_cfm), _exact(p.velocity_fpm)] for p in air.points],
        "bars": [[b.label, round(b.loss_inwg, 4), round(b.share, 4)] for b in air.bars],
        "assumption": air.assumption, "together": air.together(metric=metric), "notes": list(air.notes),
        "advice": [[a.label, _exact(a.flow_cfm), _exact(a.gain_cfm)] for a in air.advice],
        "need": [] if need is None else [[f.label, _exact(f.at_least_cfm), None if f.up_to_cfm is None else _exact(f.up_to_cfm), f.met, f.source]
                                         for f in need.flows],
        "makeup": None if makeup is None else {"needed": makeup.needed, "supply": _exact(makeup.supply_cfm), "threshold": _exact(makeup.threshold_cfm),
                                               "square": _r(makeup.square_in), "source": makeup.source},
    }  # fmt: skip


def _ruling(plan: Plan, ruling: MemberRuling) -> dict[str, Any]:
    return {
        "label": ruling.label, "solid": ruling.solid, "verdict": ruling.verdict.value, "rule": ruling.rule, "measure": ruling.measure,
        "allowed": ruling.most_in(metric=plan.scene.metric), "ours": ruling.ours_in, "source": ruling.source_text, "detail": ruling.detail,
        "remedy": ruling.remedy,
        "framing": [[f.name, f.size, f.length_in, f.count, f.note] for f in ruling.framing],
    }  # fmt: skip


def _members(plan: Plan, option: Option | None) -> list[dict[str, Any]]:
    """Give what may be done to each member that a way out or a simpler one meets, once each."""
    findings = plan.findings + (option.findings if option else ())
    found = {f.ruling.solid: f.ruling for f in findings if f.ruling is not None}
    found.update({m.solid: m for m in plan.members if m.solid not in found})
    return [_ruling(plan, m) for m in found.values()]


def fix_json(fix: Fix) -> dict[str, Any]:
    """Give a fix; `x` and `h` are where it puts the hood, when that is all that it does."""
    fields = dict(fix.changes)
    place: dict[str, float | None] = {"x": None, "h": None}
    if set(fields) <= {"hood.centre", "cooktop.centre", "hood.mount"}:
        place["x"] = parse_length(fields["hood.centre"]) if "hood.centre" in fields else None
        place["h"] = parse_length(fields["hood.mount"]) if "hood.mount" in fields else None
    return {"words": fix.words, "recheck": fix.recheck, "answer": fix.answer, "verdict": fix.verdict.value, "elbows": fix.elbows,
            "members": list(fix.members), "changes": [list(c) for c in fix.changes], **place}  # fmt: skip


# what a fix may change and leave the house as the picture has it
_HOUSE_STAYS = (
    "hood.centre",
    "hood.mount",
    "cooktop.centre",
    "duct.sections",
    "duct.boxing_allowed",
    "cap.roof",
    "cap.wall",
)


def _again(fix: Fix) -> dict[str, Any] | None:
    """Give the plan that was made for a fix, so that the page shows it and not its nearest neighbour on the map.

    None where the fix changes the house itself, whose picture the page does not have.
    """
    plan = fix.again
    if plan is None or plan.best is None or not {name for name, _ in fix.changes} <= set(_HOUSE_STAYS):
        return None
    rules = _Rules(plan)
    return {
        "x": plan.scene.hood.centre_in, "h": hood_bottom(plan) - plan.scene.cooktop.height_in, "cook": plan.scene.cooktop.centre_in,
        "verdict": plan.verdict.value, "answer": plan.answer, "second": plan.second, "findings": rules.entries(plan.findings),
        "options": [_option(plan, plan.best, rules)], "why": _why(plan), "rules": rules.rows,
    }  # fmt: skip


def _option(plan: Plan, option: Option, rules: _Rules) -> dict[str, Any]:
    air, full = option.air, option.air.full
    known = full.status is not AirStatus.NO_FAN
    return {
        "route": _route(option.route), "findings": rules.entries(option.findings),
        "air": _exact(full.flow_cfm) if known else None, "label": _exact(air.label_cfm),
        "speed": _exact(full.velocity_fpm) if known else None,
        "flow": _air(option, metric=plan.scene.metric), "work": _work(option), "members": _members(plan, option),
        "broken": sum(f.state is State.BROKEN and not f.waived for f in option.findings),
    }  # fmt: skip


def _work(option: Option) -> dict[str, Any]:
    counted = option.takeoff
    return {
        "measure": [[m.what, m.assumed, _r(m.slack_in), m.changes_at, list(m.ids)] for m in counted.measure_first],
        "steps": [[s.text, s.hold, s.caution] for s in counted.steps],
    }


def _why(plan: Plan) -> dict[str, Any] | None:
    why = plan.paths.told_first
    if why is None:
        return None
    return {
        "wanted": why.wanted, "goes": why.goes, "shift": why.shift_in, "other": why.shift_other_in, "middle": why.middle_in, "sure": why.verified,
        "cook": why.takes_cooktop, "against": list(why.alone_breaks),
        "spare": why.spare_in, "lift": why.lift_in, "cut": [[b.id, b.label] for b in why.crossing],
        "blockers": [[b.id, b.label, _r(b.overlap_in), *(_r(v) for v in b.at), b.kind] for b in why.told],
    }  # fmt: skip


def _face(face: ExitFace) -> dict[str, Any]:
    shown = (k for k in face.keep_outs if k.kind not in ("edge", "eave", "lot line") and k.away_in <= _NEAR_IN)
    keep = [[k.id, k.label, *k.lo, *k.hi] for k in shown]
    return {"kind": face.kind.value, "axis": face.axis, "sign": face.sign, "plane": list(face.plane), "label": face.label,
            "lo": list(face.lo), "hi": list(face.hi), "at": face.at_in, "keep": keep}  # fmt: skip


def page_data(stage: Stage, *, fixes: Sequence[Fix] = (), wall_map: WallMap | None = None) -> dict[str, Any]:
    """Give the data block of the page; lengths in inches in the house frame.

    Parameters
    ----------
    stage : Stage
        The stage that the page's glTF is made of.
    fixes : sequence of Fix
        Changes that were planned again, least intrusive first.
    wall_map : WallMap, optional
        Answers for other places of the hood.

    Returns
    -------
    dict
        ``scene`` measures, ``tape`` members and openings along the hood wall, ``band`` the legal heights, ``plan``
        verdict, sentences, ways out (each with what to measure, to do and to cut) and findings (as rows of ``rules`` and
        numbers),
        ``fixes``, each with the plan that was made for it where the house stays as it is, and ``members`` (what may be
        done to each member),
        ``pieces`` layer, group and solid of every node of the glTF, ``numbers`` of joists, ``faces`` where ducts may
        leave and what a cap keeps away from there, ``cut`` where the picture is cut open, ``materials`` colour,
        edge, cut face, metal, opacity and whether edges are drawn, ``glazed`` windows and doors, and ``map``.
    """
    plan = stage.plan
    rules = _Rules(plan)
    return {
        "schema": PAGE_SCHEMA,
        "scene": _scene(plan),
        "tape": _tape(plan),
        "band": _limits(plan),
        "plan": {
            "verdict": plan.verdict.value, "answer": plan.answer, "second": plan.second, "findings": rules.entries(plan.findings),
            "options": [_option(plan, o, rules) for o in plan.options], "why": _why(plan), "rules": rules.rows,
            "wanted": [list(p) for p in wanted_line(plan)], "outcome": plan.paths.outcome.value,
            "assumptions": [[a.field, a.value, a.reason] for a in plan.assumptions],
        },
        "fixes": [{**fix_json(f), "plan": _again(f)} for f in fixes],
        "members": _members(plan, plan.best),
        "pieces": {p.name: [p.layer.name, p.group.value, p.solid, p.label, int(p.smooth)]
                   for p in stage.pieces if p.group is not Group.ROUTE},
        "lines": {p.name: [[[_r(float(v)) for v in point] for point in line] for line in p.lines]
                  for p in stage.pieces if p.lines and p.group is not Group.ROUTE},
        "numbers": [[n.text, [_r(v) for v in n.place], n.solid] for n in stage.numbers],
        "faces": {f.id: _face(f) for f in plan.frame.faces},
        "cut": {"front": stage.cut.front_in, "top": min(stage.cut.top_in, 1e6), "open": list(stage.cut.open_x)},
        "materials": {name: [f.colour, f.edge, f.cut, f.metal, f.opacity, f.edges] for name, f in MATERIALS.items()},
        "glazed": [s.id for s in plan.frame.solids if s.kind in (SolidKind.GLAZING, SolidKind.DOOR)],
        "map": None if wall_map is None else as_json(wall_map, cooktop_height_in=plan.scene.cooktop.height_in),
    }  # fmt: skip
