"""What the search is measured by, in one run: ``python -m tests.bench``, from the project's own folder.

Every comparison runs on the same instance and stops the run if the answers differ. Times are wall-clock, the fastest
of a few; other work on the machine makes them longer, so the load is printed too. Not a test: nothing here passes or
fails by its time. `ROUTEVIZ_BENCH=quick` leaves out what takes minutes.
"""

from __future__ import annotations

import os
import platform
import sys
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

import numpy as np
from bench import houses, open_grids
from bench.apart import Measured, apart, fastest

QUICK = os.environ.get("ROUTEVIZ_BENCH") == "quick"
WALLS = ("joist_dead_centre", "juniper_straight_up", "as_built_flex_in_attic", "cathedral_roof", "out_the_back")


def say(text: str) -> None:
    """Print a line at once."""
    print(text, flush=True)


def same(first: np.ndarray, second: np.ndarray) -> str:
    """Tell that two answers are identical; stop the run if they are not."""
    there = np.isfinite(first)
    if not np.array_equal(there, np.isfinite(second)) or not np.array_equal(first[there], second[there]):
        raise SystemExit("The answers differ.")
    return f"{int(there.sum()):,} of {there.size:,} cells have a way, all answers identical"


def yardstick() -> str:
    """Tell how fast this machine is just now: other work makes everything here slower by as much."""
    block = np.ones(25_000_000)
    made = fastest(5, np.copyto, np.empty_like(block), block)
    return f"memory copied at {2 * block.nbytes / made.seconds / 1e9:.0f} GB/s"


def against(name: str, shape: open_grids.Shape, theirs: Callable[..., np.ndarray], target: str) -> None:
    """Print the whole map of one grid against another library's."""
    least = 4
    ours = apart(3, open_grids.by_field, shape, least)
    other = apart(1, theirs, shape, least)
    # a way that starts inside a solid is nobody's answer
    inside = ~np.isfinite(ours.answer)
    other.answer[inside] = np.inf
    say(
        f"\n{name}: grid of {' x '.join(map(str, shape))} cells, runs of at least {least}; {same(ours.answer, other.answer)}"
    )
    _two("layered field", ours, name, other)
    say(
        f"  {other.seconds / ours.seconds:.0f} times faster, 1/{other.megabytes / ours.megabytes:.1f} of the memory {target}"
    )


def _two(first: str, ours: Measured, second: str, other: Measured) -> None:
    for name, made in ((first, ours), (second, other)):
        say(f"  {name:16} {made.seconds:8.3f} s   peak of the process {made.megabytes:6.0f} MB")


def scaling() -> None:
    """Print how the map's time grows with the grid."""
    say("\nGrowth of the map, runs of at least 4 (wanted: near linear)")
    for shape in ((60, 50, 34), (120, 100, 60), (200, 160, 64), *(() if QUICK else ((400, 250, 80),))):
        points = int(np.prod(shape))
        made = apart(2, open_grids.by_field, shape, 4)
        say(f"  {points / 1e6:5.2f} million cells {made.seconds:8.3f} s  {made.seconds / points * 1e9:6.0f} ns a cell  "
            f"{made.megabytes:6.0f} MB")  # fmt: skip


def framed() -> None:
    """Print the fields of the framed house."""
    places, asked = 342, (5, 60, 118, 201, 296)
    say("\nFramed two-storey house, 342 places of the hood in one exact field")
    seconds = {}
    for elbows, bodies, target in ((3, False, "0.25 s"), (3, True, "0.5 s"), (4, False, "1.5 s"), (4, True, "3 s")):
        made = apart(2 if elbows > 3 else 4, houses.house_costs, elbows, bodies, places)
        seconds[elbows, bodies] = made.seconds
        alone = houses.place_by_place(elbows, bodies, places, asked)
        if not np.array_equal(made.answer[:, list(asked)], alone):
            raise SystemExit("The field and one place at a time differ.")
        reached = int((made.answer >= 0).any(axis=0).sum())
        say(f"  to {elbows} elbows, {'with elbow bodies' if bodies else 'thin elbows':17} {made.seconds:6.3f} s "
            f"{made.megabytes:6.0f} MB, {reached} places have a way, {len(asked)} asked alone agree (wanted: at most {target})")  # fmt: skip
    say(
        f"  elbow bodies take {seconds[3, True] / seconds[3, False]:.1f} and {seconds[4, True] / seconds[4, False]:.1f} times as long"
    )
    layer, copy, events = houses.layer_and_copy(3, 5, places)
    say(f"  one layer of six states on {events:,} elbow places {layer * 1e3:.0f} ms, copying the arrays it reads and writes "
        f"{copy * 1e3:.1f} ms: {layer / copy:.1f} times (wanted: at most 10)")  # fmt: skip


def walls() -> None:
    """Print the maps of whole walls, queries and centring."""
    say("\nWhole walls of the shipped scenes, at least 150 places by 13 heights")
    for name in WALLS:
        made, mapped = apart(1, houses.wall_and_queries, name, 151, 13, 7).answer
        say(f"  {name:24} {mapped.places} x {mapped.heights}: {made.seconds:6.3f} s {made.megabytes:5.0f} MB; "
            f"{mapped.query_seconds * 1e3:5.2f} ms a query over {mapped.asked} places, {mapped.ways} with a way")  # fmt: skip
    say("  (wanted: at most 1 s for the map, 5 ms a query, 600 MB)")
    for name in ("juniper_straight_up", "out_the_back"):
        seconds, elbows = houses.centring(name, 5)
        say(f"  centring the route of {name} ({elbows} elbows): {seconds * 1e3:.0f} ms (wanted: at most 50)")


def air() -> None:
    """Print what the flow of one way costs."""
    quick, full, ways = houses.flows("juniper_straight_up")
    say(f"\nThe air of {ways} ways along one wall: {quick * 1e3:.2f} ms each as lines (wanted: at most 1), "
        f"{full * 1e3:.2f} ms solved in full at every speed (wanted: at most 5)")  # fmt: skip


def main() -> None:
    """Print everything."""
    say(
        f"Python {platform.python_version()}, numpy {np.__version__}, {os.cpu_count()} cores, load {os.getloadavg()[0]:.1f}, {yardstick()}"
    )
    against("scipy", (120, 100, 60), open_grids.by_scipy, "(wanted: 25 times and 1/6)")
    against("networkx", (24, 20, 16) if QUICK else (40, 30, 24), open_grids.by_networkx,
            "(too small to judge by)" if QUICK else "(wanted: 300 times)")  # fmt: skip
    scaling()
    framed()
    walls()
    air()
    say(f"\nAt the end: load {os.getloadavg()[0]:.1f}, {yardstick()}")


if __name__ == "__main__":
    main()
