"""Where the pressure goes: losses by part, in words and numbers, at a given flow."""

from __future__ import annotations

from routeviz.airflow.air import Air
from routeviz.airflow.elements import Element
from routeviz.airflow.sections import area_in2, velocity_fpm
from routeviz.airflow.system import COLLAR, EXIT, Level, Piece, System
from routeviz.model.airflow import Loss
from routeviz.model.route import PartKind
from routeviz.model.scene import SectionSize

__all__ = ["equivalent_ft", "fastest", "losses", "name_of"]


def name_of(ids: tuple[str, ...], owner: int) -> str:
    """Give the id of a piece's part; the hood's collar and a missing end have names of their own."""
    return {COLLAR: "collar", EXIT: "open end"}.get(owner, ids[owner] if owner >= 0 else "")


def _labels(elements: tuple[Element, ...]) -> tuple[str, ...]:
    """Name parts as a person counts them: ``straight 2``, ``elbow 1, 45°``."""
    kinds = [e.kind for e in elements]
    seen: dict[PartKind, int] = {}
    found = []
    for element in elements:
        seen[element.kind] = seen.get(element.kind, 0) + 1
        number = f" {seen[element.kind]}" if kinds.count(element.kind) > 1 else ""
        angle = f", {element.angle_deg:g}°" if element.angle_deg > 0 else ""
        name = "flexible duct" if element.kind is PartKind.FLEX else str(element.kind)
        found.append(f"{name}{number}{angle}")
    return tuple(found)


def losses(
    pieces: tuple[Piece, ...], elements: tuple[Element, ...], ids: tuple[str, ...], flow_cfm: float, air: Air
) -> tuple[Loss, ...]:
    """Give one loss for each part that loses anything, and one more for each close pair of elbows.

    Parameters
    ----------
    ids : tuple of str
        Ids of the parts, one for each element.
    flow_cfm : float
        Flow at which to look [cfm].
    """
    labels = _labels(elements)
    groups: dict[tuple[int, bool], list[Piece]] = {}
    for piece in pieces:
        groups.setdefault((piece.owner, piece.pair), []).append(piece)
    found = []
    for (owner, pair), group in groups.items():
        usual, low, high = (sum(_loss(p, flow_cfm, air, level) for p in group) for level in Level)
        name = labels[owner] if owner >= 0 else name_of(ids, owner)
        label = f"{name}, close to the elbow before it" if pair else name
        c = sum(p.c[Level.USUAL] for p in group)
        note = "; ".join(dict.fromkeys(p.note for p in group if p.note))
        source = next((p.source for p in group if p.source), "air-colebrook")
        found.append(Loss(name_of(ids, owner), label, usual, low, high, c or None, source, note))
    return tuple(found)


def _loss(piece: Piece, flow_cfm: float, air: Air, level: Level) -> float:
    return System.of_pieces((piece,), piece.section, air, level).total_inwg(flow_cfm)


def fastest(pieces: tuple[Piece, ...], flow_cfm: float) -> tuple[int, SectionSize, float]:
    """Give the owner, the section and the velocity [fpm] of the narrowest piece."""
    narrow = min(pieces, key=lambda p: area_in2(p.section))
    return narrow.owner, narrow.section, velocity_fpm(flow_cfm, narrow.section)


def equivalent_ft(pieces: tuple[Piece, ...], section: SectionSize, flow_cfm: float, air: Air) -> float:
    """Give the straight duct of one section that would lose as much as the whole route [ft].

    Uses the roughness of the route's own duct; 0 without flow.
    """
    if flow_cfm <= 0.0:
        return 0.0
    duct = [p for p in pieces if p.length_in[Level.USUAL] > 0.0]
    if not duct:
        return 0.0
    rough = min(p.roughness_in for p in duct)
    foot = Piece(0, section, (12.0, 12.0, 12.0), rough, (0.0, 0.0, 0.0), 0.0, "")
    total = sum(_loss(p, flow_cfm, air, Level.USUAL) for p in pieces)
    return total / _loss(foot, flow_cfm, air, Level.USUAL)
