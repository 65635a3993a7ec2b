"""The sheet of findings: every check with its number, limit and source; what would clear them; what was waived."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.flags import flag, numbered
from routeviz.drawings.flow import Cell, Column, Flow, settled, tick_box
from routeviz.drawings.lists import CAUTION
from routeviz.drawings.primitives import Face
from routeviz.drawings.sheet import Paper, Sheet
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure, length, quantity
from routeviz.model.finding import Finding, FramingPiece, MemberRuling, State
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene
from routeviz.model.study import Fix
from routeviz.model.takeoff import Sheet as Name
from routeviz.units import flow_text, length_text, limit_text, spare_text

__all__ = ["findings_sheets"]

_TO_MEND = (State.BROKEN, State.CLOSE, State.NOT_CHECKED)


def findings_sheets(plan: Plan, paper: Paper, number: str, fixes: Sequence[Fix] = ()) -> list[Sheet]:
    """Write the answer, what would clear it, what may be cut, every finding, and the waivers with their reasons."""
    under = "the same numbers as in the drawings"
    return settled(
        lambda flow: _findings(flow, plan, fixes), paper, Name.FINDINGS, "Findings and sources", number, under
    )


def _findings(flow: Flow, plan: Plan, fixes: Sequence[Fix]) -> None:
    flow.paragraph(plan.answer, 3.4, face=Face.SERIF)
    if plan.second:
        flow.paragraph(plan.second, ink.BODY, colour=ink.INK2)
    _fixes(flow, fixes, plan.scene)
    _members(flow, plan)
    if fixes or plan.members:
        flow.head("What was checked")
    columns = (Column("", 0.055), Column("", 0.07), Column("finding", 0.30), Column("is", 0.08, Face.NARROW, right=True),
               Column("limit", 0.12, Face.NARROW, right=True), Column("spare", 0.08, Face.NARROW_BOLD, right=True),
               Column("what helps", 0.23), Column("source", 0.19))  # fmt: skip
    flow.table(columns, [_finding_row(n, f, plan.scene) for n, f in numbered(plan)], ink.SMALL)
    waivers = plan.scene.rules.waivers
    if waivers:
        flow.head("Waived")
    for waiver in waivers:
        about = ", ".join(
            f"{n}  {f.title}" for n, f in numbered(plan) if f.waived and waiver.answers_for(f.code, f.where)
        )
        flow.paragraph(f"{about or waiver.code}: {waiver.words}", ink.SMALL)
    if plan.best is None:  # else it stands under the order of work
        flow.gap()
        flow.paragraph(CAUTION, ink.SMALL, colour=ink.INK2)


def _fixes(flow: Flow, fixes: Sequence[Fix], scene: Scene) -> None:
    """List what would clear the plan; each was planned again, and the line says what that found."""
    if not fixes:
        return
    flow.head("What would clear it")
    columns = (Column("", 0.03), Column("", 0.03, Face.BOLD), Column("change", 0.27), Column("then", 0.33), Column("length", 0.09, Face.NARROW, right=True),
               Column("air", 0.07, Face.NARROW, right=True), Column("what that found", 0.21))  # fmt: skip
    rows: list[list[str | Cell]] = []
    for n, fix in enumerate(fixes, start=1):
        change = f"{fix.words.partition(': ')[0]}: {'; '.join(fix.members[1:])}" if fix.members else fix.words
        close = f", {fix.close} close" if fix.close else ""
        long = length_text(fix.length_in, metric=scene.metric, long=not scene.metric)
        air = flow_text(fix.flow_cfm, metric=scene.metric) if fix.flow_cfm > 0 else ""
        rows.append([Cell("", tick_box), str(n), change, fix.answer, long, air, f"{fix.recheck}{close}"])
    flow.table(columns, rows, ink.SMALL)


def _members(flow: Flow, plan: Plan) -> None:
    """List what may be done to each member that blocks a simpler route."""
    if not plan.members:
        return
    scene = plan.scene
    flow.head("Members in the way: what may be cut")
    columns = (Column("member", 0.15, Face.BOLD), Column("may it be cut", 0.14), Column("allowed", 0.10, Face.NARROW, right=True), Column("ours", 0.07, Face.NARROW, right=True),
               Column("rule, and what it would take", 0.36), Column("source", 0.19))  # fmt: skip
    rows: list[list[str | Cell]] = []
    for ruling in plan.members:
        most = ruling.most_in(metric=scene.metric)
        allowed = "" if most is None else f"{ruling.measure} {length(most, scene)}".strip()
        ours = "" if ruling.ours_in is None else length(ruling.ours_in, scene)
        rows.append(
            [ruling.label, ruling.verdict.value, allowed, ours, _ruling_words(ruling, scene), ruling.source_text]
        )
    flow.table(columns, rows, ink.SMALL)


def _ruling_words(ruling: MemberRuling, scene: Scene) -> str:
    said = [ruling.rule, *(t for t in (ruling.detail, ruling.remedy) if t and t != ruling.rule)]
    if ruling.framing:
        said.append(f"An opening would take: {'; '.join(_piece_words(p, scene) for p in ruling.framing)}")
    return ". ".join(_sentence(s) for s in said)


def _piece_words(piece: FramingPiece, scene: Scene) -> str:
    cut = f", {figure(piece.length_in, scene)} long" if piece.length_in is not None else ""
    note = f" ({piece.note})" if piece.note else ""
    return f"{piece.counted} {piece.size}{cut}{note}"


def _sentence(words: str) -> str:
    cut = words.strip().rstrip(".")
    return f"{cut[:1].upper()}{cut[1:]}"


def _finding_row(number: int, finding: Finding, scene: Scene) -> list[str | Cell]:
    def mark(sketch: Sketch, x: float, y: float) -> None:
        flag(sketch, x, y, finding.state, number)

    measured, limit, spare = _numbers(finding, scene)
    return [
        Cell("", mark),
        f"{finding.state.value}{', waived' if finding.waived else ''}",
        _finding_words(finding),
        measured,
        limit,
        spare,
        finding.remedy if finding.state in _TO_MEND else "",
        finding.source_text,
    ]


def _finding_words(finding: Finding) -> str:
    """Join title and detail: ``Duct material (advice): galvanized steel``."""
    what = finding.title if finding.must else f"{finding.title} (advice)"
    if not finding.detail:
        return what
    return f"{what}. {finding.detail}" if finding.detail[:1].isupper() else f"{what}: {finding.detail}"


def _numbers(finding: Finding, scene: Scene) -> tuple[str, str, str]:
    """Give measured, limit and spare as text; empty where there is none."""
    unit, given = finding.unit, finding.measured is not None
    limit, spare = finding.limit, finding.margin
    return (
        "" if finding.measured is None else quantity(finding.measured, unit, scene),
        "" if limit is None else limit_text(limit, finding.relation, unit, measured=given, metric=scene.metric),
        "" if spare is None else spare_text(spare, unit, metric=scene.metric),
    )
