"""Duct of a material that the place does not allow."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind
from routeviz.rules.bench import look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope

_LAID = (PartKind.STRAIGHT, PartKind.ELBOW, PartKind.TRANSITION)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare each material in the route with the place's list."""
    limit = context.limit("duct_materials")
    used: dict[str, list[str]] = {}
    for part in context.the_route().parts:
        if part.kind in _LAID:
            used.setdefault(part.material or context.scene.duct.material, []).append(part.id)
    for material, parts in used.items():
        title = f"{rule.title}: {material}"
        if limit is None:
            yield not_checked(rule, context, "duct_materials", where=tuple(parts), title=title)
        elif isinstance(limit.value, tuple):
            known = ", ".join(limit.value)
            name = material.lower().replace("aluminium", "aluminum")
            plain = {"galvanised steel": "galvanized steel"}.get(name, name)
            yield yes_or_no(rule, limit, plain in limit.value, where=tuple(parts), title=title, detail=f"allowed: {known}",
                            remedy=f"Use {known}.")  # fmt: skip


def _of(material: str) -> Context:
    route = straight_up()
    return look(route=replace(route, parts=tuple(replace(p, material=material) for p in route.parts)))


RULE = Rule(
    code="DCT-MATERIAL",
    title="Duct material",
    fault="Material not allowed",
    scope=Scope.ROUTE,
    checks="Whether the duct's material is on the place's list.",
    why="Plastic melts and burns, and some metals are too soft for grease fires.",
    limits=("duct_materials",),
    sources=(),
    applies="To straights, elbows and transitions. Flexible duct is judged by its own rule.",
    blind="Exceptions for duct under a concrete floor.",
    judge=judge,
    passing_words="Galvanized steel.",
    passing=lambda: _of("galvanized steel"),
    failing_words="PVC pipe.",
    failing=lambda: _of("PVC"),
)
