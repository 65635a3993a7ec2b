"""The air: fan and duct curves with their meeting point, where the pressure goes, what other ducts would give."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from routeviz.catalog import sources
from routeviz.drawings import palette as ink
from routeviz.drawings.flow import Cell, Column, Flow, settled
from routeviz.drawings.lettering import plain, width, wrapped
from routeviz.drawings.primitives import Anchor, Face, Point
from routeviz.drawings.sheet import Paper, Sheet
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import pressure, pressure_figure, quantity, speed
from routeviz.model.airflow import AirResult
from routeviz.model.plan import Option
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Sheet as Name
from routeviz.units import flow_text

__all__ = ["air_sheets"]

_CHART = (96.0, 62.0)
_LEAST_CHART = 36.0  # a chart shrinks to this so that the tables stay on its sheet [mm]
_TABLE, _ROW = 20.0, 7.5  # about what a table and a row of it take
_BAND = "#dce9e8"
_LPS_PER_CFM = 0.471947  # NIST SP 811 appendix B
_PA_PER_INWG = 249.08891  # water at 4 degC, NIST SP 811 appendix B


def air_sheets(option: Option, scene: Scene, paper: Paper, number: str) -> list[Sheet]:
    """Draw the air summary."""
    under = "what the fan moves through this duct"
    return settled(lambda flow: _air(flow, option.air, scene), paper, Name.AIR, "Air", number, under)


def _air(flow: Flow, air: AirResult, scene: Scene) -> None:
    full = air.points[0] if air.points else None
    if full is not None and full.flow_cfm > 0:
        most, low, high = (_flow(q, scene) for q in (full.flow_cfm, full.low_cfm, full.high_cfm))
        flow.paragraph(f"{most} of {flow_text(air.label_cfm, metric=scene.metric)}, likely between {low} and {high}. At that "
                       f"flow {speed(full.velocity_fpm, scene)} in the duct, and the fan holds {pressure(full.static_inwg, scene)}.", 3.4,
                       face=Face.SERIF)  # fmt: skip
    for words in (air.assumption, _lengths(air, scene), air.together(metric=scene.metric), *air.notes):
        if words:
            flow.paragraph(words, ink.SMALL, colour=ink.INK2)
    if len(air.system_curve) > 1:
        _chart(flow, air, scene)
    if air.losses:
        _loss_table(flow, air, scene)
    if air.advice:
        flow.head("Another duct would give")
        columns = (Column("duct", 0.4), Column(f"flow, {_flow_unit(scene)}", 0.15, Face.NARROW_BOLD, right=True),
                   Column("gain", 0.15, Face.NARROW, right=True), Column("air speed", 0.2, Face.NARROW, right=True))  # fmt: skip
        rows: list[list[str | Cell]] = [
            [a.label, _flow(a.flow_cfm, scene), _gain(a.flow_cfm, a.flow_cfm - a.gain_cfm, scene), speed(a.velocity_fpm, scene)] for a in air.advice
        ]  # fmt: skip
        flow.table(columns, rows, ink.SMALL)


def _flow_unit(scene: Scene) -> str:
    return "l/s" if scene.metric else "cfm"


def _flow(flow_cfm: float, scene: Scene) -> str:
    return flow_text(flow_cfm, metric=scene.metric).split(" ")[0]


def _gain(flow_cfm: float, now_cfm: float, scene: Scene) -> str:
    """Write what a change gives: the difference of the flows as they are printed, so that the sheet adds up."""
    change = int(_flow(flow_cfm, scene)) - int(_flow(now_cfm, scene))
    return f"{'+' if change >= 0 else '–'}{abs(change)}"


def _loss_table(flow: Flow, air: AirResult, scene: Scene) -> None:
    flow.head("Where the pressure goes")
    unit = "Pa" if scene.metric else "in wg"
    columns = (Column("part", 0.24), Column(f"loss, {unit}", 0.10, Face.NARROW_BOLD, right=True), Column("likely range", 0.14, Face.NARROW, right=True),
               Column("coefficient", 0.09, Face.NARROW, right=True), Column("source", 0.40), Column("note", 0.16))  # fmt: skip
    rows: list[list[str | Cell]] = []
    for loss in air.losses:
        middle, low, high = (pressure_figure(p, scene) for p in (loss.loss_inwg, loss.low_inwg, loss.high_inwg))
        known = sources().get(loss.source)
        rows.append([loss.label, middle, f"{low} to {high}", "" if loss.coefficient is None else f"{loss.coefficient:.2f}",
                     known.text if known else loss.source, loss.note])  # fmt: skip
    flow.table(columns, rows, ink.SMALL)


def _lengths(air: AirResult, scene: Scene) -> str:
    allowed = air.code_allowed_ft
    ours, code = (quantity(n, "ft", scene) for n in (air.equivalent_ft, air.code_equivalent_ft))
    if not air.code_asks:
        return f"Equivalent length {ours} from the losses."
    if allowed is None:
        says = "the code's table has no entry for it"
    elif math.isinf(allowed):
        says = "the code's table sets no limit"
    else:
        says = f"the code's table allows {quantity(allowed, 'ft', scene)}"
    return f"Equivalent length {ours} from the losses; {code} by the code's method, where {says}."


def _chart(flow: Flow, air: AirResult, scene: Scene) -> None:
    """Draw both curves over flow, the likely band of the duct's, and the meeting point; the losses as bars beside."""
    wide, most = _CHART
    below = sum(_TABLE + _ROW * len(rows) for rows in (air.losses, air.advice) if rows)
    high = min(most, max(_LEAST_CHART, flow.y - flow.sheet.room[1] - below - 16.0))
    flow.need(high + 14.0)
    x0, y0 = flow.left + 14.0, flow.y - high - 2.0
    sketch = flow.sheet.sketch
    fan, system, low, above = (
        _in_units(curve, scene) for curve in (air.fan_curve, air.system_curve, air.system_low, air.system_high)
    )
    point = _in_units([(air.points[0].flow_cfm, air.points[0].static_inwg)], scene)[0] if air.points else (0.0, 0.0)
    flows = [q for q, _ in (*fan, *system)]
    most_p = max([p for _, p in fan] or [point[1] * 2 or 1.0]) * 1.08
    step_q, step_p = _step(max(flows)), _step(most_p)
    most_q = math.ceil(max(flows) / step_q) * step_q
    most_p = math.ceil(most_p / step_p) * step_p

    def at(q: float, p: float) -> tuple[float, float]:
        return x0 + wide * q / most_q, y0 + high * p / most_p

    band = [at(*a) for a in _within(low, most_q, most_p)] + [at(*a) for a in reversed(_within(above, most_q, most_p))]
    if len(band) > 3:
        sketch.path(band, 0.0, fill=_BAND, closed=True)
    _grid(sketch, at, (most_q, step_q), (most_p, step_p), scene)
    for curve, colour, dash in ((fan, ink.INK, ()), (system, ink.UP, ink.DUCT_DASH)):
        points = [at(q, p) for q, p in _within(curve, most_q, most_p)]
        if len(points) > 1:
            sketch.path(points, ink.HEAVY, colour=colour, dash=dash)
    _key(sketch, x0, y0 - 7.2, band=len(band) > 3)
    _bars(sketch, air, scene, (x0 + wide + 12.0, y0, flow.right, y0 + high))
    if air.points:
        x, y = at(*point)
        sketch.disc((x, y), 1.2, ink.FINE, fill=ink.UP, colour=ink.UP)
        words = (
            f"{flow_text(air.points[0].flow_cfm, metric=scene.metric)} at {pressure(air.points[0].static_inwg, scene)}"
        )
        spots = _inside((x, y), width(plain(words), ink.SMALL), (x0, y0, x0 + wide, y0 + high))
        sketch.note((x, y), words, spots, ink.SMALL, halo=ink.WHITE)
    flow.y = y0 - 12.0


