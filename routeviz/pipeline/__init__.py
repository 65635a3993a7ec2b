"""The order of the verbs: read, frame, carve, search, realise, check, blow, count."""

from routeviz.pipeline.order import plan, scene_findings, settle

__all__ = ["plan", "scene_findings", "settle"]
