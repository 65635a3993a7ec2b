"""How high the hood may hang: every limit on the mounting height, and the window that all of them leave."""

from __future__ import annotations

from dataclasses import dataclass, replace

from routeviz.model.overhead import cover_room_in
from routeviz.model.scene import Scene
from routeviz.rules.profiles import Limit, Profile, maker_limit
from routeviz.rules.room import hung_over, room_under_ceiling

__all__ = ["Bound", "Window", "mounting_window"]


@dataclass(frozen=True, slots=True)
class Bound:
    """One limit on the mounting height, measured from the cooking surface to the hood's underside [in]."""

    value_in: float
    lower: bool
    must: bool
    by: str  # in plain words: "the chimney cover pulled in all the way"
    source: str
    source_text: str


@dataclass(frozen=True, slots=True)
class Window:
    """The heights at which the hood may hang [in above the cooking surface].

    `low_in` and `high_in` come from all bounds; when these leave nothing, from the must-bounds alone, and `clash`
    says which two bounds exclude each other. `suggested_in` is the height nearest to the usual one inside the window.
    """

    low_in: float
    high_in: float
    suggested_in: float
    low_by: str
    high_by: str
    bounds: tuple[Bound, ...]
    clash: str = ""

    @property
    def empty(self) -> bool:
        """Whether no height suits every bound."""
        return bool(self.clash)

    @property
    def spare_in(self) -> float:
        """Give the room between the highest lower bound and the lowest upper bound; negative when they cross."""
        return min(b.value_in for b in self.bounds if not b.lower) - max(b.value_in for b in self.bounds if b.lower)


def _from(limit: Limit, *, lower: bool, by: str) -> Bound:
    return Bound(limit.number, lower, limit.must, by, limit.source, limit.source_text)


def _plain(value: float, *, lower: bool, must: bool, by: str) -> Bound:
    return Bound(value, lower, must, by, "arithmetic", "arithmetic of the given sizes")


def _limit(scene: Scene, profile: Profile, key: str, made: float | None) -> Limit | None:
    return maker_limit(scene, key, made) if made is not None else profile.get(key)


def bounds(scene: Scene, profile: Profile) -> tuple[Bound, ...]:
    """Give every bound on the mounting height, lower ones first."""
    maker, hood, kind = scene.rules.maker, scene.hood, scene.cooktop.kind.value
    found: list[Bound] = []
    least = _limit(scene, profile, f"canopy_over_{kind}", maker.hood_min_in)
    if least is not None:
        found.append(_from(least, lower=True, by=f"canopy over {'a gas' if kind == 'gas' else f'an {kind}'} cooktop"))
    most = _limit(scene, profile, "canopy_max", maker.hood_max_in)
    if most is not None:
        found.append(_from(most, lower=False, by="canopy still catches the smoke"))
    found.append(_plain(room_under_ceiling(scene), lower=False, must=True, by="hood body under the ceiling"))
    laid = replace(scene, hood=replace(hood, mount_in=0.0))
    both = cover_room_in(laid)
    if hood.cover is not None and both is not None:
        low_side, high_side = both
        found.append(
            _plain(high_side - hood.cover.max_in, lower=True, must=False, by="chimney cover pulled out all the way")
        )
        found.append(
            _plain(low_side - hood.cover.min_in, lower=False, must=False, by="chimney cover pushed in all the way")
        )
    found += [
        _plain(most_in, lower=False, must=True, by=f"hood body under {words}") for words, most_in in hung_over(scene)
    ]
    return tuple(sorted(found, key=lambda b: not b.lower))


def mounting_window(scene: Scene, profile: Profile) -> Window:
    """Give the lowest and highest mounting height that all limits together allow, and which limit sets each.

    Parameters
    ----------
    scene : Scene
        Its hood's own mounting height is not read.
    profile : Profile
        The place's limits; the maker's in the scene override them.

    Returns
    -------
    Window
        Heights [in] from the cooking surface to the hood's underside. Never empty-handed: when the bounds cross,
        `clash` says which, and the suggestion satisfies as many musts as can be.
    """
    every = bounds(scene, profile)
    wish = profile.get("canopy_wish")
    usual = wish.number if wish is not None else 30.0
    low, high = _tightest(every)
    clash = ""
    if low.value_in > high.value_in + 1e-9:
        clash = f"{low.by} and {high.by}"
        musts = tuple(b for b in every if b.must)
        low, high = _tightest(musts)
    chosen = high.value_in if low.value_in > high.value_in else min(max(usual, low.value_in), high.value_in)
    return Window(low.value_in, high.value_in, chosen, low.by, high.by, every, clash)


def _tightest(every: tuple[Bound, ...]) -> tuple[Bound, Bound]:
    floor = _plain(0.0, lower=True, must=True, by="cooking surface itself")
    low = max((floor, *(b for b in every if b.lower)), key=lambda b: b.value_in)
    high = min((b for b in every if not b.lower), key=lambda b: b.value_in)
    return low, high
