"""What is done to a run given part by part that breaks what it must keep: look, mend, test."""

from __future__ import annotations

from routeviz.model.finding import Finding, State
from routeviz.model.takeoff import Sheet, Step

__all__ = ["mending_steps"]


def mending_steps(findings: tuple[Finding, ...], *, board: bool = True) -> list[Step]:
    """Give one step for each finding that is broken, in the findings' order, between looking and testing.

    `board` says whether any board is in the way to the duct; masonry is not cut with a blade set to its thickness.
    They come after the steps `power` and `protect`, and before what the whole order of work ends with.
    """
    broken = [f for f in findings if f.state is State.BROKEN and not f.waived]
    steps = [
        Step("compare", "Open the way to the duct and compare it with the drawings: sizes, joints, members beside it, where "
             "it ends.", ("power", "protect"), "What is found agrees with the drawings, or the scene is written anew.",
             "Shallow cuts only: set the blade to the board's thickness." if board else
             "Break out plaster by hand; drill nothing before the duct's line is found.", Sheet.SECTION)
    ]  # fmt: skip
    before = "compare"
    for n, finding in enumerate(broken, start=1):
        step = Step(f"mend-{n}", f"{finding.title}: {_sentence(finding.remedy) or 'see its finding.'}", (before,), "", "",
                    Sheet.FINDINGS)  # fmt: skip
        steps.append(step)
        before = step.id
    hold = "Signed off, or not asked for where you live. Take photographs."
    steps.append(
        Step("inspect", "Have the mended run inspected before it is covered.", (before,), hold, "", Sheet.FINDINGS)
    )
    steps.append(
        Step(
            "patch",
            "Patch the boards that were opened." if board else "Make good what was opened.",
            ("inspect",),
            "",
            "",
            Sheet.PARTS,
        )
    )
    return steps


def _sentence(words: str) -> str:
    cut = words.strip()
    return f"{cut[:1].upper()}{cut[1:].rstrip('.')}." if cut else ""
