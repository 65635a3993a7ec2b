"""TELL: a plan as text for the terminal and as JSON for machines."""

from routeviz.reports.as_json import plain, plan_dict, plan_json, plan_schema
from routeviz.reports.tape import tape_text
from routeviz.reports.text import CAUTION, compare_text, findings_text, plan_text
from routeviz.reports.words import wrap

__all__ = [
    "CAUTION",
    "compare_text",
    "findings_text",
    "plain",
    "plan_dict",
    "plan_json",
    "plan_schema",
    "plan_text",
    "tape_text",
    "wrap",
]
