"""The plan in words, readable at 80 columns without colour. Answers first, reasons after."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.model.airflow import AirResult, AirStatus
from routeviz.model.finding import Finding, MemberRuling, State, Verdict
from routeviz.model.members import together
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Assumption
from routeviz.model.study import Fix, Way
from routeviz.model.takeoff import TakeOff
from routeviz.reports.air import air_text
from routeviz.reports.room import room_text
from routeviz.reports.words import MARKS, finding_numbers, wrap
from routeviz.units import drill_text, length_text, quantity_text

__all__ = ["CAUTION", "compare_text", "findings_text", "plan_text"]

CAUTION = (
    "A plan only: local code, the makers' instructions and licensed trades decide. Power off and proved dead before "
    "any cut; expect wires, pipes and gas in walls and ceilings; asbestos and lead paint in old houses; mind ladders "
    "and roofs. An exhaust fan can pull flue gas back from open-flue appliances: fit a carbon monoxide alarm."
)
_VERDICT_MARK = {Verdict.WORKS: "✓", Verdict.TIGHT: "!", Verdict.BLOCKED: "✗", Verdict.NO_PLACE: "✗"}


def _head(title: str) -> str:
    return f"\n{title}\n{'─' * len(title)}"


def plan_text(plan: Plan, *, fixes: Sequence[Fix] = (), width: int = 80) -> str:
    """Write the whole plan for a terminal.

    Returns
    -------
    str
        Answer, ways out, findings, air, what to measure first, parts, holes, marks, order of work, caution.
    """
    metric = plan.scene.metric
    out = [f"{plan.scene.name}{' (invented demo data)' if plan.scene.invented else ''}", ""]
    out.append(wrap(f"{_VERDICT_MARK[plan.verdict]} {plan.verdict}. {plan.answer}", width))
    if plan.second:
        out.append(wrap(plan.second, width, "  "))
    if fixes:
        out.append(_head("Fixes, each planned again"))
        out += [wrap(_fix_text(n, fix), width, "  ") for n, fix in enumerate(fixes, 1)]
        out.append(wrap("Write one into a new scene file with: routeviz plan SCENE --apply N", width, "  "))
    if plan.members:
        out.append(_head("May it be cut?"))
        out += [_member_text(m, width, metric) for m in plan.members]
    if plan.options:
        out.append(_head("Ways out"))
        out += [_way_out(o, width, metric) for o in plan.options]
    out.append(_head("Findings"))
    out.append(findings_text(plan.all_findings, metric=metric, width=width, routed=bool(plan.options)))
    if plan.scene.rules.waivers:
        out.append(_head("Waived"))
        out += [wrap(f"{w.code}: {w.words}", width, "  ") for w in plan.scene.rules.waivers]
    best = plan.best
    if best:
        out.append(_head("Air"))
        out.append(air_text(best.air, width, metric))
        out += _asked_text(best, width, metric)
        room = room_text(best.route, metric=metric, width=width)
        out += [_head("Room to spare"), *room] if room else []
        out += _take_off_text(best.takeoff, width, metric)
    if plan.assumptions:
        out.append(_head("Assumed, not measured"))
        out += _assumed_text(plan.assumptions, width)
    out.append("")
    out.append(wrap(CAUTION, width))
    return "\n".join(out) + "\n"


def _fix_text(number: int, fix: Fix) -> str:
    return f"{number}  {fix.words}. {fix.recheck[:1].upper()}{fix.recheck[1:]}. {fix.answer}"


def _assumed_text(assumptions: Sequence[Assumption], width: int) -> list[str]:
    """List what was taken for granted, what shares its reason together."""
    alike: dict[str, list[str]] = {}
    for a in assumptions:
        alike.setdefault(a.reason, []).append(f"{a.field} {a.value}")
    told = (f"{reason}: {' · '.join(v)}" if len(v) > 1 else f"{v[0]} ({reason})" for reason, v in alike.items())
    return [wrap(line, width, "  ", hang=2) for line in told]


def _member_text(ruling: MemberRuling, width: int, metric: bool) -> str:
    """Say of one member in the way what may be done to it, by which number."""
    numbers = ""
    most = ruling.most_in(metric=metric)
    if most is not None and ruling.ours_in is not None:
        allowed, ours = (length_text(v, metric=metric) for v in (most, ruling.ours_in))
        numbers = f" ({ruling.measure} up to {allowed}; this takes {ours})"
    lines = [
        wrap(f"{ruling.label}: {ruling.verdict}{numbers}. [{ruling.code}] {ruling.source_text}", width, "  ", hang=2)
    ]
    lines += [wrap(text, width, "      ") for text in (ruling.detail, ruling.remedy) if text]
    for piece in ruling.framing:
        cut = f", {length_text(piece.length_in, metric=metric)}" if piece.length_in is not None else ""
        note = f", {piece.note}" if piece.note else ""
        lines.append(wrap(f"{piece.counted}, {piece.size}{cut}{note}", width, "      ", hang=2))
    return "\n".join(lines)


def _way_out(option: Option, width: int, metric: bool) -> str:
    route = option.route
    own = sum(f.state is State.BROKEN and not f.waived for f in option.findings)
    numbers = f"{route.turns}, {length_text(route.length_in, metric=metric, long=True)}, {_flow(option.air, metric)}"
    if route.boxed_in > 0:
        numbers += f", {length_text(route.boxed_in, metric=metric, long=True)} to box in"
    for cabinet in option.takeoff.cabinets:
        lost, whole = (quantity_text(v, "in3", metric=metric) for v in (cabinet.lost_in3, cabinet.of_in3))
        numbers += f", takes {lost} of the {whole} in the {cabinet.label}"
    tail = f"; {own} broken of its own" if own else ""
    name = "" if route.as_built else f"{route.id}  "  # its words say that it is as built
    return wrap(f"{name}{route.words}: {numbers}{tail}.", width, "  ")


def _flow(air: AirResult, metric: bool) -> str:
    if air.full.status is AirStatus.NO_FAN:
        return "flow unknown"
    moved = quantity_text(air.full.flow_cfm, "cfm", metric=metric).split()[0]
    return f"{moved} of {quantity_text(air.label_cfm, 'cfm', metric=metric)}"


def _apart(findings: Sequence[Finding]) -> str:
    """Say how many of the broken findings are musts, how many advice, and how many somebody has waived."""
    broken = [f for f in findings if f.state is State.BROKEN]
    musts, advice = (sum(not f.waived and f.must is must for f in broken) for must in (True, False))
    waived = len(broken) - musts - advice
    named = [f"{musts} must{'s' * (musts != 1)}"] if musts else []
    named += [f"{advice} advice"] if advice else []
    named += [f"{waived} waived"] if waived else []
    return f" ({', '.join(named)})" if named else ""


def findings_text(findings: Sequence[Finding], *, metric: bool, width: int = 80, routed: bool = True) -> str:
    """List findings, worst first, numbered like the flags in the pictures; not `routed`, they say nothing of a duct."""
    counts = {state: sum(f.state is state for f in findings) for state in State}
    counted = (
        f"{counts[State.BROKEN]} broken{_apart(findings)} · {counts[State.CLOSE]} close · {counts[State.FINE]} fine"
        f" · {counts[State.NOT_CHECKED]} not checked"
    )
    lines = [wrap(counted, width, "  ")]
    if not routed:
        bars = any(
            f.code.startswith("TRM-") for f in findings
        )  # a limit that bars a way out has its finding all the same
        of = "the hood, the room and what bars a way" if bars else "the hood and the room alone"
        lines.append(wrap(f"Of {of}: there is no duct to judge.", width, "  "))
    number = 0
    for finding in findings:
        if finding.state is State.DOES_NOT_APPLY:
            continue
        measured, limit, spare = finding_numbers(finding, metric=metric)
        flag = ""
        if finding.state in (State.BROKEN, State.CLOSE):
            number += 1
            flag = f"{number} "
        settled = finding.detail if finding.state is State.FINE and measured and not finding.relation else ""
        facts = ", ".join(x for x in (measured, limit, f"spare {spare}" if spare else "", settled) if x)
        title = f"{MARKS[finding.state]} {flag}{finding.title}"
        lines.append(wrap(f"{title}: {facts}" if facts else title, width, "  "))
        if finding.state is not State.FINE:
            if finding.detail:
                lines.append(wrap(finding.detail, width, "      "))
            if finding.remedy:
                lines.append(wrap(f"→ {finding.remedy}", width, "      "))
            lines.append(wrap(f"[{finding.code}] {finding.source_text}", width, "      "))
        if finding.waived:
            lines.append(wrap(f"waived: {finding.waived}", width, "      "))
    return "\n".join(lines)


def _asked_text(option: Option, width: int, metric: bool) -> list[str]:
    """What the kitchen asks of the air, and what must come back in."""
    out: list[str] = []
    if option.need is not None:
        for flow in option.need.flows:
            most = f" to {quantity_text(flow.up_to_cfm, 'cfm', metric=metric)}" if flow.up_to_cfm else ""
            word = "✓" if flow.met else "!"
            out.append(
                wrap(
                    f"{word} {flow.label}: asks for {quantity_text(flow.at_least_cfm, 'cfm', metric=metric)}{most}",
                    width,
                    "  ",
                )
            )
    if option.makeup is not None and option.makeup.needed:
        out += [wrap(f"→ {line}", width, "  ") for line in option.makeup.advice]
        out += [wrap(f"caution: {line}", width, "  ") for line in option.makeup.cautions]
    return out


def _take_off_text(take: TakeOff, width: int, metric: bool) -> list[str]:
    def size(value: float) -> str:
        return length_text(value, metric=metric)

    out: list[str] = []
    if take.measure_first:
        out.append(_head("Measure first"))
        out += [
            wrap(
                f"☐ {m.what}: {'assumed' if m.assumed_only else 'given as'} {m.assumed}, {size(m.slack_in)} to spare; "
                f"plan again if it is {m.changes_at}",
                width,
                "  ",
            )
            for m in take.measure_first
        ]
    out.append(_head("Buy"))
    out += [wrap(f"☐ {line.words}", width, "  ") for line in take.buy]
    if take.cuts:
        out.append(_head("Cut"))
        out += [
            wrap(
                f"{c.id}: {size(c.cut_in)} from section {c.stock} ({size(c.visible_in)} showing){f', {c.note}' if c.note else ''}",
                width,
                "  ",
                hang=2,
            )
            for c in take.cuts
        ]
        out += [
            wrap(
                f"{s.count} section{'' if s.count == 1 else 's'} of {size(s.stock_in)}; "
                f"{f'{s.bound} is the least possible' if s.proven else f'at least {s.bound} are needed'}; waste {size(s.waste_in)}",
                width, "  ", hang=2,
            )
            for s in take.stock
        ]  # fmt: skip
    if take.holes:
        out.append(_head("Holes"))
        for h in take.holes:
            sides = [
                f"{size(v)} {way}".rstrip() for v, way in zip(h.size_in, h.sides if h.lies else ("", ""), strict=True)
            ]
            shown = sides[0] if h.shape == "round" else " × ".join(sides)
            out.append(
                wrap(
                    f"{h.layer}: {h.shape} {shown}, centre {size(h.from_left_in)} {h.from_left_name}, "
                    f"{size(h.from_other_in)} {h.from_other_name}{'; ' + h.note if h.note else ''}",
                    width, "  ", hang=2,
                )
            )  # fmt: skip
    if take.marks:
        out.append(_head("Mark on the wall and ceiling"))
        for m in take.marks:
            sign = "●" if m.wood else "□"
            proud = f", leave {size(m.stand_off_in)} proud" if m.stand_off_in else ""
            out.append(
                wrap(
                    f"{sign} {m.label}: {size(m.left_in)} from the left wall, {size(m.height_in)} up; {m.holds}: {m.driven}, "
                    f"pilot {drill_text(m.pilot_in, metric=metric)}{proud}"
                    f"{f'; {m.piece}' if m.piece else ''}",
                    width, "  ",
                )
            )  # fmt: skip
    if take.steps:
        out.append(_head("Order of work"))
        for n, step in enumerate(take.steps, 1):
            out.append(wrap(f"{n:>2}. {step.text}", width, "  "))
            if step.hold:
                out.append(wrap(f"hold: {step.hold}", width, "      "))
            if step.caution:
                out.append(wrap(f"caution: {step.caution}", width, "      "))
    return out


def compare_text(ways: Sequence[Way], *, metric: bool, width: int = 80) -> str:
    """Set ways out side by side, a row of numbers each with its answer below, readable at 80 columns."""
    head = f"{'way':<20}{'verdict':<13}{'elbows':>7}{'length':>12}{'air':>9}{'holes':>6}{'broken':>7}{'close':>6}"
    lines = [head, "─" * len(head)]
    for way in ways:
        if way.elbows is None or way.length_in is None:
            numbers = f"{'–':>7}{'–':>12}{'–':>9}{'–':>6}"
        else:
            flow = "–" if way.flow_cfm is None else quantity_text(way.flow_cfm, "cfm", metric=metric)
            length = length_text(way.length_in, metric=metric, long=True)
            numbers = f"{way.elbows:>7.3g}{length:>12}{flow:>9}{way.holes:>6}"
        label = way.label
        if len(label) >= 20:  # a long name has a line of its own
            lines.append(label)
            label = ""
        lines.append(f"{label:<20}{way.verdict:<13}{numbers}{way.broken:>7}{way.close:>6}")
        if way.note:
            lines.append(wrap(way.note, width, "  "))
        lines.append(wrap(way.answer, width, "    "))
        if way.members:
            lines.append(wrap(f"passes through {together(way.members)}", width, "    "))
        if way.cabinet_in3:
            lines.append(
                wrap(f"takes {quantity_text(way.cabinet_in3, 'in3', metric=metric)} of the cabinets", width, "    ")
            )
    return "\n".join(lines)
