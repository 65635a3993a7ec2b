"""From a route and a fan to what the air does."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import lru_cache

from routeviz.airflow import advice as advising
from routeviz.airflow.accounts import equivalent_ft, fastest, losses, name_of
from routeviz.airflow.code_length import CodeLength, code_length
from routeviz.airflow.elements import Element, Setting, elements_along, elements_of, main_section, setting_of
from routeviz.airflow.fan import FanModel, fan_model, flow_at
from routeviz.airflow.meeting import Meeting, band_cfm, meet
from routeviz.airflow.sections import area_in2, friction_equivalent_in, section_text, velocity_fpm
from routeviz.airflow.system import Level, Piece, System, pieces_of
from routeviz.airflow.words import pressure_text, speed_text
from routeviz.catalog import table
from routeviz.model.airflow import AirResult, AirStatus, OperatingPoint
from routeviz.model.path import Centreline
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import Fan, Scene, SectionSize
from routeviz.model.solids import FaceKind

__all__ = ["flow_along_cfm", "flow_cfm", "solve", "solve_many"]

_CURVE_STEPS = 32
_ENDS = (PartKind.COLLAR, PartKind.CAP, PartKind.OPEN_END)
_FASTER = 1.01  # a narrower part is worth a note when its air is this much faster than in the main duct


def solve(route: Route, scene: Scene, *, code_table: bool = True) -> AirResult:
    """Say what the hood's fan moves through a route.

    The duct's losses (friction by Colebrook, fittings by coefficient) meet the fan's curve in the site's air, at
    every speed. Flows come with a band: every uncertain loss at its low or high end, together with the ends of
    what was assumed of the fan. Equal ducts in equal settings are solved once.

    Parameters
    ----------
    route : Route
        As found or as built, parts in order from the hood.
    scene : Scene
        Its hood, duct, cap and site are used.
    code_table : bool
        Whether the place's rules hold the code's length table; where they do not, nothing is said of it.

    Returns
    -------
    AirResult
        Flow, velocity in the main duct, loss by part, the code's length beside the computed one, and what other
        ducts would give. Without fan data the status says so and the flows are 0.

    References
    ----------
    air-colebrook, air-elbows, air-fan-laws, air-fan-static, air-code-length
    """
    ids = tuple(part.id for part in route.parts)
    setting = setting_of(scene)
    found = _solved(elements_of(route, scene), ids, route.section, setting)
    if code_table:
        return found
    spoken = _code_note(setting.metric)
    return replace(found, code_asks=False, notes=tuple(note for note in found.notes if note != spoken))


def solve_many(routes: Iterable[Route], scene: Scene) -> tuple[AirResult, ...]:
    """Solve many routes of one scene; the results are those of `solve`, in the same order.

    For a map that needs nothing but the flow, `flow_cfm` is several times faster.
    """
    return tuple(solve(route, scene) for route in routes)


def flow_cfm(route: Route, scene: Scene) -> float:
    """Give the delivered flow at full speed [cfm], the very number of `solve`; 0 without fan data."""
    setting = setting_of(scene)
    met = _meeting(elements_of(route, scene), setting.outlet, setting, setting.cap_c)
    return met.flow_cfm if met else 0.0


def flow_along_cfm(line: Centreline, scene: Scene, kind: FaceKind) -> float:
    """Give the flow that a centre line will deliver as a route [cfm], before it is realised; 0 without fan data.

    The number is that of `solve` on the realised route (but for rounding), at a small part of the cost: for maps
    of many hood positions.

    Parameters
    ----------
    line : Centreline
        From the hood's collar to an exit face.
    kind : FaceKind
        What kind of face it leaves through; decides the cap.
    """
    setting = setting_of(scene)
    elements = elements_along(line, scene, roof=kind is FaceKind.ROOF)
    met = _meeting(elements, setting.outlet, setting, setting.cap_c)
    return met.flow_cfm if met else 0.0


@lru_cache(maxsize=16384)
def _meeting(
    elements: tuple[Element, ...], outlet: SectionSize, setting: Setting, cap_c: float | None
) -> Meeting | None:
    model = fan_model(setting.fan, metric=setting.metric)
    if model is None:
        return None
    system = System.of_pieces(pieces_of(elements, outlet, cap_c), outlet, setting.air, Level.USUAL)
    return meet(model.usual, system, speed=_speeds(setting.fan)[0][0])


@lru_cache(maxsize=2048)
def _solved(elements: tuple[Element, ...], ids: tuple[str, ...], otherwise: SectionSize, setting: Setting) -> AirResult:
    pieces = pieces_of(elements, setting.outlet, setting.cap_c)
    usual, low, high = (System.of_pieces(pieces, setting.outlet, setting.air, level) for level in Level)
    section = main_section(elements, otherwise)
    model = fan_model(setting.fan, metric=setting.metric)
    code = code_length(elements, _code_rating(setting.fan, model))
    if model is None:
        return _without_fan(usual, section, code, setting)
    speeds, speed_notes = _speeds(setting.fan)
    points = tuple(_point(model, (usual, low, high), section, speed) for speed in speeds)
    full, label = points[0], setting.fan.rated_cfm
    owner, narrow, velocity = fastest(pieces, full.flow_cfm)
    where = name_of(ids, owner)
    run = tuple(p for p in pieces if p.owner >= 0 and elements[p.owner].kind not in _ENDS)
    own = _own_collar(usual, full, section, setting)
    notes = [*setting.notes, *speed_notes, *model.notes, *own, *_notes(pieces, full, code, model, setting.metric)]
    if velocity > full.velocity_fpm * _FASTER:
        notes.append(
            f"fastest in {where}, {section_text(narrow, metric=setting.metric)}: "
            + speed_text(velocity, metric=setting.metric)
        )
    return AirResult(
        points=points,
        losses=losses(pieces, elements, ids, full.flow_cfm, setting.air),
        label_cfm=label,
        share=full.flow_cfm / label if label > 0 else 0.0,
        equivalent_ft=equivalent_ft(pieces, section, full.flow_cfm, setting.air),
        equivalent_run_ft=equivalent_ft(run, section, full.flow_cfm, setting.air),
        code_equivalent_ft=code.equivalent_ft,
        code_allowed_ft=code.allowed_ft,
        assumption=model.assumption,
        fan_curve=_fan_points(model, setting),
        system_curve=_system_points(usual, model),
        advice=advising.advice(elements, section, setting, full.flow_cfm, lambda v: _variant_flow(v, setting)),
        notes=tuple(notes),
        collar_inwg=usual.collar_inwg(full.flow_cfm),
        friction_equivalent_in=friction_equivalent_in(section),
        fastest_fpm=velocity,
        fastest_part=where,
        density_ratio=setting.air.density_ratio,
        system_low=_system_points(low, model),
        system_high=_system_points(high, model),
        code_flow_cfm=code.flow_cfm,
        code_diameter_in=code.diameter_in,
    )


def _variant_flow(variant: advising.Variant, setting: Setting) -> float:
    met = _meeting(variant.elements, setting.outlet, setting, variant.cap_c)
    return met.flow_cfm if met else 0.0


def _speeds(fan: Fan) -> tuple[tuple[float, ...], tuple[str, ...]]:
    """Give the usable speeds, the highest first, and a note about those left out."""
    stated = set(fan.speeds)
    good = {s for s in stated if 0.0 < s <= 1.0}
    note = ("fan speeds outside 0 to 1 of full speed were left out",) if good != stated else ()
    return tuple(sorted(good, reverse=True)) or (1.0,), note


def _point(
    model: FanModel, systems: tuple[System, System, System], section: SectionSize, speed: float
) -> OperatingPoint:
    met = meet(model.usual, systems[Level.USUAL], speed=speed)
    least, most = band_cfm(model, systems[Level.LOW], systems[Level.HIGH], speed=speed)
    return OperatingPoint(
        speed, met.status, met.flow_cfm, least, most, met.static_inwg, velocity_fpm(met.flow_cfm, section)
    )


def _code_rating(fan: Fan, model: FanModel | None) -> float | None:
    """Give the fan's flow at the pressure that the code's table is made for: printed, or from the curve."""
    at = table("ducts")["code_length"]["rated_at_inwg"]
    if fan.rated_at_inwg == at and fan.rated_cfm > 0:
        return fan.rated_cfm
    return flow_at(model.usual, at) if model else None


def _notes(
    pieces: tuple[Piece, ...], full: OperatingPoint, code: CodeLength, model: FanModel, metric: bool
) -> tuple[str, ...]:
    notes = []
    if full.status is AirStatus.STALLED:
        notes.append("the fan works left of its curve's peak: the flow is unsteady and the fan loud; widen the duct")
    if full.status is AirStatus.NO_MEETING:
        notes.append("the fan's curve ends before it meets the duct; the flow is that of its end")
    if code.allowed_ft is not None and model.assumption:
        notes.append(_code_note(metric))
    notes += dict.fromkeys(p.note for p in pieces if "not known" in p.note or "outside" in p.note)
    return tuple(notes)


def _own_collar(system: System, full: OperatingPoint, section: SectionSize, setting: Setting) -> tuple[str, ...]:
    """Say, where the hood's outlet is narrower than the duct, whose outlet the fan's pressures belong to.

    Static pressure leaves out what the air's speed is worth at the outlet where the fan was tested. The narrower that
    outlet, the more it is worth: two hoods with equal curves differ by it, but one hood gains nothing from an adapter.
    """
    if area_in2(setting.outlet) >= area_in2(section):
        return ()
    worth = pressure_text(system.collar_inwg(full.flow_cfm), metric=setting.metric)
    outlet = section_text(setting.outlet, metric=setting.metric)
    return (
        f"the fan's pressures are taken as measured at this outlet, {outlet}, where the air's speed is worth {worth} more; "
        "an adapter on a wider outlet adds no air: then give the fan's own outlet",
    )


def _code_note(metric: bool) -> str:
    at = pressure_text(table("ducts")["code_length"]["rated_at_inwg"], metric=metric)
    return f"the flow at {at} for the code's length table was taken from the assumed fan curve"


def _fan_points(model: FanModel, setting: Setting) -> tuple[tuple[float, float], ...]:
    first, last = model.usual.first_cfm, model.usual.end_cfm
    flows = [first + (last - first) * i / _CURVE_STEPS for i in range(_CURVE_STEPS + 1)]
    return tuple((q, setting.air.density_ratio * model.usual(q)) for q in flows)


def _system_points(system: System, model: FanModel) -> tuple[tuple[float, float], ...]:
    last = model.usual.end_cfm
    return tuple((q, system.static_inwg(q)) for q in (last * i / _CURVE_STEPS for i in range(_CURVE_STEPS + 1)))


def _without_fan(system: System, section: SectionSize, code: CodeLength, setting: Setting) -> AirResult:
    """Give what can be said of the duct alone."""
    nothing = OperatingPoint(1.0, AirStatus.NO_FAN, 0.0, 0.0, 0.0, 0.0, 0.0)
    return AirResult(
        points=(nothing,), losses=(), label_cfm=0.0, share=0.0, equivalent_ft=0.0,
        code_equivalent_ft=code.equivalent_ft, code_allowed_ft=None, assumption="", fan_curve=(),
        system_curve=tuple((50.0 * i, system.static_inwg(50.0 * i)) for i in range(_CURVE_STEPS + 1)),
        advice=(), notes=(*setting.notes, "nothing is known of the fan; state its label flow or its curve"),
        friction_equivalent_in=friction_equivalent_in(section),
        density_ratio=setting.air.density_ratio, code_diameter_in=code.diameter_in,
    )  # fmt: skip
