"""A hood without a circuit of its own."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import Electrical
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """A hood with cord and plug must have its own circuit; for a wired one it is good practice."""
    power = context.scene.hood.electrical
    if power is None:
        return
    limit = context.limit("cord_circuit") if power.cord else context.limit("own_circuit")
    detail = "with cord and plug" if power.cord else "wired"
    if power.dedicated is None or limit is None:
        yield not_checked(rule, context, "cord_circuit", limit=limit, detail=f"{detail}; the scene does not say which circuit feeds it",
                          remedy="Plan a circuit for the hood alone, and have it connected by an electrician.", must=power.cord)  # fmt: skip
        return
    yield yes_or_no(rule, limit, power.dedicated, where=("hood-body",), detail=detail,
                    remedy="Give the hood a circuit of its own.")  # fmt: skip


def _own(dedicated: bool) -> Context:
    plain = kitchen()
    power = Electrical(0.0, 9.0, cord=True, dedicated=dedicated)
    return look(replace(plain, hood=replace(plain.hood, electrical=power)))


RULE = Rule(
    code="PWR-CIRCUIT",
    title="Circuit for the hood",
    fault="No circuit of the hood's own",
    scope=Scope.SCENE,
    checks="Whether the hood has a circuit of its own.",
    why="A plug connection is allowed for hoods only on its own circuit; it also leaves room for a stronger appliance later.",
    limits=("cord_circuit", "own_circuit"),
    sources=(),
    applies="Where the scene describes the connection. A must for cord and plug; good practice for wired hoods.",
    blind="The load of the circuit.",
    judge=judge,
    passing_words="Cord and plug on a circuit of its own.",
    passing=lambda: _own(True),
    failing_words="Cord and plug on a shared circuit.",
    failing=lambda: _own(False),
)
