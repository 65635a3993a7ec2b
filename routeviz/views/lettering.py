"""Labels beside a picture: placed so that none overlaps another, none leaves the picture and no leaders cross."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import combinations

__all__ = ["Placed", "Tag", "arrange", "crossing", "keep_off", "overlap", "touched"]

_STEP_PX = 6.0  # by which a label is tried higher and lower
_OFF_PX = 6.0  # what a leader keeps off a figure

Box = tuple[float, float, float, float]  # left, top, right, bottom [px]


@dataclass(frozen=True)
class Tag:
    """A label to place: its size and where its leader ends in the picture [px]; None for a label without leader."""

    key: int
    width: float
    height: float
    anchor: tuple[float, float] | None


@dataclass(frozen=True)
class Placed:
    """A placed label: top left corner, size, and which side of the picture it stands on."""

    tag: Tag
    x: float
    y: float
    right: bool

    @property
    def leader(self) -> tuple[tuple[float, float], tuple[float, float]] | None:
        """Give the leader's two ends: at the label's inner edge and at its anchor."""
        if self.tag.anchor is None:
            return None
        edge = self.x if self.right else self.x + self.tag.width
        return (edge, self.y + self.tag.height / 2), self.tag.anchor


def overlap(a: Placed, b: Placed) -> bool:
    """Whether two labels share area."""
    return a.x < b.x + b.tag.width and b.x < a.x + a.tag.width and a.y < b.y + b.tag.height and b.y < a.y + a.tag.height


def crossing(a: Placed, b: Placed) -> bool:
    """Whether two leaders cross."""
    if a.leader is None or b.leader is None:
        return False
    (p, q), (r, s) = a.leader, b.leader

    def side(o: tuple[float, float], u: tuple[float, float], v: tuple[float, float]) -> float:
        return (u[0] - o[0]) * (v[1] - o[1]) - (u[1] - o[1]) * (v[0] - o[0])

    return side(p, q, r) * side(p, q, s) < 0 and side(r, s, p) * side(r, s, q) < 0


def _stack(tags: Sequence[Tag], top: float, bottom: float, gap: float) -> list[float]:
    """Give the y of labels in this order: each as near its anchor's height as the others allow."""
    wish = [(bottom if t.anchor is None else t.anchor[1]) - t.height / 2 for t in tags]
    # pool neighbours that would overlap and centre the pool on the mean of its members' wishes
    pools: list[list[int]] = []
    starts: list[float] = []

    def settle(members: list[int]) -> float:
        offset, total = 0.0, 0.0
        for i in members:
            total += wish[i] - offset
            offset += tags[i].height + gap
        height = offset - gap
        return min(max(total / len(members), top), bottom - height)

    for i in range(len(tags)):
        pools.append([i])
        starts.append(settle([i]))
        while len(pools) > 1:
            above = pools[-2]
            height = sum(tags[k].height + gap for k in above)
            if starts[-2] + height <= starts[-1]:
                break
            merged = above + pools[-1]
            pools[-2:] = [merged]
            starts[-2:] = [settle(merged)]
    found = [0.0] * len(tags)
    for pool, start in zip(pools, starts, strict=True):
        at = start
        for i in pool:
            found[i] = at
            at += tags[i].height + gap
    return found


def _column(
    tags: list[Tag], *, right: bool, width: float, margin: float, top: float, bottom: float, gap: float
) -> list[Placed]:
    ordered = sorted(tags, key=lambda t: (1e9 if t.anchor is None else t.anchor[1], t.key))

    def place(order: list[Tag]) -> list[Placed]:
        ys = _stack(order, top, bottom, gap)
        return [
            Placed(t, width - margin - t.width if right else margin, y, right) for t, y in zip(order, ys, strict=True)
        ]

    placed = place(ordered)
    for _ in range(len(ordered) ** 2):
        pair = next(((i, i + 1) for i in range(len(placed) - 1) if crossing(placed[i], placed[i + 1])), None)
        if pair is None:
            break
        i, j = pair
        ordered[i], ordered[j] = ordered[j], ordered[i]
        again = place(ordered)
        if sum(crossing(a, b) for a in again for b in again) >= sum(crossing(a, b) for a in placed for b in placed):
            ordered[i], ordered[j] = ordered[j], ordered[i]
            break
        placed = again
    return placed


