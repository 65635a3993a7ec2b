"""Loss coefficients of fittings: our own table with its sources, limits and ranges.

C is the total pressure lost over the velocity pressure of the named section. Each answer carries a low and a high
end; outside the table the end value holds, the range widens and `note` says so.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any

from routeviz.airflow.curves import between
from routeviz.airflow.sections import area_in2
from routeviz.catalog import table
from routeviz.model.scene import SectionSize

__all__ = [
    "CONSTRUCTIONS", "Coefficient", "cap", "collar", "contraction", "damper", "elbow", "enlargement", "mitre_reynolds",
    "open_end", "pair_ratio", "transition",
]  # fmt: skip

CONSTRUCTIONS = ("smooth", "5-piece", "4-piece", "3-piece", "adjustable", "mitre")
_OUTSIDE = 1.5  # how much the range widens outside a table


@dataclass(frozen=True, slots=True)
class Coefficient:
    """A loss coefficient with its range.

    `mitre_share` is how much of it grows with `mitre_reynolds`: C (1 + share (K - 1)); 1 for a mitre, 0 for elbows
    with a radius of half the diameter or more.
    """

    usual: float
    low: float
    high: float
    source: str
    note: str = ""
    mitre_share: float = 0.0

    def times(self, factor: float) -> Coefficient:
        """Scale all three values."""
        return replace(self, usual=self.usual * factor, low=self.low * factor, high=self.high * factor)


def _row(*names: str) -> dict[str, Any]:
    found: Any = table("fittings")
    for name in names:
        found = found[name]
    return dict(found)


def _ranged(c: float, row: dict[str, Any], *notes: str, mitre_share: float = 0.0, source: str = "") -> Coefficient:
    """Apply a row's factors low and high; every note about leaving the table widens them once."""
    said = tuple(n for n in notes if n)
    wide = _OUTSIDE ** len(said)
    low, high = row["low"] / wide, row["high"] * wide
    return Coefficient(c, c * low, c * high, source or row["source"], "; ".join(said), mitre_share)


@lru_cache(maxsize=4096)
def elbow(
    section: SectionSize, ratio: float, angle_deg: float, construction: str, *, plane_in: float | None = None
) -> Coefficient:
    """Give the coefficient of one elbow on its own velocity pressure.

    Round: C of the 90-degree elbow by centre-line radius over diameter (0.5 to 2.5 smooth, 0.5 to 2.0 gored; below
    0.5 it goes in a straight line to the mitre's) times the angle's share (0 to 180 degrees). Rectangular: rows
    by radius over the side in the bend, columns by the other side over it. Oval: as round, of the side in the
    bend, with a wider range.

    Parameters
    ----------
    section : SectionSize
    ratio : float
        Centre-line radius over the diameter, or over the side in the plane of the bend [-].
    angle_deg : float
        How far the elbow turns [deg], 0 to 180.
    construction : str
        One of CONSTRUCTIONS; an unknown word is taken as "4-piece" and noted.
    plane_in : float
        The side in the plane of the bend [in], for rectangular duct; the wide side when left out.

    Raises
    ------
    ValueError
        If the angle lies outside 0 to 180 degrees or the ratio is negative.

    References
    ----------
    air-elbows, air-elbows-short, air-elbows-rectangular, air-elbows-oval

    Examples
    --------
    >>> from routeviz.model.scene import SectionShape
    >>> elbow(SectionSize(SectionShape.ROUND, 8.0, 8.0), 1.0, 90.0, "smooth").usual
    0.22
    """
    if not 0.0 <= angle_deg <= 180.0:
        raise ValueError(f"an elbow turns by 0 to 180 degrees, not {angle_deg:g}")
    if ratio < 0.0:
        raise ValueError(f"radius over diameter is not negative: {ratio:g}")
    kind = construction.strip().lower()
    unknown = "" if kind in CONSTRUCTIONS else f"construction {construction!r} not known, taken as 4-piece"
    kind = "4-piece" if unknown else kind
    if section.shape.value == "rectangular":
        plane = plane_in or section.width_in
        side = section.height_in + section.width_in - plane
        return _rectangular(side / plane, ratio, angle_deg, kind == "mitre", unknown)
    found = _round(kind, ratio, angle_deg, unknown)
    if section.is_round:
        return found
    wide = _row("elbow", "oval")
    return replace(found, low=found.usual * wide["low"], high=found.usual * wide["high"], source=wide["source"])


def _angle_share(angle_deg: float) -> float:
    row = _row("elbow", "angle")
    return between(angle_deg, row["deg"], row["k"])


