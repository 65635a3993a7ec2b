"""A duct as an integer programme: an oracle that shares neither grid, masks, tables nor scans with the search.

Unknown are the direction of each run, the corners (any whole coordinate, not grid points) and, for flat duct, how the
wide side lies. Everything that the duct must keep clear of is a choice of one of six sides. Only boxes, and faces that
keep square corners clear.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from ortools.sat.python import cp_model

from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Ticks

DIRECTIONS = [(axis, sign) for axis in range(3) for sign in (1, -1)]
FARTHEST = 1 << 20


class _Duct:
    """The programme for routes with exactly so many elbows."""

    def __init__(self, space: FreeSpace, collar: Ticks, elbows: int) -> None:
        assert not space.boxing
        self.space, self.count, self.model = space, elbows, cp_model.CpModel()
        self.flat = space.section.turns
        model = self.model
        self.way = [{d: model.new_bool_var(f"way {i} {d}") for d in DIRECTIONS} for i in range(elbows + 1)]
        self.axis = [[way[t, 1] + way[t, -1] for t in range(3)] for way in self.way]
        self.corner: list[list[cp_model.IntVar | int]] = [list(collar)]
        for i in range(elbows):
            self.corner.append([model.new_int_var(space.lo[t], space.hi[t], f"p{i} {t}") for t in range(3)])
        self.corner.append([model.new_int_var(-FARTHEST, FARTHEST, f"end {t}") for t in range(3)])
        self.length = [model.new_int_var(1, FARTHEST, f"length {i}") for i in range(elbows + 1)]
        self.wide = [[model.new_bool_var(f"wide {i} {t}") for t in range(3)] for i in range(elbows + 1)]
        self.hard = [model.new_bool_var(f"hard {i}") for i in range(elbows)]
        self._directions()
        self._sides()
        self._lengths()
        self._leave()
        self._keep_clear()
        model.minimize(sum(self.length))

    def _directions(self) -> None:
        start, model = self.space.start, self.model
        for way in self.way:
            model.add_exactly_one(way.values())
        model.add(self.way[0][start.axis, start.sign] == 1)
        for before, after in pairwise(self.axis):
            for t in range(3):
                model.add(before[t] + after[t] <= 1)
        for way, a, b, length in zip(self.way, self.corner, self.corner[1:], self.length, strict=False):
            for (axis, sign), chosen in way.items():
                for t in range(3):
                    moved = sign * length if t == axis else 0
                    model.add(b[t] - a[t] == moved).only_enforce_if(chosen)

    def _sides(self) -> None:
        """A bend in the plane of the wide side turns it into the direction that the duct came from."""
        model, start = self.model, self.space.start
        if not self.flat:
            for wide in self.wide:
                model.add(sum(wide) == 0)
            for hard in self.hard:
                model.add(hard == 0)
            return
        for wide, axis in zip(self.wide, self.axis, strict=True):
            model.add_exactly_one(wide)
            for t in range(3):
                model.add(wide[t] + axis[t] <= 1)
        model.add(sum(self.wide[0][t] for t in start.wide_axes) == 1)
        for i, hard in enumerate(self.hard):
            for t in range(3):
                for sign in (1, -1):
                    model.add(self.wide[i][t] == hard).only_enforce_if(self.way[i + 1][t, sign])
                model.add(self.wide[i + 1][t] == self.axis[i][t]).only_enforce_if(hard)
                model.add(self.wide[i + 1][t] == self.wide[i][t]).only_enforce_if(hard.Not())

    def _lengths(self) -> None:
        limits, section = self.space.limits, self.space.section
        off = [section.radius_high + (section.radius_wide - section.radius_high) * hard for hard in self.hard]
        if not off:
            self.model.add(self.length[0] >= max(limits.first, limits.last, 1))
            return
        self.model.add(self.length[0] >= limits.first + off[0])
        self.model.add(self.length[-1] >= limits.last + off[-1])
        for length, (before, after) in zip(self.length[1:], pairwise(off), strict=False):
            self.model.add(length >= before + after + limits.between)

    def _leave(self) -> None:
        model, chosen = self.model, []
        for face in self.space.exits:
            here = model.new_bool_var(face.face)
            chosen.append(here)
            model.add_implication(here, self.way[-1][face.axis, face.sign])
            model.add(self.corner[-1][face.axis] == int(face.rise[0])).only_enforce_if(here)
            assert face.flat
            across = [self.corner[-1][t] for t in range(3) if t != face.axis]
            for value, low, high in zip(across, face.lo, face.hi, strict=True):
                model.add(value >= low).only_enforce_if(here)
                model.add(value <= high).only_enforce_if(here)
            for keep in face.keep_clear:
                assert keep.reach == 0
                beside = [model.new_bool_var(f"beside {n}") for n in range(4)]
                for n, value in enumerate(across):
                    model.add(value <= keep.lo[n] - keep.flange).only_enforce_if(beside[2 * n])
                    model.add(value >= keep.hi[n] + keep.flange).only_enforce_if(beside[2 * n + 1])
                model.add_bool_or([*beside, here.Not()])
        model.add_exactly_one(chosen)

    def _keep_clear(self) -> None:
        for barrier in self.space.barriers:
            for i in range(self.count + 1):
                if barrier.kind is BarrierKind.OUTDOORS and i == self.count:
                    continue
                self._run_clear(i, barrier)
            for i in range(self.count):
                self._elbow_clear(i, barrier)

    def _run_clear(self, i: int, barrier: Barrier) -> None:
        section, sides = self.space.section, []
        for t, side in self._six():
            half = section.half_high * (1 - self.axis[i][t]) + (section.half_wide - section.half_high) * self.wide[i][t]
            chosen = self.model.new_bool_var("beside")
            for p in self.corner[i : i + 2]:
                if side < 0:
                    self.model.add(p[t] + half <= barrier.region.lo[t]).only_enforce_if(chosen)
                else:
                    self.model.add(p[t] - half >= barrier.region.hi[t]).only_enforce_if(chosen)
            sides.append(chosen)
        crossed = [self.way[i][t, sign] for t, sign in DIRECTIONS if not barrier.runs[t]]
        self.model.add_bool_or(sides + crossed)

    def _elbow_clear(self, i: int, barrier: Barrier) -> None:
        sides = []
        for t, side in self._six():
            chosen = self.model.new_bool_var("beside")
            reach = self._reach(i, t, -side)
            if side < 0:
                self.model.add(self.corner[i + 1][t] + reach <= barrier.region.lo[t]).only_enforce_if(chosen)
            else:
                self.model.add(self.corner[i + 1][t] - reach >= barrier.region.hi[t]).only_enforce_if(chosen)
            sides.append(chosen)
        self.model.add_bool_or(sides)

    def _reach(self, i: int, t: int, toward: int) -> cp_model.LinearExprT:
        """Give how far the body of elbow i reaches from its corner: along a leg, behind a leg, or across both."""
        key = i, t, toward
        if key not in self._reaches:
            section, model = self.space.section, self.model
            most = max(section.half_wide, section.radius_wide, section.half_high, section.radius_high)
            reach = model.new_int_var(0, most, f"reach {key}")
            legs = self.way[i][t, -toward], self.way[i + 1][t, toward]
            behind = self.way[i][t, toward], self.way[i + 1][t, -toward]
            for hard in (True, False):
                inside, across = section.half_high, section.half_wide
                radius, kind = section.radius_high, self.hard[i].Not()
                if hard:
                    inside, across, radius, kind = across, inside, section.radius_wide, self.hard[i]
                for leg in legs:
                    model.add(reach == max(radius, inside)).only_enforce_if([leg, kind])
                for back in behind:
                    model.add(reach == inside).only_enforce_if([back, kind])
                model.add(reach == across).only_enforce_if([kind, *(w.Not() for w in (*legs, *behind))])
            self._reaches[key] = reach
        return self._reaches[key]

    @property
    def _reaches(self) -> dict[tuple[int, int, int], cp_model.IntVar]:
        return self.__dict__.setdefault("reaches", {})

    @staticmethod
    def _six() -> Iterator[tuple[int, int]]:
        yield from DIRECTIONS


def least_length(space: FreeSpace, collar: Ticks, elbows: int, *, seconds: float = 120.0) -> int | None:
    """Give the least length of a route with exactly so many elbows, or None where there is provably none."""
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = seconds
    solver.parameters.num_workers = 1
    status = solver.solve(_Duct(space, collar, elbows).model)
    if status == cp_model.INFEASIBLE:
        return None
    assert status == cp_model.OPTIMAL, f"undecided: {solver.status_name(status)}"
    return round(solver.objective_value)
