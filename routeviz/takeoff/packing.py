"""Packing behind the hood's screws where masonry lies behind a gap: board on strips, plaster on battens.

A screw that bridges a gap bends under the hood. So the board is opened at each mark, a block as thick as the gap is
fixed to the wall, and the screw goes through board and block into its anchor in the wall.
"""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.model.members import together
from routeviz.model.route import Route
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.takeoff import BuyLine, Mark, Sheet, Step
from routeviz.takeoff.marks import fastener_for, screw_for, screw_words
from routeviz.takeoff.words import own_in, size_text
from routeviz.units import length_text

__all__ = ["block_in", "furring_cut", "opened_plaster", "pack_lines", "pack_steps", "strip_opening_in"]


def block_in(*, metric: bool) -> float:
    """Give the side of a packing block [in], and of the opening that it is let in by."""
    return own_in(table("stock")["packing"], "side", metric=metric)


def _packed(marks: tuple[Mark, ...]) -> dict[float, list[Mark]]:
    found: dict[float, list[Mark]] = {}
    for mark in marks:
        if mark.gap_in > 0:
            found.setdefault(round(mark.gap_in, 4), []).append(mark)
    return found


def pack_lines(scene: Scene, marks: tuple[Mark, ...]) -> list[BuyLine]:
    """Give the blocks, what fixes them to the wall, and the board to patch over them."""
    row, side = table("stock")["packing"], block_in(metric=scene.metric)
    plug = fastener_for(table("stock")["fastener"]["large"], "plug", metric=scene.metric)[0]
    square = size_text(side, side, metric=scene.metric)
    lines: list[BuyLine] = []
    for gap, held in _packed(marks).items():
        names = " ".join(m.label for m in held)
        thick = length_text(gap, metric=scene.metric)
        screws = int(row["anchors"]) * len(held)
        lines += [
            BuyLine("packing block", f"{square}, {thick} thick", len(held), "each", f"in the gap behind marks {names}"),
            BuyLine(f"{plug} with its screw", screw_for(table("stock")["fastener"]["large"], "plug", gap, 0.0, scene), screws,
                    "each", f"{row['anchors']} to each packing block, through {thick} of it into the wall"),
            BuyLine("board patch", square, len(held), "each", f"over the packing blocks of {names}"),
        ]  # fmt: skip
    return lines


def pack_steps(scene: Scene, marks: tuple[Mark, ...]) -> list[Step]:
    """Give the opening and packing of the gap behind the marks; nothing where no screw bridges one."""
    steps = []
    side = length_text(block_in(metric=scene.metric), metric=scene.metric)
    count = table("stock")["packing"]["anchors"]
    for n, (gap, held) in enumerate(_packed(marks).items(), start=1):
        names = together(m.label for m in held)
        screws = " and ".join(dict.fromkeys(screw_words(m) for m in held))
        text = (f"Open the wall's face {side} square at {names}, fix a block as thick as the "
                f"{length_text(gap, metric=scene.metric)} gap to the wall behind each with {count} anchors clear of the mark. "
                f"The screws then go through face and block into the wall: {screws}.")  # fmt: skip
        steps.append(
            Step("pack" if n == 1 else f"pack-{n}", text, ("marks", "power", "protect", "look"),
                 "No screw bridges the gap, and no block rocks.", "Old plaster falls in sheets: cut it gently.", Sheet.MARKING)
        )  # fmt: skip
    return steps


def furring_cut(route: Route, frame: Frame) -> list[str]:
    """Give the furring strips that the duct cuts, by label."""
    labels = [s.label for p in route.penetrations if (s := frame.solid(p.solid)).kind is SolidKind.FURRING]
    return list(dict.fromkeys(labels))


def strip_opening_in(*, metric: bool) -> float:
    """Give how far the face is opened past the hole, along a strip that is fixed beyond its cuts [in]."""
    return own_in(table("stock")["packing"], "past", metric=metric)


def opened_plaster(route: Route, scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> bool:
    """Whether the hood wall's plaster on lath is opened for a strip or for packing, and is made good as plaster."""
    faces = [layer.material.lower() for layer in scene.wall(WallSide.HOOD).inside]
    plaster = any("plaster" in face and "board" not in face for face in faces)
    return plaster and (bool(furring_cut(route, frame)) or any(m.gap_in > 0 for m in marks))
