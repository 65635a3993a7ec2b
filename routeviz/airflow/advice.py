"""What another duct would give: the same route with one thing changed, solved again."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from routeviz.airflow.elements import Element, Setting, insert_transition, round_section
from routeviz.airflow.sections import area_in2, friction_equivalent_in, section_text, velocity_fpm
from routeviz.catalog import table
from routeviz.model.airflow import SizeAdvice
from routeviz.model.route import PartKind
from routeviz.model.scene import SectionShape, SectionSize

__all__ = ["Variant", "advice", "resized", "variants"]

_NEXT_SIZES = 2
_SMOOTH_RATIO = 1.5


@dataclass(frozen=True, slots=True)
class Variant:
    """The same route with one thing changed. `section` is its main section."""

    label: str
    elements: tuple[Element, ...]
    section: SectionSize
    cap_c: float | None


def resized(elements: tuple[Element, ...], section: SectionSize, setting: Setting) -> tuple[Element, ...]:
    """Give the same route in one section all the way, with a transition at the hood's outlet where they differ.

    Elbows keep their radius over the side in the bend; a route that was narrowed on its way no longer is.
    """
    outlet = setting.outlet
    kept = [e for e in elements if e.kind is not PartKind.COLLAR]
    if kept and kept[0].kind is PartKind.TRANSITION:
        kept = kept[1:]
    changed = tuple(_in_section(e, section) for e in kept)
    return insert_transition(changed, outlet, setting.transition_in)


def _in_section(element: Element, section: SectionSize) -> Element:
    kind = PartKind.STRAIGHT if element.kind is PartKind.TRANSITION else element.kind
    new = replace(element, kind=kind, section=section, section_out=section)
    if element.angle_deg <= 0.0:
        return new
    flat = not element.section.is_round and element.plane_in == element.section.height_in
    return replace(new, plane_in=section.height_in if flat else section.width_in)


def _sizes(section: SectionSize, setting: Setting) -> Iterator[SectionSize]:
    rows = table("ducts")["sizes"]
    rounds = [mm / 25.4 for mm in rows["metric_round_mm"]] if setting.metric else rows["round_in"]
    stacks = [SectionSize(SectionShape.RECT, w, h) for w, h in rows["stack_in"]]
    if section.is_round:
        yield from (round_section(d) for d in [d for d in rounds if d > section.width_in + 0.05][:_NEXT_SIZES])
        if not setting.metric and math.isclose(section.width_in, 6.0):
            yield stacks[0]
    else:
        same = friction_equivalent_in(section)
        yield from (round_section(d) for d in [d for d in rounds if d > same - 0.05][:_NEXT_SIZES])
        if section.shape is SectionShape.RECT and not setting.metric:
            yield from [s for s in stacks if area_in2(s) > area_in2(section) + 0.01][:1]
    yield from (s for s in setting.sections if s != section)


def variants(elements: tuple[Element, ...], section: SectionSize, setting: Setting) -> tuple[Variant, ...]:
    """List the changes worth showing, each once."""
    cap_c = setting.cap_c
    found: dict[str, Variant] = {}

    def offer(label: str, changed: tuple[Element, ...], new: SectionSize = section, c: float | None = cap_c) -> None:
        if changed != elements or c != cap_c:
            found.setdefault(label, Variant(label, changed, new, c))

    if any(area_in2(s) < area_in2(section) - 0.01 for e in elements for s in (e.section, e.section_out)):
        label = f"{section_text(section, metric=setting.metric)} all the way"
        offer(label, resized(elements, section, setting))
    for size in _sizes(section, setting):
        offer(section_text(size, metric=setting.metric), resized(elements, size, setting), size)
    bent = [e for e in elements if e.kind is PartKind.ELBOW and e.angle_deg > 0.0]
    if any(e.construction != "smooth" or e.ratio < _SMOOTH_RATIO for e in bent):
        offer("smooth elbows of radius 1.5 D", _each(elements, _smoothed))
    if any(e.kind is PartKind.FLEX for e in elements):
        offer("rigid duct in place of flexible", _each(elements, _stiffened))
    caps = [e for e in elements if e.kind is PartKind.CAP]
    if caps and cap_c is None:
        kind = "roof" if caps[0].roof else "wall"
        best = table("fittings")["cap"][kind]["c_low"]
        offer(f"the freest {kind} cap to be had", elements, c=best)
    return tuple(found.values())


def _each(elements: tuple[Element, ...], change: Callable[[Element], Element]) -> tuple[Element, ...]:
    return tuple(change(e) for e in elements)


def _smoothed(element: Element) -> Element:
    if element.kind is not PartKind.ELBOW or element.angle_deg <= 0.0:
        return element
    return replace(element, construction="smooth", ratio=max(element.ratio, _SMOOTH_RATIO))


def _stiffened(element: Element) -> Element:
    if element.kind is not PartKind.FLEX:
        return element
    kind = PartKind.ELBOW if element.angle_deg > 0.0 else PartKind.STRAIGHT
    return replace(element, kind=kind, material="galvanized steel", construction="4-piece")


def advice(
    elements: tuple[Element, ...], section: SectionSize, setting: Setting, now_cfm: float,
    flow_of: Callable[[Variant], float],
) -> tuple[SizeAdvice, ...]:  # fmt: skip
    """Solve every variant and give its flow and gain, the largest gain first.

    Parameters
    ----------
    now_cfm : float
        What the route delivers as it is [cfm].
    flow_of : callable
        Solves a variant [cfm].
    """
    found = []
    for variant in variants(elements, section, setting):
        flow = flow_of(variant)
        found.append(SizeAdvice(variant.label, flow, flow - now_cfm, velocity_fpm(flow, variant.section)))
    return tuple(sorted(found, key=lambda a: -a.gain_cfm))
