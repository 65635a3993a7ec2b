"""A lesson as one HTML file: the page of its first plan, with the others and the steps beside it."""

from __future__ import annotations

import base64
from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

from routeviz.model.lesson import Told
from routeviz.views import gltf
from routeviz.views.page import fill
from routeviz.views.pagedata import page_data
from routeviz.views.parts import Group
from routeviz.views.stage import Stage

__all__ = ["compose"]


def compose(told: Told, stages: Mapping[str, Stage]) -> str:
    """Give the page of a lesson as text.

    Parameters
    ----------
    told : Told
        The lesson, filled in from its plans.
    stages : mapping
        The stage of each of its plans, built without bars, by the plan's name; "" is the one that it begins with.
    """
    first = stages[""]
    used = {step.plan for step in told.steps} - {""}
    others: dict[str, Any] = {
        name: {"data": page_data(stage), "model": _written(gltf.export(stage, without={Group.ROUTE}))}
        for name, stage in stages.items()
        if name in used
    }
    steps = [{**asdict(s), "say": f"{s.say} {s.on_screen}".strip()} for s in told.steps]
    lesson = {"title": told.title, "about": told.about, "steps": steps, "plans": others}
    model = gltf.export(first, without={Group.ROUTE})
    return fill(first.plan, {**page_data(first), "lesson": lesson}, model, title=told.title)


def _written(model: bytes) -> str:
    return base64.b64encode(model).decode()
