"""Every sheet of several plans keeps the rules of the house: inside, readable, nothing over another, true to scale."""

from __future__ import annotations

import io
import itertools
import math
import re
from dataclasses import replace
from pathlib import Path as File

import handmade
import pytest
import samples
from pypdf import PdfReader

from routeviz.drawings import PAPERS, faults, packet, sheets, svgs
from routeviz.drawings.primitives import Disc, Page, Path, Text
from routeviz.framing import frame
from routeviz.model.finding import Verdict
from routeviz.model.path import Bend, Blocker, Centreline, Outcome, Paths, SearchFacts, WhyNot
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import OutdoorKind, Scene, SectionShape, SectionSize
from routeviz.model.solids import Frame, Vec3
from routeviz.routing import realise
from routeviz.takeoff import count

KEEP_AWAY = {kind.value: 36.0 for kind in OutdoorKind}


def planned(scene: Scene, points: list[Vec3], face: str, section: SectionSize = samples.ROUND_8,
            wide: tuple[int | None, ...] | None = None, framed: Frame | None = None) -> Plan:  # fmt: skip
    """Give a plan of a centre line through the really framed sample kitchen."""
    framed = framed or frame(scene, KEEP_AWAY)
    bends = tuple(Bend(b, 90.0, 8.0, section.width_in) for b in points[1:-1])
    length = sum(math.dist(a, b) for a, b in itertools.pairwise(points))
    line = Centreline(
        tuple(points), bends, section, wide or (None,) * (len(points) - 1), face, float(len(bends)), length, 0.0, ()
    )
    route = realise(line, scene, framed)
    said = handmade.findings()
    option = Option(route, said, handmade.air(), count(route, scene, framed, said))
    paths = Paths(Outcome.PROVEN, line, (), (), (), SearchFacts((1, 1, 1), 1, 3, 0.0))
    answer = "Up and out: one elbow, 3 ft, 371 of 400 cfm."
    return Plan(scene, framed, paths, (option,), (), Verdict.WORKS, answer, "Proven.", scene.assumptions, ())


def blocked_plan() -> Plan:
    """Give a plan without a route: joist 4 stands over the hood."""
    scene = samples.scene()
    why = WhyNot(
        "straight up", (Blocker("joist-4", "joist 4", 1.5, (62.0, -8.5, 100.0)),), -3.25, 4.0, -8.0, verified=True
    )
    paths = Paths(Outcome.NONE_EXISTS, None, (), (), (why,), SearchFacts((1, 1, 1), 1, 3, 0.0))
    return Plan(scene, frame(scene, KEEP_AWAY), paths, (), handmade.findings(), Verdict.BLOCKED,
                "Blocked: joist 4 is 1 1/2 in into the duct. Shift 3 1/4 in left and it goes straight up.", "", (), ())  # fmt: skip


def roof_face(framed: Frame, x: float, y: float) -> tuple[str, float]:
    face = next(f for f in framed.faces if f.kind.value == "roof")
    return face.id, face.plane[0] + face.plane[1] * x + face.plane[2] * y


def plans() -> dict[str, Plan]:
    scene = samples.scene()
    framed = frame(scene, KEEP_AWAY)
    roof, top = roof_face(framed, 70.0, -8.5)
    collar: Vec3 = (70.0, -8.5, 78.5)
    flat = SectionSize(SectionShape.RECT, 10.0, 3.25)
    metric = replace(scene, metric=True)
    return {
        "straight up": planned(scene, [collar, (70.0, -8.5, top)], roof),
        "with its stub": planned(scene, [collar, (70.0, -8.5, top + 8.0)], roof),
        "out behind": planned(scene, [collar, (70.0, -8.5, 89.0), (70.0, 7.1875, 89.0)], "face-hood"),
        "through the attic": planned(scene, [collar, (70.0, -8.5, 112.0), (151.1875, -8.5, 112.0)], "gable-right"),
        "far out, then right": planned(
            scene, [collar, (70.0, -8.5, 112.0), (70.0, -60.0, 112.0), (151.1875, -60.0, 112.0)], "gable-right"),
        "flat duct": planned(scene, [collar, (70.0, -8.5, 110.0), (151.1875, -8.5, 110.0)], "gable-right", flat, (0, 1)),
        "metric": planned(metric, [collar, (70.0, -8.5, top)], roof),
        "blocked": blocked_plan(),
    }  # fmt: skip


