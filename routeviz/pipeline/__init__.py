"""The order of the verbs: read, frame, carve, search, realise, check, blow, count."""

from routeviz.pipeline.order import NOTHING_COUNTED, conclude, framed, plan, scene_findings, settle

__all__ = ["NOTHING_COUNTED", "conclude", "framed", "plan", "scene_findings", "settle"]
