"""The air: fan and duct curves with their meeting point, where the pressure goes, what other ducts would give."""

from __future__ import annotations

import math
from collections.abc import Sequence

from routeviz.catalog import source
from routeviz.drawings import palette as ink
from routeviz.drawings.flow import Cell, Column, Flow
from routeviz.drawings.lettering import wrapped
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Paper, Sheet
from routeviz.drawings.sketch import Sketch
from routeviz.model.airflow import AirResult
from routeviz.model.plan import Option
from routeviz.model.takeoff import Sheet as Name

__all__ = ["air_sheets"]

_CHART = (96.0, 62.0)


def air_sheets(option: Option, paper: Paper, number: str) -> list[Sheet]:
    """Draw the air summary."""
    air = option.air
    flow = Flow(paper, Name.AIR, "Air", number, "what the fan moves through this duct")
    full = air.points[0] if air.points else None
    if full is not None and full.flow_cfm > 0:
        flow.paragraph(
            f"{full.flow_cfm:.0f} of {air.label_cfm:.0f} cfm, likely between {full.low_cfm:.0f} and {full.high_cfm:.0f}; "
            f"{full.velocity_fpm:.0f} ft a minute in the duct, {full.static_inwg:.2f} in wg.", 3.4, face=Face.SERIF)  # fmt: skip
    for words in (air.assumption, _lengths(air), *air.notes):
        if words:
            flow.paragraph(words, ink.SMALL, colour=ink.INK2)
    if len(air.system_curve) > 1:
        _chart(flow, air)
    if air.losses:
        flow.head("Where the pressure goes")
        columns = (Column("part", 0.30), Column("loss, in wg", 0.10, Face.NARROW_BOLD, right=True), Column("likely range", 0.14, Face.NARROW, right=True),
                   Column("coefficient", 0.10, Face.NARROW, right=True), Column("source", 0.30), Column("note", 0.19))  # fmt: skip
        rows: list[list[str | Cell]] = [
            [x.label, f"{x.loss_inwg:.3f}", f"{x.low_inwg:.3f} to {x.high_inwg:.3f}", "" if x.coefficient is None else f"{x.coefficient:.2f}",
             source(x.source).text if x.source else "", x.note] for x in air.losses
        ]  # fmt: skip
        flow.table(columns, rows, ink.SMALL)
    if air.advice:
        flow.head("Another duct would give")
        columns2 = (Column("duct", 0.4), Column("flow, cfm", 0.15, Face.NARROW_BOLD, right=True), Column("gain, cfm", 0.15, Face.NARROW, right=True),
                    Column("speed, ft a minute", 0.2, Face.NARROW, right=True))  # fmt: skip
        flow.table(
            columns2,
            [[a.label, f"{a.flow_cfm:.0f}", f"{a.gain_cfm:+.0f}", f"{a.velocity_fpm:.0f}"] for a in air.advice],
            ink.SMALL,
        )
    return flow.sheets


def _lengths(air: AirResult) -> str:
    allowed = air.code_allowed_ft
    if allowed is None:
        code = "the code's table has no entry for it"
    elif math.isinf(allowed):
        code = "the code's table sets no limit"
    else:
        code = f"the code's table allows {allowed:.0f} ft"
    return f"Equivalent length {air.equivalent_ft:.0f} ft from the losses; {air.code_equivalent_ft:.0f} ft by the code's method, where {code}."


