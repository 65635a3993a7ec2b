"""The live page: the one page of a plan, served on this machine alone, with every number of its scene open to change."""

from routeviz.views.app.desk import Desk, DiskState, Tools
from routeviz.views.app.pictures import Pictures
from routeviz.views.app.planning import Answered, Job, Planning
from routeviz.views.app.server import application, serve

__all__ = ["Answered", "Desk", "DiskState", "Job", "Pictures", "Planning", "Tools", "application", "serve"]
