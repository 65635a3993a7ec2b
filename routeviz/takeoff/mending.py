"""What is done to a run given part by part that breaks what it must keep: look, mend, test."""

from __future__ import annotations

from routeviz.model.finding import Finding, State
from routeviz.model.route import Route
from routeviz.model.takeoff import Sheet, Step
from routeviz.takeoff.cautions import outside_caution

__all__ = ["is_mended", "mending_steps"]

# Work order: what duct it is, where it runs, of what and how it lies, its joints, its cap, what goes round it.
_WORK = (
    ("AIR-LENGTH", "AIR-SPEED", "AIR-LEAST", "DCT-OUTLET", "DCT-SHRINK", "DCT-SHEET"),
    ("TRM-OUTDOORS", "EXI-", "ELB-", "TRM-", "MBR-", "SVC-", "CLR-", "FIR-GARAGE", "FIR-SHARED", "FIR-WALL"),
    ("DCT-SMOOTH", "DCT-MATERIAL"),
    ("DCT-SLOPE", "DCT-LOW-POINT"),
    ("DCT-SCREWS", "AIR-TIGHT"),
    ("DCT-DAMPER", "TRM-CAP", "TRM-FLAP"),
    ("DCT-INSULATION", "FIR-BLOCK"),
)
_CAP, _ROUTE = 5, 1
_MAY_CUT = ("A wall or a roof may have to be cut: plan that way first, with the scene written anew, and cut nothing before. "
            "Ladder tied; on a roof fall protection on, nobody below.")  # fmt: skip


def is_mended(route: Route, findings: tuple[Finding, ...]) -> bool:
    """Whether a run that stands is mended rather than built: it breaks what it must keep, and not for a member alone."""
    return route.as_built and any(
        f.state is State.BROKEN and f.must and not f.waived and not f.code.startswith("MBR-") for f in findings
    )  # a member to cut has steps of its own


def mending_steps(findings: tuple[Finding, ...], route: Route, *, board: bool = True) -> list[Step]:
    """Give one step for each finding that is broken, in the order of the work, between looking and testing.

    `board` says whether any board is in the way to the duct; masonry is not cut with a blade set to its thickness.
    They come after the steps `power` and `protect`, and before what the whole order of work ends with.
    """
    broken = sorted((f for f in findings if f.state is State.BROKEN and not f.waived), key=_place)
    steps = [
        Step("compare", "Open the way to the duct and compare it with the drawings: sizes, joints, members beside it, where "
             "it ends.", ("power", "protect"), "What is found agrees with the drawings, or the scene is written anew.",
             "Shallow cuts only: set the blade to the board's thickness." if board else
             "Break out plaster by hand; drill nothing before the duct's line is found.", Sheet.SECTION)
    ]  # fmt: skip
    before = "compare"
    for n, finding in enumerate(broken, start=1):
        steps.append(_mend(f"mend-{n}", finding, before, route))
        before = steps[-1].id
    hold = "Signed off, or not asked for where you live. Take photographs."
    steps.append(
        Step("inspect", "Have the mended run inspected before it is covered.", (before,), hold, "", Sheet.FINDINGS)
    )
    closed = "patch the boards that were opened" if board else "make good what was opened"
    steps.append(
        Step("patch", f"Close the gaps round the duct where it passes floor, ceiling and wall, and {closed}.", ("inspect",),
             "", "", Sheet.PARTS)
    )  # fmt: skip
    return steps


def _place(finding: Finding) -> int:
    """Give the place of a finding's mending in the order of the work; the longest code that fits decides."""
    fits = [(len(code), place) for place, codes in enumerate(_WORK) for code in codes if finding.code.startswith(code)]
    return max(fits)[1] if fits else len(_WORK)


def _mend(step_id: str, finding: Finding, after: str, route: Route) -> Step:
    place = _place(finding)
    inside = route.termination.kind is None
    caution = _MAY_CUT if place == _ROUTE else "" if place != _CAP or inside else outside_caution(route)
    drawing = Sheet.OUTSIDE if place == _CAP and not inside else Sheet.SECTION if place < len(_WORK) else Sheet.FINDINGS
    remedy = _sentence(finding.remedy) or "see its finding."
    return Step(step_id, f"{finding.title}: {remedy}", (after,), "", caution, drawing)


def _sentence(words: str) -> str:
    cut = words.strip()
    return f"{cut[:1].upper()}{cut[1:].rstrip('.')}." if cut else ""
