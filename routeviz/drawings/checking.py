"""What every sheet must keep: nothing outside, nothing too small, no text over another."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations

from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Disc, Image, Page, Path, Text
from routeviz.drawings.taken import bold_strokes, crosses, letters

__all__ = ["LEAST_PT", "Fault", "faults"]

LEAST_PT = 7.0
_MARGIN = 2.0  # nothing nearer to the paper's edge [mm]


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong on a sheet."""

    page: str
    kind: str  # "outside", "small", "overlap", "struck"
    what: str


def faults(page: Page) -> tuple[Fault, ...]:
    """List what is wrong with a page; empty when it may be printed."""
    found: list[Fault] = []
    texts = [t for t in page.items if isinstance(t, Text)]
    for text in texts:
        if text.size * 72 / 25.4 < LEAST_PT:
            found.append(Fault(page.title, "small", f"{text.text!r} is {text.size * 72 / 25.4:.1f} pt"))
        if _outside(box(text), page):
            found.append(Fault(page.title, "outside", repr(text.text)))
    for item in page.items:
        reach = _reach(item)
        if reach is not None and _outside(reach, page):
            found.append(Fault(page.title, "outside", f"{type(item).__name__} {reach}"))
    for a, b in combinations(texts, 2):
        if a.text.strip() and b.text.strip() and _meet(box(a), box(b)):
            found.append(Fault(page.title, "overlap", f"{a.text!r} and {b.text!r}"))
    return (*found, *_struck(page))


def _struck(page: Page) -> list[Fault]:
    """Find texts that a bold line runs through; a ground painted behind the text would cut the line in two."""
    bold = [stroke for item in page.items if isinstance(item, Path | Disc) for stroke in bold_strokes(item)]
    texts = (t for t in page.items if isinstance(t, Text) and t.text.strip())
    return [
        Fault(page.title, "struck", repr(t.text)) for t in texts if any(crosses(letters(t), stroke) for stroke in bold)
    ]


def _reach(item: object) -> tuple[float, float, float, float] | None:
    if isinstance(item, Path):
        xs, ys = [p[0] for p in item.points], [p[1] for p in item.points]
        return min(xs), min(ys), max(xs), max(ys)
    if isinstance(item, Disc):
        (x, y), r = item.centre, item.radius
        return x - r, y - r, x + r, y + r
    if isinstance(item, Image):
        return item.at[0], item.at[1], item.at[0] + item.width, item.at[1] + item.height
    return None


def _outside(reach: tuple[float, float, float, float], page: Page) -> bool:
    return (
        reach[0] < _MARGIN or reach[1] < _MARGIN or reach[2] > page.width - _MARGIN or reach[3] > page.height - _MARGIN
    )


def _meet(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    slack = 0.02
    return a[0] < b[2] - slack and b[0] < a[2] - slack and a[1] < b[3] - slack and b[1] < a[3] - slack
