"""The order of the verbs: read, frame, carve, search, realise, check, blow, count."""

from routeviz.pipeline.order import conclude, plan, scene_findings, settle

__all__ = ["conclude", "plan", "scene_findings", "settle"]
