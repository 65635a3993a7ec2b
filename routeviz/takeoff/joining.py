"""How the joints of the run are made: which take screws, how many, and in which step."""

from __future__ import annotations

from collections.abc import Iterable

from routeviz.catalog import table
from routeviz.model.route import Route
from routeviz.model.scene import Scene, SectionSize
from routeviz.model.solids import Frame
from routeviz.takeoff.duct import Joint, joints

__all__ = ["from_behind", "joint_words", "of_step", "screwed", "screws_at"]

_NUMBERS = {3: "three", 4: "four", 5: "five", 6: "six"}


def screws_at(section: SectionSize) -> int:
    """Screws for one joint: at least three round a round duct, one on each side of a flat one."""
    stock = table("stock")
    return int(stock["joint"]["screws_round"] if section.is_round else stock["joint_flat"]["screws"])


def from_behind(route: Route) -> bool:
    """Whether the hood's collar goes straight back into the duct in the wall: a joint that no driver reaches."""
    return not route.as_built and abs(route.parts[0].direction[1]) > 0.5


def of_step(route: Route, scene: Scene, frame: Frame, where: str) -> list[Joint]:
    """Give the joints that are made in one step: "hood", "run" or "cap"."""
    return [j for j in joints(route, scene, frame) if j.where == where]


def screwed(route: Route, scene: Scene, frame: Frame) -> list[Joint]:
    """Give the joints that take screws: all but that of a collar which goes back into the wall."""
    return [j for j in joints(route, scene, frame) if not (j.where == "hood" and from_behind(route))]


def joint_words(made: Iterable[Joint]) -> str:
    """Say how many screws each joint takes, by the parts list's own count: ``at least three screws in each joint``."""
    listed = list(made)
    each = " in each joint" if len(listed) > 1 else ""
    shapes = sorted({j.section.is_round for j in listed}, reverse=True)
    words = [
        f"{'at least ' if round_ else ''}{_number(listed, round_)} screws" + ("" if round_ else ", one on each side,")
        for round_ in shapes
    ]
    if len(words) == 1:
        return f"{words[0]}{each}".removesuffix(",")
    return f"{words[0]} in each round joint and {_number(listed, False)} in each flat one, one on each side"


def _number(made: list[Joint], round_: bool) -> str:
    count = next(screws_at(j.section) for j in made if j.section.is_round is round_)
    return _NUMBERS.get(count, str(count))
