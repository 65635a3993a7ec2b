"""Ids that cannot collide, whatever the things of a scene are called.

The house's own solids keep their ids; a thing that the scene names takes its own name as its id, and a number behind it
where the house, or another thing's parts, has that id already. What people read is the label, which stays as it is.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from routeviz.model.solids import Solid

__all__ = ["FURNITURE_IDS", "told_apart"]

# kept free even where one of them is not there, so that a hood may move along the wall and all ids stay
FURNITURE_IDS = ("floor", "cooktop", "counter-left", "counter-right", "hood-canopy", "hood-body", "cover")
_NAMED_ROWS = (".openings", ".services", ".beams")


def _named(solid: Solid) -> bool:
    """Whether the scene's own name is part of a solid's id: a thing's, or that of the space whose wall it is."""
    thing = solid.origin.startswith("obstacles.") or solid.origin.endswith(_NAMED_ROWS)
    return thing or solid.id.startswith(f"{solid.space}-")


def told_apart(solids: Iterable[Solid]) -> tuple[Solid, ...]:
    """Give the solids in the same order, with ids that are unique."""
    every = tuple(solids)
    given = {solid.id for solid in every}
    taken = {*FURNITURE_IDS, *(solid.id for solid in every if not _named(solid))}
    found = []
    for solid in every:
        if not _named(solid):
            found.append(solid)
            continue
        name, number = solid.id, 1
        while name in taken or (number > 1 and name in given):  # `given`: another thing is called that
            number += 1
            name = f"{solid.id}-{number}"
        taken.add(name)
        found.append(solid if name == solid.id else replace(solid, id=name))
    return tuple(found)
