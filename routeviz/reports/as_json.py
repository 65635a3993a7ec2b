"""The plan as JSON with a version, and the schema that describes it."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import fields, is_dataclass
from enum import Enum
from typing import Any

from routeviz.model.path import Centreline, Paths
from routeviz.model.plan import SCHEMA_VERSION, Option, Plan
from routeviz.model.route import Route
from routeviz.model.study import Fix
from routeviz.reports.text import CAUTION

__all__ = ["plain", "plan_dict", "plan_json", "plan_schema"]


def plain(value: Any) -> Any:
    """Turn frozen records into dicts, lists, strings and numbers; infinities become the word "no limit"."""
    if isinstance(value, Enum):
        return value.value
    if is_dataclass(value) and not isinstance(value, type):
        return {f.name: plain(getattr(value, f.name)) for f in fields(value) if not f.name.startswith("_")}
    if isinstance(value, tuple | list):
        return [plain(v) for v in value]
    if isinstance(value, dict):
        return {str(k): plain(v) for k, v in value.items()}
    if isinstance(value, float):
        if math.isinf(value):
            return "no limit"
        return round(value, 6)
    if isinstance(value, str | int | bool) or value is None:
        return value
    raise TypeError(f"no JSON form for {type(value).__name__}")


def _line(line: Centreline | None) -> Any:
    return None if line is None else [plain(p) for p in line.points]


def _route(route: Route) -> dict[str, Any]:
    return {
        "id": route.id,
        "words": route.words,
        "centre_line_in": _line(route.centreline)
        or [plain(p.start) for p in route.parts] + [plain(route.parts[-1].end)],
        "section": plain(route.section),
        "fittings": plain(route.parts),
        "elbows_90": route.elbows,
        "length_in": plain(route.length_in),
        "boxed_in": plain(route.boxed_in),
        "straights_between_elbows_in": plain(route.straights_between_in),
        "termination": plain(route.termination),
        "penetrations": plain(route.penetrations),
        "near": plain(route.near),
        "allowances": [{**plain(a), "holds": a.holds} for a in route.allowances],
        "as_built": route.as_built,
    }


def _option(option: Option) -> dict[str, Any]:
    take = option.takeoff
    return {
        "route": _route(option.route),
        "findings": plain(option.findings),
        "air": plain(option.air),
        "air_asked": plain(option.need),
        "makeup_air": plain(option.makeup),
        "parts": plain(take.buy),
        "cuts": plain(take.cuts),
        "stock": plain(take.stock),
        "holes": plain(take.holes),
        "marks": plain(take.marks),
        "steps": plain(take.steps),
        "measure_first": plain(take.measure_first),
        "cabinet_space": plain(take.cabinets),
    }


def _search(paths: Paths) -> dict[str, Any]:
    return {
        "outcome": paths.outcome.value,
        "front": [{"elbows": e, "boxed_in": plain(b), "length_in": plain(n)} for e, b, n in paths.front],
        "why_not_simpler": plain(paths.why_not),
        "facts": plain(paths.facts),
    }


def plan_dict(plan: Plan, fixes: Sequence[Fix] = ()) -> dict[str, Any]:
    """Give the plan as plain data; lengths are inches, see `plan_schema`."""
    return {
        "schema": "routeviz plan",
        "schema_version": SCHEMA_VERSION,
        "scene": {
            "name": plan.scene.name,
            "file": plan.scene.file,
            "invented": plan.scene.invented,
            "metric": plan.scene.metric,
        },
        "hood": {
            "centre_in": plain(plan.scene.hood.centre_in),
            "mount_in": plain(plan.scene.hood.mount_in),
            "underside_in": plain(plan.scene.hood_bottom_in),
        },
        "verdict": plan.verdict.value,
        "status": plan.paths.outcome.value,
        "answer": plan.answer,
        "second": plan.second,
        "search": _search(plan.paths),
        "routes": [_option(o) for o in plan.options],
        "findings": plain(plan.findings),
        "members": plain(plan.members),
        "fixes": [{**plain(fix), "recheck": fix.recheck} for fix in fixes],
        "assumptions": plain(plan.assumptions),
        "profile": plan.scene.rules.profile,
        "waivers": plain(plan.scene.rules.waivers),
        "seconds": {name: round(value, 4) for name, value in plan.seconds},
        "caution": CAUTION,
    }


def plan_json(plan: Plan, fixes: Sequence[Fix] = ()) -> str:
    """Write the plan as indented JSON text."""
    return json.dumps(plan_dict(plan, fixes), indent=1, ensure_ascii=False) + "\n"


def plan_schema() -> dict[str, Any]:
    """Give the JSON schema of a plan file."""
    point = {"type": "array", "items": {"type": "number"}, "minItems": 3, "maxItems": 3}
    number, text = {"type": "number"}, {"type": "string"}

    def listing(items: dict[str, Any]) -> dict[str, Any]:
        return {"type": "array", "items": items}

    finding = {
        "type": "object",
        "required": [
            "code",
            "title",
            "state",
            "must",
            "measured",
            "limit",
            "margin",
            "unit",
            "source",
            "source_text",
            "where",
        ],
        "properties": {
            "code": text,
            "state": {"enum": ["broken", "close", "fine", "not checked", "does not apply"]},
            "must": {"type": "boolean"},
            "measured": {"type": ["number", "string", "null"]},
            "limit": {"type": ["number", "string", "null"]},
            "margin": {"type": ["number", "string", "null"]},
            "unit": text,
            "place": {"anyOf": [point, {"type": "null"}]},
        },
    }
    allowance = {
        "type": "object",
        "required": ["solid", "label", "axis", "sign", "travel_in", "tolerance_in", "holds"],
        "properties": {
            "axis": {"enum": [0, 1, 2]},
            "sign": {"enum": [1, -1]},
            "travel_in": number,
            "holds": {"type": "boolean"},
        },
        "description": "how far a thing may be off along an axis before the duct meets it, against its stated tolerance",
    }
    route = {
        "type": "object",
        "required": ["id", "centre_line_in", "fittings", "elbows_90", "length_in", "termination", "near", "penetrations"],
        "properties": {
            "centre_line_in": listing(point), "elbows_90": number, "length_in": number,
            "termination": {"type": "object", "required": ["face", "kind", "space", "point"]},
            "allowances": listing(allowance),
        },
    }  # fmt: skip
    length = {"type": ["number", "null"]}
    blocker = {
        "type": "object",
        "required": ["id", "label", "overlap_in", "at", "kind"],
        "properties": {"kind": {"enum": ["solid", "keep-out", "zone", "straight"]}, "at": point, "overlap_in": number},
    }
    why_not = {
        "type": "object",
        "required": ["wanted", "elbows", "blockers", "shift_in", "lift_in", "middle_in", "spare_in", "verified", "crossing"],
        "properties": {
            "blockers": listing(blocker), "shift_in": length, "shift_other_in": length, "middle_in": length,
            "lift_in": length, "spare_in": length, "verified": {"type": "boolean"}, "points": listing(point),
            "crossing": {**listing(blocker), "description": "the fewest members to be cut where the hood stands"},
            "with_cooktop": {
                "type": "array", "items": number, "description": "of the shifts, those on which the cooktop has to go with the hood",
            },
            "alone_breaks": {
                "type": "array", "items": {"type": "string"}, "description": "advice that breaks when the hood is shifted alone",
            },
        },
    }  # fmt: skip
    search = {
        "type": "object",
        "required": ["outcome", "front", "why_not_simpler", "facts"],
        "properties": {"why_not_simpler": listing(why_not)},
    }
    option = {
        "type": "object",
        "required": ["route", "findings", "air", "parts", "cuts", "holes", "marks", "steps", "measure_first"],
        "properties": {"route": route, "findings": listing(finding)},
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "routeviz plan",
        "description": "Lengths are inches, flows cfm, pressures in wg; x right along the hood wall, y through it, z up.",
        "type": "object",
        "required": [
            "schema_version",
            "verdict",
            "status",
            "answer",
            "routes",
            "findings",
            "assumptions",
            "search",
            "caution",
        ],
        "properties": {
            "schema_version": {"const": SCHEMA_VERSION},
            "verdict": {"enum": ["Works", "Works, tight", "Blocked", "No place"]},
            "status": {"enum": ["proven best", "best found", "none exists", "limit reached", "bad start"]},
            "search": search,
            "routes": listing(option),
            "findings": listing(finding),
            "assumptions": listing({"type": "object", "required": ["field", "value", "reason"]}),
        },
    }
