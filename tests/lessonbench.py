"""The shipped lessons, planned and told once for all tests."""

from __future__ import annotations

import functools

from routeviz.cli.lessonplans import lesson_fixes, lesson_plans
from routeviz.views import lessons
from routeviz.views import stage as stages

SHELF = {each.name: each for each in lessons.shelf()}


@functools.cache
def told(name):
    written, plans = lesson_plans(SHELF[name].path)
    fixes = lesson_fixes(written, plans)
    bare = {key: stages.build(plan, bars=False) for key, plan in plans.items()}
    said = {key: lessons.facts_of(plan, fixes[key]) for key, plan in plans.items()}
    return written, plans, lessons.tell(written, bare, said, name=name), bare