PLANS = plans()


@pytest.mark.parametrize("paper", list(PAPERS))
@pytest.mark.parametrize("name", list(PLANS))
def test_every_sheet_may_be_printed(name: str, paper: str) -> None:
    pages = sheets(PLANS[name], paper=paper, template=True)
    assert [f for page in pages for f in faults(page)] == []
    assert len(pages) >= 2
    assert all((p.width, p.height) == (PAPERS[paper].width, PAPERS[paper].height) for p in pages)


def test_all_kinds_of_sheets_are_there() -> None:
    names = [str(p.name) for p in sheets(PLANS["far out, then right"])]
    assert names[0] == "hood wall"
    for wanted in ("joist plan", "section along the duct", "outside", "marking", "parts and cuts", "holes", "order of work",
                   "measure first", "findings and sources", "air"):  # fmt: skip
        assert wanted in names
    # the duct runs out from the wall and then along it: a section in each of the two planes
    assert names.count("section along the duct") == 2


def words_of(page: Page) -> str:
    return " ".join(t.text for t in page.items if isinstance(t, Text))


def test_a_blocked_plan_says_what_is_in_the_way() -> None:
    pages = sheets(PLANS["blocked"])
    front = words_of(pages[0])
    assert "Blocked" in front
    assert "joist 4, 1 1/2 in into the duct" in front
    assert "Shift 3 1/4 in left" in front
    bars = [p for p in pages[0].items if isinstance(p, Path) and p.ink == "#b52d15"]
    assert bars  # the joist is barred in elevation and plan
    assert all(str(p.name) != "order of work" for p in pages)


def test_steps_name_sheets_that_exist() -> None:
    pages = sheets(PLANS["straight up"])
    order = next(p for p in pages if p.name == "order of work")
    numbers = [t.text for t in order.items if isinstance(t, Text) and t.at[0] > order.width - 30 and t.text.isdigit()]
    assert numbers
    assert all(1 <= int(n) <= len(pages) for n in numbers)
    marking = [n for n, p in enumerate(pages, start=1) if p.name == "marking"]
    assert str(marking[0]) in numbers


def tick_places(page: Page) -> list[float]:
    """Places of the long ticks of the title strip [mm]."""
    return sorted(
        p.points[0][0] for p in page.items
        if isinstance(p, Path) and len(p.points) == 2 and p.points[0][1] == 22.0 and abs(p.points[1][1] - 19.4) < 1e-9
    )  # fmt: skip


def test_the_title_strip_is_a_true_tape() -> None:
    inches = tick_places(sheets(PLANS["straight up"])[0])
    assert len(inches) == 11  # 255.4 mm hold ten inches and a bit
    assert all(abs(b - a - 25.4) < 1e-9 for a, b in itertools.pairwise(inches))
    centimetres = tick_places(sheets(PLANS["metric"], paper="a4")[0])
    assert all(abs(b - a - 10.0) < 1e-9 for a, b in itertools.pairwise(centimetres))


def test_the_printed_scale_measures_true() -> None:
    """Read the lines back out of the PDF: one inch of the strip is 72 points, 16 in between joists at 1 : 24 is 48."""
    out = io.BytesIO()
    from routeviz.drawings import pdf

    page = sheets(PLANS["straight up"])[0]
    pdf.write([page], out, title="scale")
    content = PdfReader(io.BytesIO(out.getvalue())).pages[0].get_contents()
    assert content is not None
    text = content.get_data().decode("latin-1")
    scales = {
        float(a) for a, b in re.findall(r"([\d.]+) 0 0 ([\d.]+) 0 0 cm", text) if a == b and a not in ("1", "1.0")
    }
    (to_points,) = scales
    assert to_points == pytest.approx(72 / 25.4, abs=1e-5)
    lines = re.findall(r"([\d.]+) ([\d.]+) m ([\d.]+) ([\d.]+) l S", text)
    strip = sorted(float(a) for a, b, c, d in lines if b == "22" and abs(float(d) - 19.4) < 1e-6 and a == c)
    assert [round((b - a) * to_points, 2) for a, b in itertools.pairwise(strip)] == [72.0] * (len(strip) - 1)
    mine = [p for p in page.items if isinstance(p, Path) and re.fullmatch(r"joist-\d", p.id)]
    left = [min(x for x, _ in p.points) for p in mine if p.points[0][0] < 195.0]  # the picture is further right
    joists = sorted({round(x, 6) for x in left})
    assert len(joists) == 9
    assert all(abs((b - a) * to_points - 48.0) < 0.01 for a, b in itertools.pairwise(joists))