def _chart(flow: Flow, air: AirResult) -> None:
    """Draw both curves over flow; the meeting point is marked with its number."""
    wide, high = _CHART
    flow.need(high + 14.0)
    x0, y0 = flow.left + 14.0, flow.y - high - 2.0
    sketch = flow.sheet.sketch
    flows = [q for q, _ in (*air.fan_curve, *air.system_curve)]
    most_p = max([p for _, p in air.fan_curve] or [air.points[0].static_inwg * 2 if air.points else 1.0]) * 1.08
    step_q, step_p = _step(max(flows)), _step(most_p)
    most_q = math.ceil(max(flows) / step_q) * step_q
    most_p = math.ceil(most_p / step_p) * step_p

    def at(q: float, p: float) -> tuple[float, float]:
        return x0 + wide * q / most_q, y0 + high * p / most_p

    _grid(sketch, at, most_q, step_q, most_p, step_p)
    for curve, colour, dash in ((air.fan_curve, ink.INK, ()), (air.system_curve, ink.UP, ink.DUCT_DASH)):
        points = [at(q, p) for q, p in _within(curve, most_q, most_p)]
        if len(points) > 1:
            sketch.path(points, ink.HEAVY, colour=colour, dash=dash)
    for point in air.points[:1]:
        x, y = at(point.flow_cfm, point.static_inwg)
        sketch.disc((x, y), 1.2, ink.FINE, fill=ink.UP, colour=ink.UP)
        places = [
            (x + a, y + b) for a, b in ((6.0, 6.0), (6.0, 12.0), (-6.0, 10.0), (6.0, -6.0), (-6.0, -8.0), (12.0, 18.0))
        ]
        sketch.note(
            (x, y), f"{point.flow_cfm:.0f} cfm at {point.static_inwg:.2f} in wg", places, ink.SMALL, halo=ink.WHITE
        )
    _bars(sketch, air, (x0 + wide + 12.0, y0, flow.right, y0 + high))
    low = y0 - 7.2
    sketch.line((x0, low), (x0 + 9.0, low), ink.HEAVY)
    sketch.text((x0 + 11.0, low - 0.9), "fan", ink.SMALL)
    sketch.line((x0 + 22.0, low), (x0 + 31.0, low), ink.HEAVY, colour=ink.UP, dash=ink.DUCT_DASH)
    sketch.text((x0 + 33.0, low - 0.9), "duct, cap and fittings", ink.SMALL)
    flow.y = y0 - 12.0


def _bars(sketch: Sketch, air: AirResult, room: tuple[float, float, float, float]) -> None:
    """Draw each part's share of the losses as a bar in order from the hood; the costliest is filled dark."""
    bars = air.bars
    left, low, right, high = room
    if not bars or right - left < 60.0:
        return
    sketch.text((left, high - 1.0), "Share of the losses, in order from the hood", ink.LEAST, colour=ink.INK2)
    names, figures = 34.0, 21.0
    step = min(7.0, (high - 5.0 - low) / len(bars))
    if step < 3.2:
        return
    most = max(b.share for b in bars) or 1.0
    x0, long = left + names, right - left - names - figures
    for n, bar in enumerate(bars):
        y = high - 5.0 - (n + 1) * step
        name = wrapped(bar.label, ink.SMALL, Face.SANS, names - 2.0)
        sketch.text((x0 - 2.0, y + 0.35 * step - 0.6), name[0], ink.SMALL, anchor=Anchor.RIGHT)
        end = x0 + long * bar.share / most
        sketch.rect((x0, y), (max(end, x0 + 0.2), y + 0.72 * step), ink.FINE, fill=ink.UP if bar.share == most else ink.STEEL,
                    name=f"loss-{bar.part}")  # fmt: skip
        words = f"{bar.loss_inwg:.3f}  {100 * bar.share:.0f} in 100"
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


def _grid(sketch: Sketch, at: object, most_q: float, step_q: float, most_p: float, step_p: float) -> None:
    place = at
    assert callable(place)
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
    sketch.text((place(most_q, 0.0)[0], low - 8.0), "flow, cfm", ink.LEAST, anchor=Anchor.RIGHT, colour=ink.INK2)
    sketch.text((left - 12.0, place(0.0, most_p)[1] + 2.0), "pressure, in wg", ink.LEAST, colour=ink.INK2)


def _step(most: float) -> float:
    """Give a round step that divides a range into 4 to 8."""
    raw = most / 5
    power: float = 10.0 ** math.floor(math.log10(raw)) if raw > 0 else 1.0
    return min((k * power for k in (1.0, 2.0, 2.5, 5.0, 10.0)), key=lambda s: abs(s - raw))
