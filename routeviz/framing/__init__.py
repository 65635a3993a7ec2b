"""FRAME: a scene to tagged solids, zones where a duct may run, and faces where it may leave."""

from routeviz.framing.assemble import frame

__all__ = ["frame"]
