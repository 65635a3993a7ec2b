"""CHECK: one file per rule; a scene and a route to findings with their numbers, sources and ways out."""

from routeviz.rules.barred import barring, leaves_cooktop, left_behind
from routeviz.rules.check import check, check_route, check_scene, scene_mistakes
from routeviz.rules.context import Context
from routeviz.rules.cuts import Cut, bore, cut_by, cut_of, hole_box, notch, severing
from routeviz.rules.distances import bounded, keep_away
from routeviz.rules.explanation import Explanation, LimitRow, codes, explain
from routeviz.rules.members import hole_limit_in, member_code, member_verdict
from routeviz.rules.openings import header_rule
from routeviz.rules.profiles import Limit, Profile, profile, profile_mistake, profiles
from routeviz.rules.registry import FAMILIES, Rule, Scope, all_rules
from routeviz.rules.room import free_heights, hood_places
from routeviz.rules.touched import blocker_rulings
from routeviz.rules.window import Bound, Window, mounting_window

__all__ = [
    "FAMILIES",
    "Bound",
    "Context",
    "Cut",
    "Explanation",
    "Limit",
    "LimitRow",
    "Profile",
    "Rule",
    "Scope",
    "Window",
    "all_rules",
    "barring",
    "blocker_rulings",
    "bore",
    "bounded",
    "check",
    "check_route",
    "check_scene",
    "codes",
    "cut_by",
    "cut_of",
    "explain",
    "free_heights",
    "header_rule",
    "hole_box",
    "hole_limit_in",
    "hood_places",
    "keep_away",
    "leaves_cooktop",
    "left_behind",
    "member_code",
    "member_verdict",
    "mounting_window",
    "notch",
    "profile",
    "profile_mistake",
    "profiles",
    "scene_mistakes",
    "severing",
]
