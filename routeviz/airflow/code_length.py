"""The code's own way: a table of longest duct by diameter and fan flow, less a fixed length for each elbow."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from routeviz.airflow.elements import Element
from routeviz.airflow.sections import hydraulic_in
from routeviz.catalog import table
from routeviz.model.route import PartKind

__all__ = ["CodeLength", "allowed_ft", "code_length"]


@dataclass(frozen=True, slots=True)
class CodeLength:
    """A route by the code's length table.

    `equivalent_ft` is the duct's length plus the deduction for every elbow; `allowed_ft` the table's entry:
    None where the table has none, inf for no limit, 0 for not allowed.
    """

    equivalent_ft: float
    allowed_ft: float | None
    diameter_in: float
    flow_cfm: float
    source: str


def allowed_ft(diameter_in: float, flow_cfm: float, *, flex: bool = False) -> tuple[float | None, str]:
    """Give the longest duct without elbows [ft] and the id of its source.

    The table is entered with the next smaller diameter and the next larger flow that it prints; it ends at
    300 cfm (None above) and below 3 in (0: not allowed).

    Parameters
    ----------
    diameter_in : float
        Inside diameter, or 4 A / P of other shapes [in].
    flow_cfm : float
        Rating of the fan at 0.25 in wg [cfm].

    References
    ----------
    air-code-length, air-code-length-7-8

    Examples
    --------
    >>> allowed_ft(6.0, 150.0)[0]
    112.0
    """
    rows: dict[str, Any] = table("ducts")["code_length"]
    column = next((i for i, q in enumerate(rows["flow_cfm"]) if flow_cfm <= q + 1e-9), None)
    if column is None:
        return None, rows["source"]
    fitting = [row for row in rows["row"] if row["diameter_in"] <= diameter_in + 1e-9]
    if not fitting:
        return 0.0, rows["source"]
    row = fitting[-1]
    return row["flex_ft" if flex else "smooth_ft"][column], row["source"]


def code_length(elements: tuple[Element, ...], rated_cfm: float | None) -> CodeLength:
    """Judge a route by the code's length table.

    Every elbow counts, whatever its angle, for the table makes no difference. The smallest section decides; any
    flexible piece puts the whole duct in the flexible columns.

    Parameters
    ----------
    elements : tuple of Element
    rated_cfm : float
        The fan's flow at 0.25 in wg; None when it cannot be told.

    References
    ----------
    air-code-length
    """
    rows = table("ducts")["code_length"]
    diameter = min((hydraulic_in(s) for e in elements for s in (e.section, e.section_out)), default=0.0)
    flex = any(e.kind is PartKind.FLEX for e in elements)
    elbows = sum(e.kind is PartKind.ELBOW for e in elements)
    equivalent = sum(e.length_in for e in elements) / 12 + rows["elbow_ft"] * elbows
    if rated_cfm is None or not math.isfinite(rated_cfm):
        return CodeLength(equivalent, None, diameter, 0.0, rows["source"])
    allowed, source = allowed_ft(diameter, rated_cfm, flex=flex)
    return CodeLength(equivalent, allowed, diameter, rated_cfm, source)
