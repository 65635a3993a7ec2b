"""A chimney cover that does not close to the ceiling."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.overhead import cover_room_in
from routeviz.model.scene import Kitchen
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import EPSILON_IN, at_least, at_most
from routeviz.rules.profiles import Limit
from routeviz.rules.registry import Rule, Scope


def _own(key: str, value: float) -> Limit:
    return Limit(key, value, "in", False, "maker", f"{value:g} in", "", "the hood's own sizes")


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the hood's body to the ceiling and compare with the cover's range; under a slope at either side."""
    scene = context.scene
    cover, bottom, both = scene.hood.cover, scene.hood_bottom_in, cover_room_in(scene)
    if cover is None or bottom is None or both is None:
        return
    least, most = both
    place = (scene.hood.centre_in, -cover.depth_in / 2, bottom + scene.hood.body_in + max(least, 0.0) / 2)
    reach = f"the cover goes from {context.length(cover.min_in)} to {context.length(cover.max_in)}"
    if most - least > EPSILON_IN:
        reach += f"; under the slope it stands {context.length(least)} high at its low side, {context.length(most)} at its high side"
    if least - cover.min_in < cover.max_in - most:
        short = context.length(max(0.0, cover.min_in - least))
        yield at_least(rule, _own("cover_min", cover.min_in), least, where=("cover",), place=place, detail=reach,
                       remedy=f"Hang the hood {short} lower, or cut the cover.")  # fmt: skip
    else:
        short = context.length(max(0.0, most - cover.max_in))
        yield at_most(rule, _own("cover_max", cover.max_in), most, where=("cover",), place=place, detail=reach,
                      remedy=f"Order an extension, have a longer cover made, or hang the hood {short} higher.")  # fmt: skip


def _under(ceiling_in: float) -> Context:
    plain = kitchen()
    return look(replace(plain, kitchen=Kitchen(120.0, 120.0, ceiling_in)))


RULE = Rule(
    code="FIT-COVER",
    title="Chimney cover between hood and ceiling",
    scope=Scope.SCENE,
    checks="Whether the room between the hood's body and the ceiling lies within what the telescoping cover can do; under a slope its low side must not be too short and its high side not too long.",
    why="A cover too short leaves a gap at the ceiling; one too long cannot be pushed in.",
    limits=(),
    sources=("arithmetic",),
    applies="To hoods with a chimney cover, when the mounting height is given or chosen.",
    blind="Crown moulding, ceilings out of level, and the overlap that the maker asks for.",
    judge=judge,
    passing_words="20 in between body and ceiling, and a cover of 16 to 30 in.",
    passing=lambda: _under(96.0),
    failing_words="32 in between body and ceiling, and the same cover.",
    failing=lambda: _under(108.0),
)
