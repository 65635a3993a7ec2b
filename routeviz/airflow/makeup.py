"""Makeup air: whether it is asked for, how much, and what opening lets it in."""

from __future__ import annotations

import math

from routeviz.airflow.fan import fan_model, flow_at
from routeviz.airflow.words import area_text
from routeviz.catalog import table
from routeviz.model.airflow import MakeupAir, capable_cfm
from routeviz.model.scene import Scene

__all__ = ["fan_cfm", "makeup_air", "opening_in2"]

_PA_PER_INWG = 249.08891


def fan_cfm(scene: Scene) -> float | None:
    """Give what the fan moves by its curve, printed or assumed, at the pressure that labels are rated at (0.1 in wg).

    A curve that ends above that pressure gives its last flow. None where nothing is known of the fan or it never
    reaches that pressure.
    """
    model = fan_model(scene.hood.fan)
    if model is None:
        return None
    at = float(table("fans")["rating"]["inwg"])
    curve = model.usual
    return curve.end_cfm if curve(curve.end_cfm) > at else flow_at(curve, at)


def opening_in2(flow_cfm: float, pressure_pa: float) -> float:
    """Give the sharp-edged opening [in2] that lets a flow pass: Q = 2610 A sqrt(dp), A in ft2, dp in wg.

    Parameters
    ----------
    flow_cfm : float
        Flow [cfm], not negative.
    pressure_pa : float
        By how much the house may be under the outdoors [Pa], above 0.

    Raises
    ------
    ValueError
        Outside these limits.

    References
    ----------
    air-makeup-orifice

    Examples
    --------
    >>> round(opening_in2(287, 3) / 144, 2)
    1.0
    """
    if flow_cfm < 0 or pressure_pa <= 0:
        raise ValueError(f"an opening needs a flow of 0 or more and a pressure above 0: {flow_cfm:g}, {pressure_pa:g}")
    orifice = table("air_needs")["makeup_opening"]["orifice"]
    return float(144.0 * flow_cfm / (orifice * math.sqrt(pressure_pa / _PA_PER_INWG)))


def makeup_air(
    scene: Scene, threshold_cfm: float, delivered_cfm: float, *, source: str, pressure_pa: float | None = None,
    only_with_flue: bool = False,
) -> MakeupAir:  # fmt: skip
    """Judge the need for makeup air and size it.

    A code's threshold is strict (at exactly 400 cfm nothing is asked) and looks at what the hood is capable of: the
    greatest of its label, its curve at 0.1 in wg and what the duct lets through. The supply is sized for what the duct delivers, for
    that is what leaves the house. An open-flue appliance asks for makeup air at any flow: that is good practice, not
    the code's threshold.

    Parameters
    ----------
    scene : Scene
    threshold_cfm : float
        The profile's number [cfm]; inf where the profile has none.
    delivered_cfm : float
        Flow through the duct at full speed [cfm].
    source : str
        Id of the threshold's source.
    pressure_pa : float
        By how much the house may be under the outdoors [Pa]; 3 Pa when left out.
    only_with_flue : bool
        Whether the threshold holds only in a house that is said to have an open-flue appliance.

    References
    ----------
    air-makeup-orifice, air-makeup-open-flue
    """
    rows = table("air_needs")
    allowed = rows["makeup_opening"]["pressure_pa"] if pressure_pa is None else pressure_pa
    flue = scene.rules.open_flue_appliance
    capacity = capable_cfm(scene.hood.fan.rated_cfm, fan_cfm(scene), delivered_cfm)[0]
    needed = capacity > threshold_cfm and (flue is True or not only_with_flue)
    area = opening_in2(delivered_cfm, allowed)
    return MakeupAir(
        threshold_cfm=threshold_cfm,
        capacity_cfm=capacity,
        needed=needed,
        supply_cfm=delivered_cfm,
        opening_in2=area,
        square_in=math.sqrt(area),
        pressure_pa=allowed,
        source=source,
        advice=_advice(scene, needed, area),
        cautions=_cautions(scene, needed, flue),
    )


def _advice(scene: Scene, needed: bool, area_in2: float) -> tuple[str, ...]:
    if not needed and not scene.rules.open_flue_appliance:
        return ()
    found = [
        f"a passive opening needs {area_text(area_in2, metric=scene.metric)} of free area; louvres and screens cover part of an opening",
        "a damper that opens with the hood: let a relay on the fan's supply drive it when the hood has no terminals for it",
        "bring the air in near the hood, in the same room or one joined to it by openings at least as large",
    ]
    if scene.site.cold_climate:
        found.append("in a cold climate warm the air on its way in, or use a powered supply")
    return tuple(found)


def _cautions(scene: Scene, needed: bool, flue: bool | None) -> tuple[str, ...]:
    found = []
    if flue:
        found.append(
            "an open-flue appliance is in the house: any exhaust can pull its smoke back in, below the threshold too; "
            "have the draught tested with every fan running, and fit a carbon monoxide alarm"
        )
    if flue is None:
        found.append(
            "nobody said whether an open-flue heater, boiler or stove is in the house; look before the hood runs"
        )
    if scene.rules.tight_house and not needed:
        found.append("the house is tight: the hood moves less than its label unless air can come in")
    return tuple(found)
