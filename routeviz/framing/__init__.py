"""FRAME: a scene to tagged solids, zones where a duct may run, and faces where it may leave."""

from routeviz.framing.assemble import frame, moved
from routeviz.framing.assumed import assumptions

__all__ = ["assumptions", "frame", "moved"]
