"""Lessons on paper and as a film: read back from the files."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from lessonbench import told
from PIL import Image as PictureFile
from pypdf import PdfReader

from routeviz.drawings import faults
from routeviz.drawings.lesson_sheets import lesson_pdf, lesson_sheets
from routeviz.drawings.primitives import Image, Text
from routeviz.errors import MissingPartError
from routeviz.views import gl, lessons, motion
from routeviz.views import stage as stages
from routeviz.views.lessons.film import seconds_of
from routeviz.views.lessons.pictures import step_picture

NAME = "which-member-may-be-cut"


@pytest.fixture(scope="session")
def _driver():
    if gl.driver() is None:
        pytest.skip(f"no OpenGL driver; on Debian: apt-get install {gl.PACKAGES}")
    gl.require()


def words(text):
    return re.sub(r"\W+", " ", text.replace("–", "-")).strip()


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_the_sheets_hold_every_step_and_tell_the_answers_last(tmp_path, paper):
    _, plans, lesson, _ = told(NAME)
    pages = lesson_sheets(lesson, plans[""], (), paper=paper)
    assert [f for page in pages for f in faults(page)] == []
    target = lesson_pdf(lesson, plans[""], tmp_path / "l.pdf", (), paper=paper)
    assert [f.name for f in tmp_path.iterdir()] == ["l.pdf"]
    texts = [words(page.extract_text()) for page in PdfReader(target).pages]
    assert len(texts) == len(pages)
    for n, step in enumerate(lesson.steps):
        assert words(step.title) in texts[n]
        assert words(step.say) in texts[n]
        assert words(step.ask) in texts[n]
    answers = " ".join(texts[len(lesson.steps) :])
    for step in lesson.steps:
        assert words(step.reveal) in answers
        for choice in step.choices:
            assert (words(choice.because) in answers) == choice.right
            assert not choice.because or words(choice.because) not in " ".join(texts[: len(lesson.steps)])


@pytest.mark.parametrize("name", [NAME, "find-the-five-faults"])
def test_a_sheet_is_filled_and_its_words_are_read_from_where_it_lies(tmp_path, name):
    _, plans, lesson, _ = told(name)
    picture = tmp_path / "p.png"
    PictureFile.new("RGB", (210, 100)).save(picture)
    pages = lesson_sheets(lesson, plans[""], [picture] * len(lesson.steps))
    assert [f for page in pages for f in faults(page)] == []
    for page, step in zip(pages, lesson.steps, strict=False):
        image = next(i for i in page.items if isinstance(i, Image))
        assert image.width * image.height > 0.4 * (page.width - 24) * (page.height - 40)  # of what the strip leaves
        texts = [i for i in page.items if isinstance(i, Text)]
        said = [
            i for i in texts if any(i.text in w for w in (step.say, step.ask)) and len(i.text) > 15 and i.at[1] > 30
        ]
        assert said
        assert min(i.size for i in said) >= 10 * 25.4 / 72  # 10 points
        printed = " ".join(i.text for i in texts)
        assert "lay a tape" not in printed
        assert "Nothing on this sheet is to scale" in printed


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_a_picture_tells_nothing_before_the_question_and_all_of_it_after():
    _, plans, lesson, bare = told(NAME)
    barred = {name: stages.build(plan) for name, plan in plans.items()}

    def reds(step):
        shot = step_picture(step, (bare if step.covered else barred)[step.plan], (300, 200))
        return sum(n for n, (r, g, b) in shot.getcolors(100_000) if r > 150 and g < 70 and b < 60)

    assert [reds(s) for s in lesson.steps[:4]] == [0, 0, 0, 0]
    _, caps, cap_lesson, cap_bare = told("where-the-cap-may-go")
    bare, barred = cap_bare, {"": stages.build(caps[""])}
    assert reds(cap_lesson.steps[0]) == 0
    assert reds(cap_lesson.steps[2]) > 300  # the regulator in bars, and three flags with their words


def test_what_is_pressed_on_a_page_is_not_printed():
    _, plans, lesson, bare = told("find-the-five-faults")
    assert [s.on_screen for s in lesson.steps if s.on_screen] == [
        "Walk round with the buttons under the picture before you go on."
    ]
    printed = " ".join(
        i.text for page in lesson_sheets(lesson, plans[""], ()) for i in page.items if isinstance(i, Text)
    )
    assert "Five things are" in printed
    assert "buttons" not in printed
    assert "buttons under the picture" in lessons.compose(lesson, bare)


def test_the_same_lesson_gives_the_same_bytes(tmp_path):
    _, plans, lesson, _ = told(NAME)
    first, second = (lesson_pdf(lesson, plans[""], tmp_path / n, ()).read_bytes() for n in ("a.pdf", "b.pdf"))
    assert first == second


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_pictures_show_what_is_pointed_at_and_the_film_holds_each_step(tmp_path):
    _, plans, lesson, bare = told(NAME)
    short = replace(lesson, steps=(lesson.steps[0], lesson.steps[1]))
    barred = {name: stages.build(plan) for name, plan in plans.items()}
    files = lessons.write_pictures(short, bare, barred, tmp_path, size=(300, 200))
    teal = (7, 58, 64)  # the outline's colour
    for file in files:
        with PictureFile.open(file) as image:
            assert image.size == (300, 200)
            colours = image.convert("RGB").getcolors(100_000)
        assert sum(n for n, c in colours if c == teal) > 30
    target = lessons.film(short, bare, barred, tmp_path / "l.gif", size=(300, 200), per_second=1)
    with PictureFile.open(target) as film:
        total = 0
        for k in range(film.n_frames):
            film.seek(k)
            total += film.info["duration"]
    wanted = [short.steps[0].say, short.steps[1].say]
    assert total / 1000 >= sum(seconds_of(w) for w in wanted)
    assert film.n_frames >= 4  # the first step; the second, its question, its answer


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_an_mp4_is_as_long_as_was_asked(tmp_path):
    reader = pytest.importorskip("imageio_ffmpeg", reason="the extra part 'motion' is not installed")
    _, _, _, bare = told(NAME)
    target = motion.turntable(bare["shifted"], tmp_path / "t.mp4", size=(160, 100), frames=12, per_second=6)
    frames, seconds = reader.count_frames_and_secs(str(target))
    assert frames == 12
    assert seconds == pytest.approx(2.0, abs=0.05)
    assert next(reader.read_frames(str(target)))["source_size"] == (160, 100)
    assert [f.name for f in tmp_path.iterdir()] == ["t.mp4"]


def test_an_mp4_without_its_part_is_refused_before_anything_is_planned(monkeypatch):
    monkeypatch.setattr(motion, "find_spec", lambda name: None)
    with pytest.raises(MissingPartError, match=r"pip install 'routeviz\[motion\]'"):
        motion.require_parts("mp4")
