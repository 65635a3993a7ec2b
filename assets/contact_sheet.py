"""One picture of everything that routeviz shows: ``python assets/contact_sheet.py`` writes ``assets/contact_sheet.jpg``.

It plans example homes, draws their stills, opens their pages, lessons and sheets in a browser with the network refused,
and lays all of it on one sheet. It needs OpenGL, Chromium and playwright, and says in one line which is missing.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from PIL import Image, ImageDraw

from routeviz import drawings, pipeline, studies
from routeviz.cli.lessonplans import lesson_fixes, lesson_plans
from routeviz.cli.scenes import load_scene
from routeviz.errors import MissingPartError
from routeviz.views import fonts, gl, lessons, page, stage, still
from routeviz.views.palette import INK, LINE_STRONG, PAPER, PLASTER
from routeviz.views.wallmap import WallMap, cell_of

HERE = Path(__file__).resolve().parent
TARGET = HERE / "contact_sheet.jpg"
COLUMNS, TILE, GAP, WORDS = 3, (640, 400), 18, 30
LARGEST_BYTES = 1_500_000
BROWSER_ARGS = ["--no-sandbox", "--disable-gpu", "--enable-unsafe-swiftshader"]
STILLS = (
    ("juniper_straight_up", "room", "Still: the whole room"),
    ("joist_dead_centre", "ceiling", "Still: a joist in the way"),
    ("side_wall_storey_above", "along", "Still: along the duct"),
    ("out_the_back", "outside", "Still: outside at the cap"),
)
DESK, HAND = (1440, 900), (390, 780)
Shot = tuple[str, Image.Image]


def stills(folder: Path) -> Iterator[Shot]:
    """Draw the stills."""
    for name, viewpoint, words in STILLS:
        made = stage.build(pipeline.plan(load_scene(HERE.parent / "scenes" / f"{name}.toml"), alternatives=1))
        file = still.render(made, folder / f"{name}.png", viewpoint, size=(1280, 800))
        yield words, Image.open(file).convert("RGB")


def write_pages(folder: Path) -> Iterator[tuple[str, Path, tuple[int, int], str, int]]:
    """Write pages, lessons and sheets; give words, file, window, light or dark, and how many steps to go on."""
    for name, words, scheme, window in (
        ("juniper_straight_up", "The page: the tape and the picture", "light", DESK),
        ("joist_dead_centre", "The page: blocked, with its least fix", "dark", DESK),
        ("out_the_back", "The page in the hand", "light", HAND),
    ):
        plan = pipeline.plan(load_scene(HERE.parent / "scenes" / f"{name}.toml"))
        places, heights = studies.places(plan.scene, step_in=2.0), studies.heights(plan.scene)
        rows = studies.wall_plans(plan.scene, places, heights)
        cells = tuple(tuple(cell_of(each) for each in row) for row in rows)
        file = page.write(
            plan, folder / f"{name}.html", fixes=studies.fixes(plan), wall_map=WallMap(places, heights, cells)
        )
        yield words, file, window, scheme, 0
    for name, words, step in (
        ("find-the-five-faults", "Lesson: find the five faults", 2),
        ("which-member-may-be-cut", "Lesson: which member may be cut", 1),
        ("where-the-cap-may-go", "Lesson: where the cap may go", 0),
    ):
        path = lessons.find(name)
        assert path is not None
        written, plans = lesson_plans(path)
        fixes = lesson_fixes(written, plans)
        bare = {key: stage.build(plan, bars=False) for key, plan in plans.items()}
        said = {key: lessons.facts_of(plan, fixes[key]) for key, plan in plans.items()}
        file = folder / f"{name}.html"
        file.write_text(lessons.compose(lessons.tell(written, bare, said, name=name), bare), encoding="utf-8")
        yield words, file, DESK, "light", step
    plan = pipeline.plan(load_scene(HERE.parent / "scenes" / "side_wall_storey_above.toml"))
    sheets = drawings.svgs(plan, folder)
    yield "Packet: elevation, tape and joist plan", sheets[0], DESK, "light", 0
    yield "Packet: section along the duct", sheets[2], DESK, "light", 0


def pages(folder: Path) -> Iterator[Shot]:
    """Open what was written in the browser and take its picture."""
    from playwright.sync_api import sync_playwright

    path = shutil.which("chromium") or shutil.which("chromium-browser")
    with sync_playwright() as play:
        browser = play.chromium.launch(executable_path=path, args=BROWSER_ARGS)
        for n, (words, file, (width, height), scheme, steps) in enumerate(write_pages(folder)):
            context = browser.new_context(
                viewport={"width": width, "height": height}, color_scheme=scheme, reduced_motion="reduce", offline=True
            )  # type: ignore[arg-type]
            tab = context.new_page()
            tab.goto(file.as_uri())
            if file.suffix == ".html":
                tab.wait_for_selector("body[data-ready='1']", timeout=120_000)
                for _ in range(steps):
                    tab.click("#lesson .next")
                tab.wait_for_timeout(6000)  # shadows and smooth edges come when the picture rests
            shot = folder / f"shot_{n}.png"
            if file.suffix == ".svg":
                tab.locator("svg").first.screenshot(path=shot)
            else:
                tab.screenshot(path=shot)
            context.close()
            yield words, Image.open(shot).convert("RGB")
        browser.close()


def lay_out(shots: list[Shot]) -> Image.Image:
    """Lay pictures in rows with their words below; each is shown whole."""
    rows = -(-len(shots) // COLUMNS)
    width = COLUMNS * TILE[0] + (COLUMNS + 1) * GAP
    sheet = Image.new("RGB", (width, rows * (TILE[1] + WORDS + GAP) + GAP), PLASTER)
    draw = ImageDraw.Draw(sheet)
    for n, (words, picture) in enumerate(shots):
        x = GAP + n % COLUMNS * (TILE[0] + GAP)
        y = GAP + n // COLUMNS * (TILE[1] + WORDS + GAP)
        picture.thumbnail(TILE, Image.Resampling.LANCZOS)
        draw.rectangle([x, y, x + TILE[0] - 1, y + TILE[1] - 1], fill=PAPER)
        sheet.paste(picture, (x + (TILE[0] - picture.width) // 2, y + (TILE[1] - picture.height) // 2))
        draw.rectangle([x, y, x + TILE[0] - 1, y + TILE[1] - 1], outline=LINE_STRONG)
        draw.text((x + 2, y + TILE[1] + 6), words, INK, fonts.text_bold(17, words))
    return sheet


def missing() -> str:
    """Say in one line what this machine lacks, or nothing."""
    try:
        import playwright.sync_api  # noqa: F401
    except ImportError:
        return "playwright is missing: pip install -e '.[dev]'"
    if not (shutil.which("chromium") or shutil.which("chromium-browser")):
        return "Chromium is missing; on Debian: apt-get install chromium"
    try:
        gl.require()
    except MissingPartError as fault:
        return str(fault)
    return ""


def main() -> int:
    """Make the sheet."""
    lacking = missing()
    if lacking:
        print(f"No contact sheet: {lacking}", file=sys.stderr)  # noqa: T201
        return 2
    with tempfile.TemporaryDirectory(prefix="contact-") as name:
        folder = Path(name)
        sheet = lay_out([*stills(folder), *pages(folder)])
    for quality in (88, 80, 70, 60):
        sheet.save(TARGET, quality=quality, optimize=True, progressive=True)
        if TARGET.stat().st_size < LARGEST_BYTES:
            break
    print(f"{TARGET.name}: {sheet.width} x {sheet.height}, {TARGET.stat().st_size // 1024} KB")  # noqa: T201
    return 0


if __name__ == "__main__":
    sys.exit(main())
