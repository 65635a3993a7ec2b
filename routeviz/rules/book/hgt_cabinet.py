"""Wood too low over the cooktop."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import Obstacle, ObstacleKind
from routeviz.model.spoken import spoken
from routeviz.rules.bench import cabinet, kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.cuts import overlap_in
from routeviz.rules.outcome import EPSILON_IN, at_least, not_checked
from routeviz.rules.raising import raised_words
from routeviz.rules.registry import Rule, Scope

_NO_THING = frozenset({ObstacleKind.HOLE, ObstacleKind.DUCT, ObstacleKind.CHASE, ObstacleKind.PIPE})


def _over_cooktop(context: Context) -> Iterator[Obstacle]:
    top = context.scene.cooktop
    x = (top.centre_in - top.width_in / 2, top.centre_in + top.width_in / 2)
    out = (top.back_in, top.back_in + top.depth_in)
    for thing in context.scene.obstacles:
        if thing.kind in _NO_THING or thing.bottom_in <= top.height_in:
            continue
        over = overlap_in(x, (thing.left_in, thing.left_in + thing.width_in)) > 0
        if over and overlap_in(out, (thing.out_in, thing.out_in + thing.depth_in)) > 0:
            yield thing


def _hood_shields(context: Context, thing: Obstacle) -> bool:
    """Whether the metal hood under the thing is wide, central, high and far enough out to shield it."""
    hood, top, bottom = context.scene.hood, context.scene.cooktop, context.scene.hood_bottom_in
    limit, gap, reach = (context.limit(k) for k in ("cabinet_protected", "shield_gap", "shield_reach"))
    if bottom is None or hood.mount_in is None or limit is None:
        return False
    spare = (hood.width_in - top.width_in) / 2
    out = thing.out_in + thing.depth_in + (reach.number if reach else 0.0)
    air = thing.bottom_in - (bottom + hood.body_in)
    return (
        bottom < thing.bottom_in
        and abs(hood.centre_in - top.centre_in) <= spare + EPSILON_IN
        and hood.mount_in >= min(limit.number, 24.0) - EPSILON_IN
        and (reach is None or hood.depth_in >= out - EPSILON_IN)
        and (gap is None or air >= gap.number - EPSILON_IN)
    )


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the cooking surface to the underside of whatever hangs over it, protected or not."""
    top = context.scene.cooktop
    for thing in _over_cooktop(context):
        measured = thing.bottom_in - top.height_in
        covered = thing.protected or not thing.combustible
        shielded = not covered and _hood_shields(context, thing)
        limit = context.limit("cabinet_protected" if covered or shielded else "cabinet_unprotected")
        place = (thing.left_in + thing.width_in / 2, -(thing.out_in + thing.depth_in / 2), thing.bottom_in)
        name = spoken(thing.id)
        title = f"{name[:1].upper()}{name[1:]} above the cooktop"
        if limit is None:
            yield not_checked(rule, context, "cabinet_unprotected", measured=measured, unit="in", where=(thing.id,), place=place,
                              title=title)  # fmt: skip
            continue
        how = "protected or not combustible" if covered else "shielded by the metal hood" if shielded else "unprotected"
        yield at_least(rule, limit, measured, where=(thing.id, "cooktop"), place=place, title=title,
                       detail=f"{name} is {how}", remedy=_way_out(context, thing, limit.number, measured, covered=covered))  # fmt: skip
        strict = context.limit("cabinet_unprotected")
        if shielded and strict is not None and strict.number > limit.number:
            yield at_least(rule, strict, measured, where=(thing.id, "cooktop"), place=place, must=False,
                           title=f"{title} (read as unprotected)",
                           detail="some inspectors do not count the hood as a shield",
                           remedy="Ask the inspector, or protect the underside with board and sheet metal.")  # fmt: skip


def _way_out(context: Context, thing: Obstacle, limit_in: float, measured_in: float, *, covered: bool) -> str:
    """Say what clears a thing that hangs too low; protecting it only where it hangs high enough for that."""
    protected = context.limit("cabinet_protected")
    enough = protected is not None and not covered and measured_in >= protected.number - EPSILON_IN
    raised = raised_words(context, thing, max(0.0, limit_in - measured_in), "it")
    return f"{raised}{', or protect its underside' if enough else ''}."


def _with(bottom_in: float) -> Context:
    return look(kitchen(obstacles=(cabinet("wall-cabinet", 45.0, bottom_in, 30.0, 12.0),)))


RULE = Rule(
    code="HGT-CABINET",
    title="Cabinet above the cooktop",
    scope=Scope.SCENE,
    checks="The height of cabinets and other things over the cooktop, by whether they burn and whether something shields them.",
    why="Heat and flames reach the underside of wood; a metal hood or sheet metal over board takes them up.",
    limits=("cabinet_unprotected", "cabinet_protected", "shield_gap", "shield_reach"),
    sources=("umc-1998-906-1", "nkba-18"),
    applies="To everything in the scene that hangs over the cooktop's outline. It is not the height of the hood itself. The reading that does not count the hood as a shield is advice.",
    blind="Cabinets that the scene does not list; listed appliances whose own instructions allow less.",
    judge=judge,
    passing_words="A wood cabinet 40 in above the cooktop.",
    passing=lambda: _with(76.0),
    failing_words="A wood cabinet 29 7/8 in above the cooktop.",
    failing=lambda: _with(65.875),
)
