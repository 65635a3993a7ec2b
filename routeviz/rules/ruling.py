"""What every member ruling is made of: the table's numbers, the code of the rule, and the record itself."""

from __future__ import annotations

from dataclasses import dataclass, field

from routeviz import catalog
from routeviz.model.finding import FramingPiece, MemberRuling, MemberVerdict
from routeviz.model.scene import MakerLimits, MemberKind
from routeviz.model.solids import Crossing, Frame, Solid, SolidKind
from routeviz.rules.cuts import Cut
from routeviz.rules.outcome import EPSILON_IN
from routeviz.units import MM_PER_IN, down_in, length_text

__all__ = ["Asked", "edge_is_tighter", "fits", "member_code", "row", "ruling"]

_ENGINEERED = frozenset({MemberKind.I_JOIST, MemberKind.OPEN_WEB, MemberKind.TRUSS, MemberKind.ENGINEERED,
                         MemberKind.STEEL})  # fmt: skip
_CODES = {
    SolidKind.JOIST: "MBR-JOIST", SolidKind.RAFTER: "MBR-JOIST", SolidKind.RIDGE: "MBR-BEAM",
    SolidKind.STUD: "MBR-STUD", SolidKind.JACK: "MBR-STUD", SolidKind.CRIPPLE: "MBR-STUD",
    SolidKind.PLATE: "MBR-PLATE", SolidKind.SILL: "MBR-PLATE", SolidKind.RIM: "MBR-RIM",
    SolidKind.BEAM: "MBR-BEAM", SolidKind.HEADER: "MBR-BEAM", SolidKind.CHORD: "MBR-ENGINEERED",
    SolidKind.WEB: "MBR-ENGINEERED", SolidKind.FURRING: "MBR-FREE", SolidKind.BLOCKING: "MBR-FREE",
    SolidKind.CABINET: "MBR-FREE", SolidKind.SOFFIT: "MBR-FREE", SolidKind.OBSTACLE: "MBR-FREE",
    SolidKind.MASONRY: "MBR-MASONRY", SolidKind.SLAB: "MBR-MASONRY",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Asked:
    """What a ruling stands on besides member and cut: what is round it, the maker's chart, and how lengths are written."""

    frame: Frame | None = None
    maker: MakerLimits = field(default_factory=MakerLimits)
    metric: bool = False
    in_a_row: int = 1  # which one it is of successive doubled studs that the duct bores too wide for a single one

    def most(self, inches: float) -> str:
        """Write a greatest length in the scene's own units, never past it."""
        return length_text(down_in(inches, metric=self.metric), metric=self.metric)

    def length(self, inches: float, *, long: bool = False) -> str:
        """Write a length in the scene's own units."""
        return length_text(inches, metric=self.metric, long=long)


def member_code(solid: Solid) -> str:
    """Give the code of the rule that judges cuts in this solid; "" for sheets and things that are no members."""
    if solid.kind is SolidKind.EAVE or solid.crossing is Crossing.GHOST:
        return ""
    if solid.member is not None and solid.member.kind in _ENGINEERED:
        return "MBR-ENGINEERED"
    if solid.member is not None and solid.member.kind is MemberKind.FURRING:
        return "MBR-FREE"
    return _CODES.get(solid.kind, "")


def row(group: str, key: str, *, metric: bool = False) -> tuple[float, str]:
    """Give a number of the member table [in] and its source; its own round one for metric homes, where the table has it."""
    row = catalog.table("members")[group][key]
    value = float(row["value_mm"]) / MM_PER_IN if metric and "value_mm" in row else float(row["value"])
    return value, str(row["source"])


def ruling(
    solid: Solid, verdict: MemberVerdict, rule: str, measure: str, allowed: float | None, ours: float | None,
    source: str, *, framing: tuple[FramingPiece, ...] = (), detail: str = "", remedy: str = "", words: str = "",
) -> MemberRuling:  # fmt: skip
    """Give the record of one ruling; its source is a catalogue id unless `words` cite a maker."""
    return MemberRuling(solid.id, solid.label, verdict, member_code(solid), rule, measure, allowed, ours, source,
                        words or catalog.source(source).text, framing, detail, remedy)  # fmt: skip


def fits(allowed: float, ours: float) -> MemberVerdict:
    """Give the verdict on a size under a limit."""
    return MemberVerdict.WITHIN if ours <= allowed + EPSILON_IN else MemberVerdict.NOT_ALLOWED


def edge_is_tighter(cut: Cut, least_edge_in: float, most_size_in: float) -> bool:
    """Whether a hole within both limits has less to spare at its nearer edge than in its size."""
    edge, size = cut.edge_in - least_edge_in, most_size_in - cut.size_in
    return min(edge, size) >= -EPSILON_IN and edge < size - EPSILON_IN