def test_duct_and_tape_share_one_axis() -> None:
    """The hole in the plan, the pointer on the tape and the riser in the elevation stand over one another."""
    page = sheets(PLANS["straight up"])[0]
    duct = [p for p in page.items if isinstance(p, Path) and p.id == "straight-1"]
    middles = {round((min(x for x, _ in p.points) + max(x for x, _ in p.points)) / 2, 3) for p in duct if p.closed}
    pointer = next(t for t in page.items if isinstance(t, Text) and t.text == "70" and t.ink == "#ffffff")
    on_axis = {m for m in middles if abs(m - pointer.at[0]) < 0.01}
    assert on_axis  # elevation and plan; the picture stands elsewhere
    widths = [
        max(x for x, _ in p.points) - min(x for x, _ in p.points)
        for p in duct
        if abs(p.points[0][0] - pointer.at[0]) < 10
    ]
    assert any(abs(w - 8 * 25.4 / 24) < 0.01 for w in widths)


def test_marks_in_the_drawing_are_the_marks_counted() -> None:
    plan = PLANS["straight up"]
    page = next(p for p in sheets(plan) if p.name == "marking")
    assert plan.best is not None
    text = words_of(page)
    for mark in plan.best.takeoff.marks:
        assert mark.label in text
    filled = [d for d in page.items if isinstance(d, Disc) and d.fill == "#24272b"]
    wood = sum(1 for m in plan.best.takeoff.marks if m.wood)
    assert len(filled) == 2 * wood  # once on the wall, once in the table
    assert "5/32 in" in text  # pilots are written in 32nds


def template_of(plan: Plan) -> list[Page]:
    return [p for p in sheets(plan, template=True) if p.name == "template"]


def middle(path: Path) -> tuple[float, float]:
    xs, ys = [p[0] for p in path.points], [p[1] for p in path.points]
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def test_the_template_is_full_size() -> None:
    """Marks of one page stand 25.4 mm apart for every inch, and the square to check the print by is an inch."""
    plan = PLANS["straight up"]
    assert plan.best is not None
    marks = [m for m in plan.best.takeoff.marks if m.row != "bracket"]
    apart = {round(a.left_in - b.left_in, 6) for a in marks for b in marks}
    shown = 0
    for page in template_of(plan):
        places = [d.centre for d in page.items if isinstance(d, Disc) and d.fill == "#24272b"]
        places += [middle(p) for p in page.items if isinstance(p, Path) and len(p.points) == 4 and p.closed and
                   3.9 < p.points[2][0] - p.points[0][0] < 12.0]  # fmt: skip
        assert all(round((a[0] - b[0]) / 25.4, 6) in apart for a in places for b in places)
        shown += len(places)
        square = next(p for p in page.items if isinstance(p, Path) and p.closed and len(p.points) == 4 and
                      abs(p.points[2][0] - p.points[0][0] - 25.4) < 1e-9)  # fmt: skip
        assert square.points[2][1] - square.points[0][1] == pytest.approx(25.4)
    assert shown >= len(marks)


def test_the_template_is_a_sheet_of_the_packet() -> None:
    """It carries job, number and the way up, and says with the marking sheet's signs what holds in wood."""
    plan = PLANS["straight up"]
    pages = sheets(plan, template=True)
    for number, page in enumerate(pages, start=1):
        if page.name != "template":
            continue
        words = words_of(page)
        assert plan.scene.name in words
        assert f"{number} of {len(pages)}" in words
        assert "this side up" in words


