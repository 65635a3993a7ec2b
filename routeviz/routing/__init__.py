"""REALISE: a centre line, or a list of fittings, becomes a route of real parts."""

from routeviz.routing.allowance import allowances
from routeviz.routing.as_built import realise_as_built
from routeviz.routing.realise import realise, take_off_in

__all__ = ["allowances", "realise", "realise_as_built", "take_off_in"]