def arrange(
    tags: Sequence[Tag],
    *,
    width: float,
    top: float,
    bottom: float,
    margin: float,
    gap: float,
    middle: float | None = None,
) -> list[Placed]:
    """Place labels in a column at each side of the picture.

    Parameters
    ----------
    tags : sequence of Tag
        Labels with their sizes and anchors [px].
    width, top, bottom : float
        Width of the picture and the heights between which labels may stand [px].
    margin, gap : float
        Distance from the picture's edge and between labels [px].
    middle : float, optional
        Anchors left of it go to the left column; the middle of the picture when left out.

    Returns
    -------
    list of Placed
        In the order of `tags`. A label that fits in neither column is left out, the last ones first.
    """
    split = width / 2 if middle is None else middle
    room = bottom - top
    columns: dict[bool, list[Tag]] = {False: [], True: []}

    def used(right: bool) -> float:
        return sum(t.height + gap for t in columns[right])

    def side(tag: Tag) -> bool | None:
        """Right, left, or None for an anchor so near the middle that either will do."""
        if tag.anchor is None or abs(tag.anchor[0] - split) < 0.05 * width:
            return None
        return tag.anchor[0] > split

    for tag in sorted(tags, key=lambda t: side(t) is None):  # those that have a side choose first
        chosen = side(tag)
        wish = used(True) < used(False) if chosen is None else chosen
        for right in (wish, not wish):
            if used(right) + tag.height <= room:
                columns[right].append(tag)
                break

    def place(columns: dict[bool, list[Tag]]) -> list[Placed]:
        return [
            p for right in (False, True)
            for p in _column(columns[right], right=right, width=width, margin=margin, top=top, bottom=bottom, gap=gap)
        ]  # fmt: skip

    best, free = place(columns), [t for t in tags if t.anchor is not None and side(t) is None]
    for _ in free:  # each round one of those near the middle changes sides, that which uncrosses most
        others = [_switched(columns, t) for t in free if t in columns[True] or t in columns[False]]
        trials = [(other, place(other)) for other in others if all(_high(c, gap) <= room for c in other.values())]
        if not trials:
            break
        other, trial = min(trials, key=lambda t: _crossings(t[1]))
        if _crossings(trial) >= _crossings(best):
            break
        columns, best = other, trial
    placed = {p.tag.key: p for p in best}
    return [placed[t.key] for t in tags if t.key in placed]


def _high(column: Sequence[Tag], gap: float) -> float:
    return sum(t.height + gap for t in column) - gap


def _switched(columns: dict[bool, list[Tag]], tag: Tag) -> dict[bool, list[Tag]]:
    """Give the columns with one label moved to the other."""
    right = tag in columns[True]
    return {right: [t for t in columns[right] if t is not tag], not right: [*columns[not right], tag]}


def _crossings(placed: Sequence[Placed]) -> int:
    return sum(crossing(a, b) for a, b in combinations(placed, 2))


def touched(placed: Placed, boxes: Sequence[Box]) -> int:
    """Count the boxes that a leader runs through or nearly touches; beside the figure at its own end it may be."""
    if placed.leader is None:
        return 0
    end = placed.leader[1]
    wide = [(b[0] - _OFF_PX, b[1] - _OFF_PX, b[2] + _OFF_PX, b[3] + _OFF_PX) for b in boxes]
    return sum(_meets(placed.leader, b if _meets((end, end), w) else w) for b, w in zip(boxes, wide, strict=True))


def _meets(line: tuple[tuple[float, float], tuple[float, float]], box: Box) -> bool:
    """Whether a line between two points has a point in a box."""
    (x, y), (u, v) = line
    first, last = 0.0, 1.0  # the share of the line that is left within each pair of sides
    for at, step, low, high in ((x, u - x, box[0], box[2]), (y, v - y, box[1], box[3])):
        if abs(step) < 1e-9:
            if not low <= at <= high:
                return False
            continue
        a, b = sorted(((low - at) / step, (high - at) / step))
        first, last = max(first, a), min(last, b)
    return first <= last


def keep_off(placed: Sequence[Placed], boxes: Sequence[Box], *, top: float, bottom: float, gap: float) -> list[Placed]:
    """Move labels up or down their column, none over another, until their leaders keep off boxes as far as they can.

    Parameters
    ----------
    placed : sequence of Placed
        Labels as `arrange` gives them.
    boxes : sequence of tuple
        What no leader should run through: left, top, right and bottom [px].
    top, bottom, gap : float
        Heights between which labels may stand, and the least distance between two [px].

    Returns
    -------
    list of Placed
        In the same order. Each stands as near its former height as its leader lets it.
    """
    found = list(placed)
    for n, label in enumerate(found):
        if not touched(label, boxes):
            continue
        others = [p for k, p in enumerate(found) if k != n]
        count = int((bottom - top) / _STEP_PX) + 1
        heights = sorted((top + k * _STEP_PX for k in range(count)), key=lambda y: abs(y - label.y))
        moved = [replace(label, y=y) for y in heights if y + label.tag.height <= bottom]
        tries = [t for t in moved if not any(overlap(_grown(t, gap), p) or crossing(t, p) for p in others)]
        found[n] = min([label, *tries], key=lambda t: touched(t, boxes))
    return found


def _grown(label: Placed, gap: float) -> Placed:
    """Give a label with its distance above and below."""
    return replace(label, tag=replace(label.tag, height=label.tag.height + 2 * gap), y=label.y - gap)