def _round(kind: str, ratio: float, angle_deg: float, unknown: str) -> Coefficient:
    sharp = _row("elbow", "mitre")
    mitred = between(angle_deg, sharp["deg"], sharp["c"]) * max(1.0, _angle_share(angle_deg))
    if kind == "mitre":
        return _ranged(mitred, sharp, _beyond_mitre(angle_deg), mitre_share=1.0)
    row, short = _row("elbow", "round", kind), _row("elbow", "round_short")
    below = short["ratio_below"] if kind in short["pieces"] else 0.0
    source = short["source"] if ratio < below else row["source"]
    return _radius(mitred, ratio, angle_deg, row, row["c"], unknown, source=source)


def _rectangular(side_ratio: float, ratio: float, angle_deg: float, is_mitre: bool, unknown: str) -> Coefficient:
    sharp, row = _row("elbow", "rectangular_mitre"), _row("elbow", "rectangular")
    sides = row["side_ratio"]
    outside = "" if sides[0] <= side_ratio <= sides[-1] else f"sides {side_ratio:.2g} to 1, outside the table"
    by_angle = [between(side_ratio, sides, line) for line in sharp["c"]]
    mitred = between(angle_deg, sharp["deg"], by_angle) * max(1.0, _angle_share(angle_deg))
    if is_mitre:
        return _ranged(mitred, sharp, outside, _beyond_mitre(angle_deg), mitre_share=1.0)
    values = [between(side_ratio, sides, line) for line in row["c"]]
    return _radius(mitred, ratio, angle_deg, row, values, outside, unknown)


def _beyond_mitre(angle_deg: float) -> str:
    return "" if angle_deg <= 90.0 else "mitre beyond 90 degrees, outside the table"


def _radius(
    mitred: float, ratio: float, angle_deg: float, row: dict[str, Any], values: list[float], *notes: str,
    source: str = "",
) -> Coefficient:  # fmt: skip
    """Give an elbow with a radius; below the table's least it goes in a straight line to the mitre's loss.

    Where the table's sharpest elbow loses more than the mitre, its own loss is held.
    """
    least, share = row["ratio"][0], _angle_share(angle_deg)
    if ratio >= least:
        return _ranged(between(ratio, row["ratio"], values) * share, row, *notes, source=source)
    sharp = 1.0 - ratio / least
    sharpest = values[0] * share
    c = max(mitred, sharpest) * sharp + sharpest * (1.0 - sharp)
    note = f"radius {ratio:.2g} of the side in the bend, below the table's {least:g}"
    return _ranged(c, row, note, *notes, mitre_share=sharp, source=source)


def mitre_reynolds(re: float) -> float:
    """Give the factor on a mitre's coefficient by Reynolds number (1e4 to 1.4e5; the end values hold beyond).

    References
    ----------
    air-elbows

    Examples
    --------
    >>> mitre_reynolds(6e4)
    1.09
    """
    row = table("fittings")["elbow"]["mitre_reynolds"]
    return between(re, row["re"], row["k"])


@lru_cache(maxsize=4096)
def pair_ratio(spacing: float, crossed: float, ratio: float) -> tuple[float, float, float]:
    """Give the loss of two close elbows over the plain sum of their losses: usual, low, high. Low confidence.

    Published numbers (remembered) are for sharp elbows; measurements of smooth elbows only say that spaced pairs
    add up within about 10 %. From R/D 1 up the usual value carries a quarter of the sharp pair's surcharge, the
    high end all of it, the low end none: an engineering choice.

    Parameters
    ----------
    spacing : float
        Distance between the two corners over the side in the bend [-].
    crossed : float
        0 when both turn in one plane, 1 when their planes are square to each other.
    ratio : float
        The smaller radius over diameter of the two elbows [-].

    References
    ----------
    air-pairs-sharp, air-pairs-smooth

    Examples
    --------
    >>> pair_ratio(12.0, 0.0, 1.0)
    (1.0, 1.0, 1.0)
    """
    row = _row("pair")
    one = between(spacing, row["spacing"], row["same_plane"])
    other = between(spacing, row["spacing"], row["crossed_planes"])
    surcharge = one * (1 - crossed) + other * crossed - 1.0
    radius = min(max(ratio, 0.0), 1.0)
    usual, low, high = (
        1.0 + surcharge * ((1 - radius) + radius * row[key])
        for key in ("radius_share", "radius_share_low", "radius_share_high")
    )
    return usual, low, high