def _inside(tip: Point, long: float, chart: tuple[float, float, float, float]) -> list[Point]:
    """Give places round the meeting point from which a text of such a length [mm] stays within the chart."""
    left, low, right, high = chart
    steps = [(a, b) for b in (6.0, -6.0, 10.0, -10.0, 14.0, 18.0, -14.0, 24.0) for a in (-8.0, 6.0, -14.0, 12.0, -20.0)]
    places = [(tip[0] + a, tip[1] + b) for a, b in steps]
    return [
        p for p in places
        if low + 1.0 < p[1] < high - 3.0 and (p[0] + long < right - 1.0 if p[0] >= tip[0] else p[0] - long > left + 1.0)
    ]  # fmt: skip


def _key(sketch: Sketch, x: float, y: float, *, band: bool) -> None:
    sketch.line((x, y), (x + 7.0, y), ink.HEAVY)
    sketch.text((x + 8.5, y - 0.9), "fan", ink.SMALL)
    sketch.line((x + 17.0, y), (x + 24.0, y), ink.HEAVY, colour=ink.UP, dash=ink.DUCT_DASH)
    sketch.text((x + 25.5, y - 0.9), "duct and cap", ink.SMALL)
    if band:
        sketch.rect((x + 46.0, y - 1.0), (x + 53.0, y + 1.0), ink.HAIR, fill=_BAND)
        sketch.text((x + 54.5, y - 0.9), "its likely range", ink.SMALL)