def test_one_count_of_sheets() -> None:
    """The figure at a sheet's head is its number in the packet, on drawings and lists alike, and there is no other."""
    for plan in (PLANS["far out, then right"], PLANS["blocked"]):
        pages = sheets(plan, template=True)
        for number, page in enumerate(pages, start=1):
            large = [t.text for t in page.items if isinstance(t, Text) and t.size == 9.0]
            assert large == [str(number)]


def test_metric_plans_speak_millimetres() -> None:
    text = " ".join(words_of(p) for p in sheets(PLANS["metric"], paper="A4"))
    assert "All sizes in millimetres." in text
    assert "1 : 25" in text
    assert not re.search(
        r"\d+ \d+/\d+ in\b", text.replace("2 1/2 in wide", "").replace("#8 x 1/2 in", "").replace("x 1 1/2 in", "")
    )


def test_same_bytes_each_run(tmp_path: File) -> None:
    first, second = tmp_path / "a.pdf", tmp_path / "b.pdf"
    packet(PLANS["out behind"], first)
    packet(PLANS["out behind"], second)
    assert first.read_bytes() == second.read_bytes()
    (tmp_path / "one").mkdir()
    (tmp_path / "two").mkdir()
    one, two = svgs(PLANS["out behind"], tmp_path / "one"), svgs(PLANS["out behind"], tmp_path / "two")
    assert [f.name for f in one] == [f.name for f in two]
    assert [f.read_bytes() for f in one] == [f.read_bytes() for f in two]


def test_texts_can_be_searched(tmp_path: File) -> None:
    file = packet(PLANS["straight up"], tmp_path / "p.pdf")
    reader = PdfReader(file)
    text = "\n".join(p.extract_text() for p in reader.pages)
    for wanted in (
        "Juniper Lane kitchen",
        "Order of work",
        "roof cap with backdraft damper",
        "least possible",
        "Two people",
    ):
        assert wanted in text
    assert reader.metadata is not None
    assert reader.metadata.title == "Juniper Lane kitchen: install packet"


def test_nothing_half_written(tmp_path: File) -> None:
    def stop(done: int, _all: int, _name: str) -> None:
        if done == 3:
            raise KeyboardInterrupt

    target = tmp_path / "p.pdf"
    target.write_bytes(b"the packet of yesterday")
    with pytest.raises(KeyboardInterrupt):
        packet(PLANS["straight up"], target, progress=stop)
    assert target.read_bytes() == b"the packet of yesterday"
    assert [f.name for f in tmp_path.iterdir()] == ["p.pdf"]


def test_progress_counts_every_sheet(tmp_path: File) -> None:
    seen: list[tuple[int, int]] = []
    packet(PLANS["straight up"], tmp_path / "p.pdf", progress=lambda done, count, _name: seen.append((done, count)))
    assert [d for d, _ in seen] == list(range(1, len(seen) + 1))
    assert {c for _, c in seen} == {len(seen)}


def test_an_unknown_paper_is_named(tmp_path: File) -> None:
    with pytest.raises(ValueError, match="letter, A4, tabloid, A3"):
        packet(PLANS["straight up"], tmp_path / "p.pdf", paper="foolscap")
    assert not list(tmp_path.iterdir())


def test_a_picture_gets_its_own_sheet(tmp_path: File) -> None:
    from PIL import Image

    picture = tmp_path / "still.png"
    Image.new("RGB", (80, 50), "#123456").save(picture)
    plain = len(sheets(PLANS["straight up"]))
    pages = sheets(PLANS["straight up"], pictures=(("The kitchen", picture),))
    assert len(pages) == plain + 1
    file = packet(PLANS["straight up"], tmp_path / "p.pdf", pictures=(("The kitchen", picture),))
    shown = [page for page in PdfReader(file).pages if page.images]
    assert len(shown) == 1
    assert "The kitchen" in shown[0].extract_text()
