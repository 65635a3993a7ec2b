"""What the kitchen asks of the hood's flow, and what is known of catching the smoke."""

from __future__ import annotations

from routeviz.catalog import table
from routeviz.model.airflow import AirNeed, CaptureGuide, FlowNeed
from routeviz.model.scene import Cooktop, CooktopKind, Hood, Kitchen, Scene

__all__ = ["air_need", "flow_by_heat_cfm", "flow_by_volume_cfm", "flow_by_width_cfm"]


def flow_by_width_cfm(width_in: float) -> tuple[float, float]:
    """Give the customary flow of a wall hood by cooktop width: 40 to 100 cfm a foot.

    References
    ----------
    air-need-width

    Examples
    --------
    >>> flow_by_width_cfm(30)
    (100.0, 250.0)
    """
    row = table("air_needs")["width"]
    return width_in / 12 * row["low_cfm_per_ft"], width_in / 12 * row["high_cfm_per_ft"]


def flow_by_heat_cfm(heat_btu_h: float) -> float:
    """Give the customary flow by burner heat: 1 cfm for each 100 Btu/h.

    References
    ----------
    air-need-heat

    Examples
    --------
    >>> flow_by_heat_cfm(40000)
    400.0
    """
    return float(heat_btu_h / table("air_needs")["heat"]["btu_h_per_cfm"])


def flow_by_volume_cfm(kitchen: Kitchen, air_changes_per_h: float | None = None) -> float:
    """Give the flow for a number of air changes an hour (15 when left out).

    References
    ----------
    air-need-volume

    Examples
    --------
    >>> flow_by_volume_cfm(Kitchen(144.0, 192.0, 108.0))
    432.0
    """
    changes = table("air_needs")["volume"]["air_changes_per_h"] if air_changes_per_h is None else air_changes_per_h
    return kitchen.width_in * kitchen.depth_in * kitchen.ceiling_in / 1728 * changes / 60


def air_need(scene: Scene, delivered_cfm: float, *, code_cfm: float | None = None, code_source: str = "") -> AirNeed:
    """Set the delivered flow beside what practice, print and research ask for.

    Parameters
    ----------
    scene : Scene
        Its cooktop, hood and kitchen.
    delivered_cfm : float
        Flow through the duct at full speed [cfm].
    code_cfm : float
        The profile's least flow of an intermittent kitchen exhaust [cfm]; 100 when left out.
    code_source : str
        Id of its source.

    References
    ----------
    air-need-width, air-need-heat, air-need-volume, air-need-intermittent, air-capture-front, air-capture-overhang
    """
    return AirNeed(
        flows=_flows(scene, delivered_cfm, code_cfm, code_source),
        capture=_capture(scene.cooktop, scene.hood, delivered_cfm),
    )


def _flows(scene: Scene, delivered: float, code_cfm: float | None, code_source: str) -> tuple[FlowNeed, ...]:
    rows = table("air_needs")
    least = rows["intermittent"]["cfm"] if code_cfm is None else code_cfm
    source = code_source or rows["intermittent"]["source"]
    low, high = flow_by_width_cfm(scene.cooktop.width_in)
    volume = flow_by_volume_cfm(scene.kitchen)
    found = [
        FlowNeed("rate", "published least flow, hood run when cooking", least, None, delivered, source),
        FlowNeed("width", "by cooktop width", low, high, delivered, rows["width"]["source"], "common practice"),
    ]
    heat = _heat(scene.cooktop)
    if scene.cooktop.kind is CooktopKind.GAS and heat > 0:
        wanted = flow_by_heat_cfm(heat)
        found.append(
            FlowNeed("heat", "by burner heat", wanted, None, delivered, rows["heat"]["source"], "common practice")
        )
    note = "common practice; a large open kitchen makes it too much"
    found.append(FlowNeed("volume", "by kitchen volume", volume, None, delivered, rows["volume"]["source"], note))
    return tuple(found)


def _heat(cooktop: Cooktop) -> float:
    return cooktop.heat_btu_h or sum(burner.heat_btu_h for burner in cooktop.burners)


def _capture(cooktop: Cooktop, hood: Hood, delivered: float) -> tuple[CaptureGuide, ...]:
    rows = table("air_needs")
    front, side = rows["capture"], rows["overhang"]
    reach = hood.depth_in - cooktop.back_in  # how far the canopy reaches over the cooktop from its back edge
    share = rows["front_cover"]["share_of_depth"]
    front_row = max((b.from_back_in for b in cooktop.burners), default=cooktop.depth_in * share)
    over = min(
        (cooktop.centre_in - cooktop.width_in / 2) - (hood.centre_in - hood.width_in / 2),
        (hood.centre_in + hood.width_in / 2) - (cooktop.centre_in + cooktop.width_in / 2),
    )
    return (
        CaptureGuide(
            "front-flow", "flow for the front burners", front["front_burner_cfm"], delivered, "cfm", front["source"],
            "needed for three quarters of the front burners' smoke, and not enough by itself",
        ),
        CaptureGuide(
            "front-cover", "canopy over the middle of the front burners", front_row, reach, "in",
            rows["front_cover"]["source"], "how far the canopy reaches over the burners in use matters as much as the flow",
        ),
        CaptureGuide(
            "side-cover", "canopy past the cooktop's sides", side["side_in"], over, "in", side["source"],
            "the lesser of the two sides",
        ),
    )  # fmt: skip
