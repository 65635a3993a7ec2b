"""What a rule looks at."""

from __future__ import annotations

from dataclasses import dataclass, replace

from routeviz import catalog
from routeviz.model.airflow import AirResult
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Frame
from routeviz.rules.profiles import Limit, Profile, maker_limit
from routeviz.units import flow_text, length_text, quantity_text, sheet_text, told

__all__ = ["Context"]

_MAKER_FIELD = {
    "canopy_over_gas": "hood_min_in",
    "canopy_over_electric": "hood_min_in",
    "canopy_over_induction": "hood_min_in",
    "canopy_max": "hood_max_in",
    "cabinet_unprotected": "cabinet_above_in",
    "cabinet_protected": "cabinet_above_in",
    "side_clearance": "side_clearance_in",
    "side_cabinet_up": "side_cabinet_up_in",
    "duct_least": "duct_min_in",
}


@dataclass(frozen=True, slots=True, eq=False)
class Context:
    """A scene with everything that is known of it. Rules on routes need `route`; those on air need `air`.

    Two contexts are the same only if they are one, so that what is worked out for one can be kept by it.
    """

    scene: Scene
    frame: Frame
    profile: Profile
    route: Route | None = None
    air: AirResult | None = None
    fan_cfm: float | None = None  # what the fan moves at 0.1 in wg by its curve; None where nobody worked it out

    def limit(self, key: str) -> Limit | None:
        """Give a limit: the maker's when the scene has one, else the profile's with its note in the scene's units, else None."""
        name = _MAKER_FIELD.get(key)
        value = getattr(self.scene.rules.maker, name) if name else None
        if value is not None:
            return maker_limit(self.scene, key, value)
        found = self.profile.get(key)
        return None if found is None else replace(found, note=told(found.note, metric=self.scene.metric))

    def the_route(self) -> Route:
        """Give the route.

        Raises
        ------
        ValueError
            If a rule on routes is asked without one.
        """
        if self.route is None:
            raise ValueError("this rule judges a route and there is none")
        return self.route

    def length(self, inches: float) -> str:
        """Write a length in the scene's own units."""
        return length_text(inches, metric=self.scene.metric)

    def quantity(self, value: float, unit: str) -> str:
        """Write any other measured value in the scene's own unit."""
        return quantity_text(value, unit, metric=self.scene.metric)

    def sheet(self, inches: float) -> str:
        """Write the thickness of sheet metal, too thin for fractions, in the scene's own units."""
        return sheet_text(inches, metric=self.scene.metric)

    def flow(self, flow_cfm: float) -> str:
        """Write an air flow in the scene's own unit."""
        return flow_text(flow_cfm, metric=self.scene.metric)

    @property
    def canopy_key(self) -> str:
        """Name the limit that sets the least height of the canopy over this kind of cooktop."""
        return f"canopy_over_{self.scene.cooktop.kind.value}"


def close_amount(code: str, unit: str) -> float:
    """Give the spare under which a passing finding of rule `code` is called close, in `unit`."""
    rows = catalog.table("rules")["close"]
    by_code = rows["by_code"].get(code)
    return float(by_code if by_code is not None else rows.get(unit, 0.0))
