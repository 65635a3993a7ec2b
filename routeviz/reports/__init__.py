"""TELL: a plan as text for the terminal and as JSON for machines."""

from routeviz.reports.as_json import plan_dict, plan_json, plan_schema
from routeviz.reports.text import findings_text, plan_text

__all__ = ["findings_text", "plan_dict", "plan_json", "plan_schema", "plan_text"]
