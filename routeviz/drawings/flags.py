"""Marks of findings that survive a grey print: shape first, colour second."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.primitives import Anchor, Face, Point
from routeviz.drawings.sketch import Sketch
from routeviz.model.finding import Finding, State
from routeviz.model.plan import Plan

__all__ = ["barred", "flag", "numbered"]


def numbered(plan: Plan) -> list[tuple[int, Finding]]:
    """Give all findings with their numbers: broken, close, fine, not checked; the same numbers on every sheet."""
    shown = [f for f in plan.all_findings if f.state is not State.DOES_NOT_APPLY]
    return list(enumerate(shown, start=1))


def barred(sketch: Sketch, outline: list[Point]) -> None:
    """Fill an area with the bars that mean broken and nothing else."""
    sketch.path(outline, 0.0, fill=ink.WHITE, closed=True)
    for k in range(3):
        shifted = [(x + 0.18 * k, y) for x, y in outline]
        sketch.hatch(shifted, 1.8, colour=ink.BAR)
    sketch.path(outline, ink.MEDIUM, colour=ink.BAR, closed=True)


def flag(sketch: Sketch, x: float, y: float, state: State, number: int) -> None:
    """Draw a finding's mark with its lower left at (x, y): pennant, dashed square, tick, or ring."""
    words = str(number)
    if state is State.BROKEN:
        tail = [(x, y - 0.6), (x + 7.6, y - 0.6), (x + 6.2, y + 1.1), (x + 7.6, y + 2.8), (x, y + 2.8)]
        barred(sketch, tail)
        sketch.disc((x + 2.6, y + 1.1), 1.65, ink.HAIR, fill=ink.WHITE, colour=ink.BAR)
        sketch.text((x + 2.6, y + 0.2), words, ink.LEAST, Face.NARROW_BOLD, Anchor.MIDDLE)
    elif state is State.CLOSE:
        sketch.rect((x, y - 0.6), (x + 5.2, y + 2.8), ink.MEDIUM, fill=ink.WHITE, colour="#7a4a00", dash=(0.9, 0.6))
        sketch.text((x + 2.6, y + 0.2), words, ink.LEAST, Face.NARROW_BOLD, Anchor.MIDDLE)
    elif state is State.FINE:
        sketch.path(((x + 0.4, y + 0.9), (x + 1.4, y), (x + 3.0, y + 2.4)), ink.HEAVY, colour=ink.UP)
        sketch.text((x + 4.0, y + 0.2), words, ink.LEAST, Face.NARROW)
    else:
        sketch.disc((x + 1.6, y + 1.0), 1.2, ink.FINE, colour=ink.INK2, dash=(0.5, 0.5))
        sketch.text((x + 4.0, y + 0.2), words, ink.LEAST, Face.NARROW)
