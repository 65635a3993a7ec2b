"""The cord and its receptacle."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.scene import Electrical
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Say what a cord connection needs."""
    power, limit = context.scene.hood.electrical, context.limit("cord_length")
    if power is None or not power.cord or limit is None:
        return
    yield not_checked(rule, context, "cord_length", limit=limit, detail=f"at most {context.length(limit.number)}{f'; {limit.note}' if limit.note else ''}",
                      remedy="Put a grounded receptacle inside the cover or a cabinet, within reach and where the cord is protected.")  # fmt: skip


def _cord(cord: bool) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, electrical=Electrical(0.0, 9.0, cord=cord, dedicated=True))))


RULE = Rule(
    code="PWR-CORD",
    title="Cord and receptacle",
    scope=Scope.SCENE,
    checks="What a hood with cord and plug needs: cord length, ground, a receptacle that can be reached.",
    why="A cord that is pinched, too long or out of reach is a hidden danger.",
    limits=("cord_length",),
    sources=(),
    applies="To hoods with cord and plug; it reminds.",
    blind="Where the receptacle really is.",
    judge=judge,
    passing_words="A wired hood.",
    passing=lambda: _cord(False),
    failing_words="A hood with cord and plug.",
    failing=lambda: _cord(True),
    fails_as=State.NOT_CHECKED,
)
