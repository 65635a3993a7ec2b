"""Duct that does not stay inside the chimney cover."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.overhead import ceiling_over_hood_in
from routeviz.model.route import PartKind
from routeviz.model.scene import Cover, Scene
from routeviz.model.solids import Vec3
from routeviz.rules.bench import duct, kitchen, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, at_least, at_most
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import half_sizes
from routeviz.rules.whereabouts import pieces

_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW, PartKind.TRANSITION)


def _points(context: Context) -> Iterator[tuple[Vec3, float, float]]:
    """Give points of the duct between body and ceiling that stand free in the room, each with its half sizes along x and y."""
    bottom = context.scene.hood_bottom_in or 0.0
    low, high = bottom + context.scene.hood.body_in, ceiling_over_hood_in(context.scene)
    width = context.scene.kitchen.width_in
    for part in context.the_route().parts:
        if part.kind not in _LAID:
            continue
        entering, leaving = half_sizes(part), half_sizes(part, leaving=True)
        aside, out = max(entering[0], leaving[0]), max(entering[1], leaving[1])
        for point in (part.start, *(middle for middle, _ in pieces(part)), part.end):
            in_room = 0 <= point[0] <= width and point[1] < 0 and low - 1e-6 <= point[2] < high - 1e-6
            if in_room and not _hidden(context.scene, point):
                yield point, aside, out


def _hidden(scene: Scene, point: Vec3) -> bool:
    """Whether a soffit or cabinet hides the duct there, so that no cover is asked to."""
    x, y, z = point
    return any(
        t.hides_duct
        and t.left_in <= x <= t.left_in + t.width_in
        and t.out_in <= -y <= t.out_in + t.depth_in
        and t.bottom_in <= z <= t.bottom_in + t.height_in
        for t in scene.obstacles
    )


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the room between the duct's surface and the cover's sides and front."""
    scene = context.scene
    cover = scene.hood.cover
    if cover is None or scene.hood_bottom_in is None:
        return
    half, x = cover.width_in / 2, scene.hood.centre_in
    found = [
        (min(half - abs(point[0] - x) - aside, cover.depth_in + point[1] - out), point)
        for point, aside, out in _points(context)
    ]
    if not found:
        return
    least, place = min(found)
    limit = arithmetic("cover_room", 0.0, must=False)
    if least < 0:
        yield at_most(
            rule, limit, -least, where=("cover",), place=place,
            detail="the cover cannot be set whole: its side would have to be cut out",
            remedy="Keep the offset above the ceiling, move the hood under the duct, or do without the cover.",
        )  # fmt: skip
        return
    yield at_least(rule, limit, least, where=("cover",), place=place)


def _slim() -> Scene:
    plain = kitchen()
    return replace(plain, hood=replace(plain.hood, cover=Cover(16.0, 30.0, 13.0, 13.0)))


def _aside() -> Context:
    start: Vec3 = (60.0, -8.0, 77.5)
    points: tuple[Vec3, ...] = (start, (60.0, -8.0, 88.0), (84.0, -8.0, 88.0), (84.0, -8.0, 150.0))
    return look(_slim(), route=duct(points))


RULE = Rule(
    code="FIT-COVER-DUCT",
    title="Duct inside the chimney cover",
    fault="Duct outside the chimney cover",
    scope=Scope.ROUTE,
    checks="Whether the duct between the hood's body and the ceiling stays inside the cover's outline.",
    why="A duct that jogs sideways or forward below the ceiling stays visible, and the cover cannot be fitted.",
    limits=(),
    sources=("arithmetic",),
    applies="To hoods with a chimney cover and routes that pass between body and ceiling.",
    blind="The thickness of the cover's sheet, its brackets and joint bands on the duct.",
    judge=judge,
    passing_words="An 8 in duct straight up inside a cover 13 in square.",
    passing=lambda: look(_slim(), route=straight_up()),
    failing_words="The same duct jogging 24 in aside below the ceiling.",
    failing=_aside,
)