def _in_units(curve: Sequence[tuple[float, float]], scene: Scene) -> list[tuple[float, float]]:
    """Give flows and pressures in the units that the sheet shows."""
    if not scene.metric:
        return list(curve)
    return [(q * _LPS_PER_CFM, p * _PA_PER_INWG) for q, p in curve]


def _bars(sketch: Sketch, air: AirResult, scene: Scene, room: tuple[float, float, float, float]) -> None:
    """Draw each part's loss as a bar in order from the hood; the costliest is filled dark."""
    bars = air.bars
    left, low, right, high = room
    longest = max((width(plain(b.label), ink.SMALL) for b in bars), default=0.0)
    names, figures = min(58.0, max(34.0, longest + 3.0)), 16.0
    long = right - left - names - figures
    step = min(7.0, (high - 5.0 - low) / len(bars)) if bars else 0.0
    if step < 3.2 or long < 20.0:
        return
    sketch.text((left, high - 1.0), "Where the pressure goes, in order from the hood", ink.LEAST, colour=ink.INK2)
    most = max(b.share for b in bars) or 1.0
    x0 = left + names
    for n, bar in enumerate(bars):
        y = high - 5.0 - (n + 1) * step
        name = wrapped(bar.label, ink.SMALL, Face.SANS, names - 2.0)
        sketch.text((x0 - 2.0, y + 0.35 * step - 0.6), name[0], ink.SMALL, anchor=Anchor.RIGHT)
        end = x0 + long * bar.share / most
        sketch.rect((x0, y), (max(end, x0 + 0.2), y + 0.72 * step), ink.FINE, fill=ink.UP if bar.share == most else ink.STEEL,
                    name=f"loss-{bar.part}")  # fmt: skip
        words = f"{pressure_figure(bar.loss_inwg, scene)} {'Pa' if scene.metric else 'in wg'}"
        sketch.text((end + 1.6, y + 0.35 * step - 0.6), words, ink.SMALL, Face.NARROW)
    sketch.line((x0, high - 5.0), (x0, high - 5.0 - len(bars) * step), ink.MEDIUM)


def _within(curve: Sequence[tuple[float, float]], most_q: float, most_p: float) -> list[tuple[float, float]]:
    """Cut a curve where it leaves the chart."""
    kept: list[tuple[float, float]] = []
    for n, (q, p) in enumerate(curve):
        if p > most_p and n:
            q0, p0 = curve[n - 1]
            if p0 <= most_p and p > p0:
                kept.append((q0 + (most_p - p0) / (p - p0) * (q - q0), most_p))
            break
        if q <= most_q:
            kept.append((q, min(p, most_p)))
    return kept


def _grid(
    sketch: Sketch, place: Callable[[float, float], Point], flows: tuple[float, float], pressures: tuple[float, float], scene: Scene
) -> None:  # fmt: skip
    (most_q, step_q), (most_p, step_p) = flows, pressures
    for n in range(round(most_q / step_q) + 1):
        x, y = place(n * step_q, 0.0)
        sketch.line((x, y), place(n * step_q, most_p), ink.HAIR, colour="#b9ad99")
        sketch.text((x, y - 4.0), f"{n * step_q:g}", ink.LEAST, Face.NARROW, Anchor.MIDDLE)
    for n in range(round(most_p / step_p) + 1):
        x, y = place(0.0, n * step_p)
        sketch.line((x, y), place(most_q, n * step_p), ink.HAIR, colour="#b9ad99")
        sketch.text((x - 1.2, y - 0.8), f"{n * step_p:g}", ink.LEAST, Face.NARROW, Anchor.RIGHT)
    left, low = place(0.0, 0.0)
    sketch.path((place(0.0, most_p), (left, low), place(most_q, 0.0)), ink.MEDIUM)
    sketch.text(
        (place(most_q, 0.0)[0], low - 8.0),
        f"flow, {_flow_unit(scene)}",
        ink.LEAST,
        anchor=Anchor.RIGHT,
        colour=ink.INK2,
    )
    sketch.text(
        (left - 12.0, place(0.0, most_p)[1] + 2.0),
        f"pressure, {'Pa' if scene.metric else 'in wg'}",
        ink.LEAST,
        colour=ink.INK2,
    )


def _step(most: float) -> float:
    """Give a round step, 1, 2 or 5 and its tens, that divides a range into about 5."""
    raw = most / 5
    power: float = 10.0 ** math.floor(math.log10(raw)) if raw > 0 else 1.0
    return min((k * power for k in (1.0, 2.0, 5.0, 10.0)), key=lambda s: abs(s - raw))