def _full_angle_deg(before: SectionSize, after: SectionSize, length_in: float) -> float:
    """Give the full angle between the walls of a transition, on its steepest side."""
    step = max(abs(before.width_in - after.width_in), abs(before.height_in - after.height_in))
    return 180.0 if length_in <= 0 else 2 * math.degrees(math.atan(step / 2 / length_in))


def contraction(area_ratio: float, angle_deg: float) -> Coefficient:
    """Give the coefficient of a contraction on the velocity pressure of its smaller end.

    From the gradual column (up to 40 degrees between the walls) in a straight line to the abrupt one (180 degrees).
    Valid for area ratios 1 to 10.

    Parameters
    ----------
    area_ratio : float
        Larger area over smaller [-], at least 1.
    angle_deg : float
        Full angle between the walls [deg].

    References
    ----------
    air-transitions

    Examples
    --------
    >>> contraction(2.0, 180.0).usual
    0.26
    """
    row = _row("contraction")
    gradual = between(area_ratio, row["area_ratio"], row["gradual"])
    abrupt = between(area_ratio, row["area_ratio"], row["abrupt"])
    c = between(angle_deg, [row["gradual_to_deg"], 180.0], [gradual, abrupt])
    return _ranged(c, row, "" if area_ratio <= row["area_ratio"][-1] else "area ratio outside the table")


def enlargement(area_ratio: float, angle_deg: float) -> Coefficient:
    """Give the coefficient of an enlargement on the velocity pressure of its smaller end.

    (1 - A1/A2)^2 (Borda-Carnot) times min(1, 2.6 sin(angle/2)) for tapers up to 45 degrees between the walls.

    References
    ----------
    air-enlargement

    Examples
    --------
    >>> enlargement(2.0, 180.0).usual
    0.25
    """
    taper = min(1.0, 2.6 * math.sin(math.radians(min(angle_deg, 180.0)) / 2)) if angle_deg < 45.0 else 1.0
    return _ranged((1 - 1 / area_ratio) ** 2 * taper, _row("enlargement"))


@lru_cache(maxsize=1024)
def transition(before: SectionSize, after: SectionSize, length_in: float) -> Coefficient:
    """Give the coefficient of a transition on the velocity pressure of its faster end; 0 if nothing changes.

    A change of shape adds a small loss to that of the change of area.

    References
    ----------
    air-transitions, air-enlargement
    """
    first, second = area_in2(before), area_in2(after)
    angle = _full_angle_deg(before, after, length_in)
    found = contraction(first / second, angle) if second <= first else enlargement(second / first, angle)
    if before.shape is after.shape:
        return found
    row = _row("shape_change")
    return replace(
        found,
        usual=found.usual + row["c"],
        low=found.low + row["c_low"],
        high=found.high + row["c_high"],
        note="; ".join(n for n in (found.note, f"{before.shape} to {after.shape}") if n),
    )


def _stated(*names: str, note: str = "") -> Coefficient:
    row = _row(*names)
    return Coefficient(row["c"], row["c_low"], row["c_high"], row["source"], note)


def collar() -> Coefficient:
    """Give the coefficient of the hood's collar. Low confidence: makers' ratings hold the hood up to its collar.

    References
    ----------
    air-entry
    """
    return _stated("collar")


def damper() -> Coefficient:
    """Give the coefficient of an open flap damper in the run. Low confidence.

    References
    ----------
    air-damper
    """
    return _stated("damper")


def open_end() -> Coefficient:
    """Give the coefficient of a plain open end: one velocity pressure.

    References
    ----------
    air-exit
    """
    return _stated("open_end")


def cap(*, roof: bool, with_damper: bool, stated: float | None = None) -> Coefficient:
    """Give the coefficient of a cap, with the outlet's own velocity pressure. Low confidence unless stated.

    No rating of residential caps is published; the ranges span what makers' equivalent lengths say.

    Parameters
    ----------
    roof : bool
        A roof cap rather than a wall cap.
    with_damper : bool
        Whether it has a flap.
    stated : float
        The maker's coefficient, when known; below 1.0 it is raised to 1.0, for no plain outlet loses less.

    References
    ----------
    air-caps, air-exit

    Examples
    --------
    >>> cap(roof=False, with_damper=True).usual
    2.5
    """
    if stated is not None:
        note = "" if stated >= 1.0 else "a cap holds the outlet's own velocity pressure: 1.0 at least"
        c = max(stated, 1.0)
        return Coefficient(c, c, c, "air-stated", note)
    return _stated("cap", ("roof" if roof else "wall") + ("" if with_damper else "_no_damper"), note="low confidence")
