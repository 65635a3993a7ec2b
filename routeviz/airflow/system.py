"""What the duct takes: pressure by flow, part by part, at the usual, low and high end of every loss."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import IntEnum
from functools import lru_cache

from routeviz.airflow import fittings
from routeviz.airflow.air import Air, velocity_pressure_inwg
from routeviz.airflow.elements import Element
from routeviz.airflow.fittings import Coefficient, mitre_reynolds
from routeviz.airflow.friction import flex_times, roughness, unchecked_factor
from routeviz.airflow.sections import area_in2, hydraulic_in
from routeviz.catalog import table
from routeviz.model.route import PartKind
from routeviz.model.scene import SectionSize

__all__ = ["COLLAR", "EXIT", "Level", "Piece", "System", "pieces_of"]

COLLAR, EXIT = -1, -2  # owners of pieces that belong to no part


class Level(IntEnum):
    """Which end of every range is meant."""

    USUAL = 0
    LOW = 1
    HIGH = 2


@dataclass(frozen=True, slots=True)
class Piece:
    """One loss: friction and a coefficient on one section, each by Level. `owner` counts the parts from 0.

    Lengths hold the multiple of flexible duct as found already.
    """

    owner: int
    section: SectionSize
    length_in: tuple[float, float, float]
    roughness_in: tuple[float, float, float]
    c: tuple[float, float, float]
    mitre_share: float
    source: str
    note: str = ""
    pair: bool = False  # the surcharge of two close elbows, owned by the second


def _c(found: Coefficient) -> tuple[float, float, float]:
    return (found.usual, found.low, found.high)


_NOTHING = (0.0, 0.0, 0.0)


def _piece(owner: int, element: Element, section: SectionSize, length_in: float, found: Coefficient | None) -> Piece:
    rough = roughness(element.material)
    length = (length_in, length_in, length_in)
    note = "" if rough.known else f"roughness of {element.material} not known, taken as galvanized steel"
    source = rough.source
    if element.kind is PartKind.FLEX:
        usual, low, high, source = flex_times()
        length = (length_in * usual, length_in * low, length_in * high)
        rough = roughness("flex")
    if found:
        source = found.source
        note = "; ".join(n for n in (found.note, note) if n)
    return Piece(
        owner, section, length, (rough.usual_in, rough.low_in, rough.high_in), _c(found) if found else _NOTHING,
        found.mitre_share if found else 0.0, source, note,
    )  # fmt: skip


@lru_cache(maxsize=4096)
def pieces_of(elements: tuple[Element, ...], outlet: SectionSize, cap_c: float | None) -> tuple[Piece, ...]:
    """Give every loss of a duct, in order from the hood.

    Parameters
    ----------
    elements : tuple of Element
    outlet : SectionSize
        The hood's collar; its loss counts although it is part of the hood.
    cap_c : float
        The cap's coefficient when the maker states it.
    """
    found: list[Piece] = []
    if not any(e.kind is PartKind.COLLAR for e in elements):
        found.append(Piece(COLLAR, outlet, _NOTHING, _NOTHING, _c(fittings.collar()), 0.0, fittings.collar().source))
    before: tuple[Element, Piece] | None = None
    for owner, element in enumerate(elements):
        mine = tuple(_pieces(owner, element, cap_c))
        found += mine
        if element.angle_deg > 0.0:
            if before:
                found += _surcharge(element, before[0], (before[1], mine[0]))
            before = (element, mine[0])
    if not any(e.kind in (PartKind.CAP, PartKind.OPEN_END) for e in elements):
        last = elements[-1].section_out if elements else outlet
        found.append(Piece(EXIT, last, _NOTHING, _NOTHING, _c(fittings.open_end()), 0.0, fittings.open_end().source))
    return tuple(found)


def _pieces(owner: int, element: Element, cap_c: float | None) -> Iterator[Piece]:
    section, length = element.section, element.length_in
    match element.kind:
        case PartKind.COLLAR:
            yield _piece(owner, element, section, length, fittings.collar())
        case PartKind.TRANSITION:
            before, after = element.section, element.section_out
            slow, fast = (before, after) if area_in2(after) <= area_in2(before) else (after, before)
            yield _piece(owner, element, fast, length / 2, fittings.transition(before, after, length))
            yield replace(_piece(owner, element, slow, length / 2, None), source="")
        case PartKind.DAMPER:
            yield _piece(owner, element, section, length, fittings.damper())
        case PartKind.CAP:
            cap = fittings.cap(roof=element.roof, with_damper=element.with_damper, stated=cap_c)
            yield _piece(owner, element, section, length, cap)
        case PartKind.OPEN_END:
            yield _piece(owner, element, section, length, fittings.open_end())
        case _:
            yield _piece(owner, element, section, length, _elbow(element) if element.angle_deg > 0.0 else None)


def _elbow(element: Element) -> Coefficient:
    found = fittings.elbow(
        element.section, element.ratio, element.angle_deg, element.construction, plane_in=element.plane_in
    )
    near = table("fittings")["collar"]["elbow_near"]
    if element.run_in_in < near["within_diameters"] * element.plane_in:
        note = "right behind the blower, may lose more"
        return replace(found, high=found.high * near["high"], note="; ".join(n for n in (found.note, note) if n))
    return found


def _surcharge(element: Element, before: Element, elbows: tuple[Piece, Piece]) -> Iterator[Piece]:
    """Give what two close elbows lose beyond their plain sum, on each one's own velocity pressure."""
    side = max(element.plane_in, before.plane_in)
    ratios = fittings.pair_ratio(element.spacing_in / side, element.crossed, min(element.ratio, before.ratio))
    if ratios[Level.HIGH] <= 1.0:
        return
    source = table("fittings")["pair"]["source"]
    for elbow in elbows:
        usual, low, high = (c * (ratio - 1.0) for c, ratio in zip(elbow.c, ratios, strict=True))
        yield replace(
            elbow, owner=elbows[1].owner, length_in=_NOTHING, c=(usual, low, high), source=source, pair=True,
            note="two elbows close together lose more than their sum; low confidence",
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Stretch:
    """All losses that share one section and roughness: dp = (f length/D + C + mitre_c (K - 1)) p_v."""

    area_in2: float
    diameter_in: float
    relative: float
    length_over_diameter: float
    c: float
    mitre_c: float


@dataclass(frozen=True, slots=True)
class System:
    """Pressure that a duct takes, by flow."""

    stretches: tuple[_Stretch, ...]
    collar_area_in2: float
    air: Air

    @classmethod
    def of_pieces(cls, pieces: tuple[Piece, ...], outlet: SectionSize, air: Air, level: Level) -> System:
        """Gather pieces into as few stretches as there are different sections and roughnesses."""
        gathered: dict[tuple[SectionSize, float], list[float]] = {}
        for piece in pieces:
            key = (piece.section, piece.roughness_in[level] if piece.length_in[level] > 0.0 else 0.0)
            sums = gathered.setdefault(key, [0.0, 0.0, 0.0])
            sums[0] += piece.length_in[level]
            sums[1] += piece.c[level]
            sums[2] += piece.c[level] * piece.mitre_share
        stretches = tuple(
            _Stretch(area_in2(section), hydraulic_in(section), min(rough / hydraulic_in(section), 0.05),
                     sums[0] / hydraulic_in(section), sums[1], sums[2])
            for (section, rough), sums in gathered.items()
        )  # fmt: skip
        return cls(stretches, area_in2(outlet), air)

    def total_inwg(self, flow_cfm: float) -> float:
        """Give the total pressure lost [in wg] at a flow [cfm]."""
        if flow_cfm <= 0.0:
            return 0.0
        air, total = self.air, 0.0
        for s in self.stretches:
            velocity = flow_cfm * 144.0 / s.area_in2
            re = air.reynolds_constant * s.diameter_in * velocity
            c = s.c + s.mitre_c * (mitre_reynolds(re) - 1.0) if s.mitre_c else s.c
            if s.length_over_diameter:
                c += unchecked_factor(re, s.relative) * s.length_over_diameter
            total += c * velocity_pressure_inwg(velocity, air)
        return total

    def static_inwg(self, flow_cfm: float) -> float:
        """Give the fan static pressure wanted [in wg]: the losses less the velocity pressure at the collar.

        Fan static pressure leaves out the velocity pressure at the fan's outlet, which the duct uses up as well.
        """
        return self.total_inwg(flow_cfm) - self.collar_inwg(flow_cfm)

    def collar_inwg(self, flow_cfm: float) -> float:
        """Give the velocity pressure at the hood's collar [in wg]."""
        return velocity_pressure_inwg(flow_cfm * 144.0 / self.collar_area_in2, self.air)
