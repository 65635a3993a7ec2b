"""What labels and flags say."""

from __future__ import annotations

from routeviz.model.finding import Finding, State
from routeviz.model.route import PartKind, Route, offsets_in
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.units import elbows_text, length_text, quantity_text

__all__ = ["finding_short", "route_title", "section_words"]


def finding_short(finding: Finding, *, metric: bool) -> str:
    """Say what a flag says beside its number: how much is missing or spare."""
    if finding.margin is None:
        return quantity_text(finding.measured, finding.unit, metric=metric) if finding.measured is not None else ""
    if finding.state is State.BROKEN and finding.unit.startswith("of ") and finding.measured is not None:
        return quantity_text(finding.measured, finding.unit, metric=metric)  # a share says nothing without its whole
    amount = quantity_text(abs(finding.margin), finding.unit, metric=metric).split(" of ")[0]
    if finding.state is State.BROKEN:
        return f"{amount} short" if finding.relation == "at least" else f"{amount} over"
    return f"{amount} spare"


def section_words(section: SectionSize, *, metric: bool) -> str:
    """Write a duct section: "8 in round", "3 1/4 x 10 in"."""
    if section.is_round:
        return f"{length_text(section.width_in, metric=metric)} round"
    wide, high = length_text(section.width_in, metric=metric), length_text(section.height_in, metric=metric)
    unit = " mm" if metric else " in"
    flat = f"{high.removesuffix(unit)} × {wide}"
    return f"{flat} oval" if section.shape is SectionShape.OVAL else flat


def route_title(route: Route, *, metric: bool) -> str:
    """Give the label of a duct: its section and its fittings that turn, an offset as what is bought for it."""
    offsets = offsets_in(route.parts)
    taken = {part.id for pair in offsets for part in pair}
    others = sum(p.angle_deg for p in route.parts if p.kind is PartKind.ELBOW and p.id not in taken) / 90.0
    turns = [f"one offset (two {first.angle_deg:.3g}° elbows)" for first, _ in offsets]
    turns += [elbows_text(others)] if others or not turns else []
    return f"{section_words(route.section, metric=metric)}, {', '.join(turns)}"
