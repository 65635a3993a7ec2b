"""The order of the verbs: read, frame, carve, search, realise, check, blow, count."""

from routeviz.pipeline.order import plan, settle

__all__ = ["plan", "settle"]
